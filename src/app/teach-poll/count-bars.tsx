import { say } from '../../i18n/index.ts';

interface Props {
  readonly options: readonly string[];
  /** By option; shorter while nobody has answered. */
  readonly counts: readonly number[];
  /** Null where nothing is right, or it is not told yet. */
  readonly right: number | null;
}

/** How many chose what: a bar and its number; the right one is marked in words. */
export function CountBars({ options, counts, right }: Props) {
  const most = Math.max(1, ...counts);
  return (
    <ol className="count-bars">
      {options.map((option, place) => {
        const count = counts[place] ?? 0;
        return (
          <li key={option} data-right={place === right}>
            <span className="count-option">
              {option}
              {place === right ? <strong> {say('teach-poll.right')}</strong> : null}
            </span>
            <meter min={0} max={most} value={count} aria-label={option}>
              {count}
            </meter>
            <strong className="count-number">{count}</strong>
          </li>
        );
      })}
    </ol>
  );
}
