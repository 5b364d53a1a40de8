import type { JudgedDecision, Reasoning } from '../../diagnosis/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { minutesText, WORTH_SAYING_MIN } from './minutes-text.ts';
import { percentText } from './share-bars.tsx';
import { useWords } from './use-words.ts';

/** The dearest decisions are named one by one; so many. */
const MOST_COSTLY = 5;

/** How the cause was come by, and what the way cost beside the best: minutes, never a mark. */
export function PathPart({ reasoning }: { readonly reasoning: Reasoning }) {
  const { found, path, decisions } = reasoning;
  const { bestMinutes, regretMinutes } = path;
  const costly = decisions
    .filter((one) => one.regretMinutes >= WORTH_SAYING_MIN)
    .sort((a, b) => b.regretMinutes - a.regretMinutes)
    .slice(0, MOST_COSTLY)
    .sort((a, b) => a.t - b.t);
  return (
    <>
      <p>
        <strong className="found" data-found={found}>
          {sayWord('debrief.found', found)}
        </strong>
        . {sayWord('debrief.found-lead', found)}
      </p>
      <p>
        {say(regretMinutes < WORTH_SAYING_MIN ? 'debrief.path.clean' : 'debrief.path.lead', {
          best: minutesText(bestMinutes),
          regret: minutesText(regretMinutes),
        })}
      </p>
      <PathBar best={bestMinutes} regret={regretMinutes} />
      {costly.length === 0 ? null : (
        <>
          <h3>{say('debrief.path.costly')}</h3>
          <Lines decisions={costly} cost={true} />
        </>
      )}
      <Redundant decisions={decisions.filter(({ redundant }) => redundant)} />
      <Premature decisions={decisions.filter(isEarlyWork)} />
      <RuledOut decisions={decisions.filter(isRuledOut)} />
    </>
  );
}

function isEarlyWork({ kind, premature }: JudgedDecision): boolean {
  return kind === 'work' && premature;
}

function isRuledOut({ kind, refutedBy }: JudgedDecision): boolean {
  return kind === 'suspect' && refutedBy.length > 0;
}

function PathBar({ best, regret }: { readonly best: number; readonly regret: number }) {
  const share = best + regret > 0 ? best / (best + regret) : 1;
  return (
    <div className="path-bar" aria-hidden="true">
      <span className="path-best" style={{ flexGrow: share }}>
        <span>{say('debrief.path.best', { minutes: minutesText(best) })}</span>
      </span>
      {regret < WORTH_SAYING_MIN ? null : (
        <span className="path-regret" style={{ flexGrow: 1 - share }}>
          <span>{say('debrief.path.regret', { minutes: minutesText(regret) })}</span>
        </span>
      )}
    </div>
  );
}

function Redundant({ decisions }: { readonly decisions: readonly JudgedDecision[] }) {
  // What cost nothing is not worth a word.
  const costing = decisions.filter(({ minutes }) => minutes >= WORTH_SAYING_MIN);
  if (costing.length === 0) return <p className="quiet">{say('debrief.path.redundant-none')}</p>;
  return (
    <>
      <h3>{say('debrief.path.redundant')}</h3>
      <Lines decisions={costing} cost={false} />
    </>
  );
}

function Lines(props: { readonly decisions: readonly JudgedDecision[]; readonly cost: boolean }) {
  const words = useWords();
  return (
    <ul className="way-lines">
      {props.decisions.map((each) => (
        <li key={`${each.t} ${each.kind} ${each.what}`}>
          <span className="decision-time">{shortClock(each.t)}</span>
          <span>{words.decision(each)}</span>
          <span className="decision-minutes">
            {say('debrief.minutes-short', {
              minutes: minutesText(props.cost ? each.regretMinutes : each.minutes),
            })}
          </span>
        </li>
      ))}
    </ul>
  );
}

function Premature({ decisions }: { readonly decisions: readonly JudgedDecision[] }) {
  const words = useWords();
  if (decisions.length === 0) return <p className="quiet">{say('debrief.path.premature-none')}</p>;
  return (
    <>
      <h3>{say('debrief.path.premature')}</h3>
      <ul className="way-lines">
        {decisions.map((each) => (
          <li key={`${each.t} ${each.what}`}>
            <span className="decision-time">{shortClock(each.t)}</span>
            <span>
              {say('debrief.path.premature-one', {
                what: words.decision(each),
                share: percentText(each.share ?? 0),
              })}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

function RuledOut({ decisions }: { readonly decisions: readonly JudgedDecision[] }) {
  const words = useWords();
  if (decisions.length === 0) return null;
  return (
    <>
      <h3>{say('debrief.path.refuted')}</h3>
      <ul className="way-lines">
        {decisions.map(({ t, what, refutedBy }) => (
          <li key={`${t} ${what}`}>
            <span className="decision-time">{shortClock(t)}</span>
            <span>
              {say('debrief.path.refuted-one', {
                part: words.part(what),
                told: refutedBy.slice(0, 2).map(words.told).join('; '),
              })}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
