import type { PartShare } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { partWords } from '../../wording/index.ts';

interface Props {
  readonly label: string;
  readonly shares: readonly PartShare[];
}

/** Less than this is not worth a line of its own. */
const LEAST_REST = 0.005;

/** The likeliest parts, each with its share as a bar and in figures; the rest in one line. */
export function ShareBars({ label, shares }: Props) {
  const rest = 1 - shares.reduce((sum, { share }) => sum + share, 0);
  return (
    <div className="share-bars">
      <h4>{label}</h4>
      <ul>
        {shares.map(({ part, share }) => (
          <Bar key={part} what={partWords(part)} share={share} />
        ))}
        {rest > LEAST_REST ? (
          <Bar what={say('debrief.moment.others')} share={rest} rest={true} />
        ) : null}
      </ul>
    </div>
  );
}

function Bar(props: { readonly what: string; readonly share: number; readonly rest?: boolean }) {
  const { what, share, rest = false } = props;
  return (
    <li data-rest={rest}>
      <span className="share-what">{what}</span>
      <span className="share-number">{percentText(share)}</span>
      <span className="share-bar" aria-hidden="true">
        <span style={{ width: `${Math.min(100, Math.max(0, share * 100))}%` }} />
      </span>
    </li>
  );
}

/** Whole per cent; nearly nothing and nearly all are not rounded to nothing and all. */
export function percentText(share: number): string {
  const percent = Math.round(share * 100);
  if (percent === 0 && share > 0) return '< 1 %';
  if (percent === 100 && share < 1) return '> 99 %';
  return `${percent} %`;
}
