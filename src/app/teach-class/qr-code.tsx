import { create } from 'qrcode';
import { useMemo } from 'react';

interface Props {
  readonly text: string;
  /** What it is, for who cannot see it. */
  readonly label: string;
}

/** White around it, as the standard wants: ISO/IEC 18004 says four modules. */
const QUIET = 4;

/** A code for cameras, drawn here and now: dark on white whatever the theme, or cameras fail. */
export function QrCode({ text, label }: Props) {
  const { path, size } = useMemo(() => drawn(text), [text]);
  return (
    <svg
      className="qr-code"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <rect width={size} height={size} fill="#ffffff" />
      <path d={path} fill="#000000" />
    </svg>
  );
}

function drawn(text: string) {
  const { modules } = create(text, { errorCorrectionLevel: 'M' });
  const steps: string[] = [];
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      if (modules.get(row, column) === 0) continue;
      steps.push(`M${column + QUIET} ${row + QUIET}h1v1h-1z`);
    }
  }
  return { path: steps.join(''), size: modules.size + 2 * QUIET };
}
