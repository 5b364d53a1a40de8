import type { ClassPoll } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';

interface Props {
  readonly options: readonly string[];
  readonly shown: NonNullable<ClassPoll['shown']>;
  /** What one answered oneself. */
  readonly own: number | null;
}

/** What the class answered: a bar and a number to each option, the right one by a mark and a word. */
export function PollCounts({ options, shown, own }: Props) {
  const { right, why, counts } = shown;
  const most = Math.max(1, ...counts);
  return (
    <div role="status">
      <ol className="class-counts">
        {options.map((option, place) => {
          const count = counts[place] ?? 0;
          return (
            <li key={option} data-right={place === right}>
              <p>
                {place === right ? (
                  <span className="class-count-mark" aria-hidden="true">
                    ✓
                  </span>
                ) : null}{' '}
                {option}
                {place === right ? <strong> {say('class.poll.right')}</strong> : null}
                {place === own ? <span className="quiet"> {say('class.poll.own')}</span> : null}
              </p>
              <p className="class-count">
                <span className="class-count-bar" aria-hidden="true">
                  <span style={{ width: `${(100 * count) / most}%` }} />
                </span>
                <strong>{count}</strong>
              </p>
            </li>
          );
        })}
      </ol>
      {own === null ? <p className="quiet">{say('class.poll.not-given')}</p> : null}
      {why === '' ? null : (
        <p>
          <strong>{say('class.poll.why')}</strong> {why}
        </p>
      )}
    </div>
  );
}
