import { message, say } from '../../i18n/index.ts';
import { type ClassResult, summaryOfClass } from '../../records/class/index.ts';
import { outcomeWords } from '../../wording/class/index.ts';

interface Props {
  readonly results: readonly ClassResult[];
  /** How many were in the class. */
  readonly seats: number;
}

const MOST_LINES = 5;

/** A class at a glance; what most of it did unsafely comes first. */
export function ClassSummaryPart({ results, seats }: Props) {
  const sum = summaryOfClass(results);
  const percent = (share: number) =>
    say('class-result.outcome', { percent: Math.round(100 * share) });
  const figures: readonly (readonly [string, string])[] = [
    [say('teach-results.sum.finished'), `${sum.finished} / ${seats}`],
    [say('teach-results.sum.outcome'), outcomeWords(sum.medianOutcome)],
    ...(sum.medianMinutes === null
      ? []
      : [
          [
            say('teach-results.sum.minutes'),
            say('class-result.minutes', { minutes: Math.ceil(sum.medianMinutes) }),
          ] as const,
        ]),
    ...(sum.foundByReadings === null
      ? []
      : [[say('teach-results.sum.by-readings'), percent(sum.foundByReadings)] as const]),
    ...(sum.foundByTrying === null
      ? []
      : [[say('teach-results.sum.by-trying'), percent(sum.foundByTrying)] as const]),
  ];
  return (
    <section className="results-summary" aria-labelledby="results-summary-title">
      <h2 id="results-summary-title">{say('teach-results.sum')}</h2>
      <dl>
        {figures.map(([what, said]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
      {sum.conduct.length === 0 ? null : (
        <>
          <h3>{say('teach-results.sum.conduct')}</h3>
          <ul>
            {sum.conduct.slice(0, MOST_LINES).map(({ rule, severity, what, seats: count }) => (
              <li key={`${rule} ${severity}`}>
                {say(`class-result.conduct.${severity}`, {
                  what: message(what.code, what.params as Parameters<typeof message>[1]),
                })}{' '}
                <span className="quiet">{say('teach-results.seats', { count })}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {sum.missed.length === 0 ? null : (
        <>
          <h3>{say('teach-results.sum.missed')}</h3>
          <ul>
            {sum.missed.slice(0, MOST_LINES).map(({ part, seats: count }) => (
              <li key={part}>
                {part} <span className="quiet">{say('teach-results.seats', { count })}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {sum.refused.length === 0 ? null : (
        <p className="invalid">
          {say('teach-results.sum.refused', { seats: sum.refused.join(', ') })}
        </p>
      )}
    </section>
  );
}
