import { say, sayWord } from '../../i18n/index.ts';
import { claimedPart } from '../job/claims.tsx';
import { shortClock } from '../working/clock-text.ts';
import { decisionsSince, figuresOf, type Way, type WayInFigures } from './compare.ts';
import { minutesText, WORTH_SAYING_MIN } from './minutes-text.ts';
import { useWords } from './use-words.ts';

interface Props {
  /** Null where it is gone. */
  readonly own: Way | null;
  readonly other: Way;
  /** Where they part, s. */
  readonly t: number;
}

/** Two ways side by side, part by part. */
export function ComparedWays({ own, other, t }: Props) {
  const figures = { own: own === null ? null : figuresOf(own), other: figuresOf(other) };
  return (
    <div className="debrief compared">
      <section className="debrief-part" aria-label={say('branch.compare-title')}>
        {figures.own === null ? null : (
          <p>
            <strong>{saidOf(figures.own, figures.other)}</strong>{' '}
            {figures.other.unsafe > figures.own.unsafe ? say('branch.said.unsafe') : ''}
          </p>
        )}
        <table className="rows compare-table">
          <thead>
            <tr>
              <th scope="col">{say('branch.what')}</th>
              {figures.own === null ? null : <th scope="col">{say('branch.own')}</th>}
              <th scope="col">{say('branch.otherwise')}</th>
            </tr>
          </thead>
          <tbody>
            {ROWS.map(({ row, textOf }) => (
              <tr key={row}>
                <th scope="row">{say(`branch.row.${row}`)}</th>
                {figures.own === null ? null : <td>{textOf(figures.own)}</td>}
                <td>{textOf(figures.other)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section className="debrief-part" aria-labelledby="since-title">
        <h2 id="since-title">{say('branch.since')}</h2>
        <div className="since">
          {own === null ? null : <Since title={say('branch.own')} way={own} t={t} />}
          <Since title={say('branch.otherwise')} way={other} t={t} />
        </div>
      </section>
    </div>
  );
}

const ROWS: readonly {
  readonly row:
    | 'unsafe'
    | 'named'
    | 'found'
    | 'to-claim'
    | 'minutes'
    | 'regret'
    | 'redundant'
    | 'premature';
  readonly textOf: (figures: WayInFigures) => string;
}[] = [
  { row: 'unsafe', textOf: ({ unsafe }) => String(unsafe) },
  { row: 'named', textOf: ({ claims }) => claims.map(claimText).join(', ') || noClaim() },
  {
    row: 'found',
    textOf: ({ reasoned }) =>
      reasoned === null ? unknown() : sayWord('debrief.found', reasoned.found),
  },
  {
    row: 'to-claim',
    textOf: ({ minutesToClaim }) => (minutesToClaim === null ? noClaim() : min(minutesToClaim)),
  },
  { row: 'minutes', textOf: ({ minutes }) => min(minutes) },
  {
    row: 'regret',
    textOf: ({ reasoned }) => (reasoned === null ? unknown() : min(reasoned.regretMinutes)),
  },
  {
    row: 'redundant',
    textOf: ({ reasoned }) => (reasoned === null ? unknown() : String(reasoned.redundant)),
  },
  {
    row: 'premature',
    textOf: ({ reasoned }) => (reasoned === null ? unknown() : String(reasoned.premature)),
  },
];

function claimText({ part, right }: WayInFigures['claims'][number]): string {
  return say(right ? 'branch.value.right' : 'branch.value.wrong', { part: claimedPart(part) });
}

function min(minutes: number): string {
  return say('branch.value.minutes', { minutes: minutesText(minutes) });
}

function noClaim(): string {
  return say('branch.value.no-claim');
}

function unknown(): string {
  return say('branch.value.unknown');
}

function saidOf(own: WayInFigures, other: WayInFigures): string {
  if (other.minutesToClaim === null) return say('branch.said.no-claim');
  const sooner = (own.minutesToClaim ?? own.minutes) - other.minutesToClaim;
  if (Math.abs(sooner) < WORTH_SAYING_MIN) return say('branch.said.alike');
  return say(sooner > 0 ? 'branch.said.faster' : 'branch.said.slower', {
    minutes: minutesText(Math.abs(sooner)),
  });
}

function Since(props: { readonly title: string; readonly way: Way; readonly t: number }) {
  const words = useWords();
  const { title, way, t } = props;
  if (way.reasoning === null) return null;
  const since = decisionsSince(way.reasoning, t);
  return (
    <div>
      <h3>{title}</h3>
      {since.length === 0 ? <p className="quiet">{say('branch.since-none')}</p> : null}
      <ol className="since-list">
        {since.map((each) => (
          <li key={`${each.t} ${each.kind} ${each.what}`}>
            <span className="decision-time">{shortClock(each.t)}</span>{' '}
            <span>{words.decision(each)}</span>
            <span className="decision-minutes">
              {each.minutes > 0
                ? say('debrief.minutes-short', { minutes: minutesText(each.minutes) })
                : ''}
            </span>
          </li>
        ))}
      </ol>
    </div>
  );
}
