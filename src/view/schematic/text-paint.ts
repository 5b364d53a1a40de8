import type { Palette } from '../palette.ts';
import { textWidth } from '../text-width.ts';
import type { LineText, Tone } from './label-lines.ts';
import { lineWidth, TICK_EM, weightOf } from './label-size.ts';
import type { Align } from './layout-types.ts';

export interface TextStyle {
  readonly fontFamily: string;
  readonly fontPx: number;
  readonly lineHeightPx: number;
  readonly palette: Palette;
}

/** Height of the middle of small letters above the baseline, em. */
const MIDDLE_EM = 0.34;

export function paintLine(
  context: CanvasRenderingContext2D,
  runs: readonly LineText[],
  box: { readonly x: number; readonly y: number; readonly width: number },
  align: Align,
  style: TextStyle,
): void {
  const { fontPx, lineHeightPx } = style;
  const spare = box.width - lineWidth(runs, fontPx);
  let x = box.x + (align === 'left' ? 0 : align === 'right' ? spare : spare / 2);
  const baseline = box.y + lineHeightPx / 2 + fontPx * MIDDLE_EM;
  for (const run of runs) {
    const weight = weightOf(run.tone);
    context.font = `${weight} ${fontPx}px ${style.fontFamily}`;
    context.fillStyle = colourOf(run.tone, style.palette);
    context.fillText(run.text, x, baseline);
    x += textWidth(run.text, fontPx, weight);
    if (run.tick) {
      paintTick(context, x + fontPx * 0.25, baseline, fontPx, colourOf(run.tone, style.palette));
      x += TICK_EM * fontPx;
    }
  }
}

function paintTick(
  context: CanvasRenderingContext2D,
  x: number,
  baseline: number,
  fontPx: number,
  colour: string,
): void {
  context.strokeStyle = colour;
  context.lineWidth = fontPx * 0.13;
  context.lineCap = 'round';
  context.lineJoin = 'round';
  context.beginPath();
  context.moveTo(x, baseline - fontPx * 0.3);
  context.lineTo(x + fontPx * 0.2, baseline - fontPx * 0.08);
  context.lineTo(x + fontPx * 0.58, baseline - fontPx * 0.6);
  context.stroke();
}

/** A proof that stands is ink like any reading: colour is kept for what is wrong. */
function colourOf(tone: Tone, palette: Palette): string {
  if (tone === 'name') return palette.dim;
  return tone === 'wrong' ? palette.wrong : palette.ink;
}
