import type { ReactNode } from 'react';
import type { Reasoning } from '../../diagnosis/index.ts';
import { say, sayMessage, sayWord } from '../../i18n/index.ts';
import { claimedPart } from '../job/claims.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { heldWords } from '../job/truth.tsx';
import { type Job, plantTitle } from '../library/exercises.ts';
import type { ClaimVerdict, Verdict } from '../session/work-protocol.ts';
import { shortClock } from '../working/clock-text.ts';
import { useDateText } from './debrief-head.tsx';
import { helpWords } from './help-words.ts';
import { minutesText, WORTH_SAYING_MIN } from './minutes-text.ts';
import { TakeAwayList } from './take-away-list.tsx';
import { useWords } from './use-words.ts';

/** What goes on one sheet, whatever the job was: so many lines of each. */
const MOST_FINDINGS = 4;
const MOST_CLAIMS = 4;

interface Props {
  readonly job: Job;
  readonly verdict: Verdict;
  readonly reasoning: Reasoning | null;
}

/** The debrief on one sheet of paper; not to be seen on the screen. */
export function PrintedPage({ job, verdict, reasoning }: Props) {
  const { desk } = useExercise();
  const date = useDateText();
  const minutes = { used: Math.ceil(verdict.minutes.total), budget: job.budgetMinutes };
  return (
    <article className="printed" aria-hidden="true">
      <header>
        <p>{say('debrief.paper.title')}</p>
        <h2>{job.title}</h2>
        <p>
          {plantTitle(job.plant)}, {job.site.name}. {date}.
        </p>
        <p>
          {sayWord('debrief.guidance', desk.guidance)}. {helpWords(desk)}
        </p>
        <p className="printed-name">{say('debrief.paper.name')}</p>
      </header>
      <Section title={say('debrief.paper.conduct')}>
        <Conduct findings={verdict.conduct} />
      </Section>
      <Section title={say('debrief.paper.matter')}>
        <Matter job={job} verdict={verdict} />
      </Section>
      <Section title={say('debrief.parts')}>
        <p>
          {reasoning === null ? null : <Found reasoning={reasoning} />}{' '}
          {say('debrief.paper.minutes', minutes)}
        </p>
        <ul>
          {verdict.claims.slice(0, MOST_CLAIMS).map((claim) => (
            <li key={claim.part}>
              {say('debrief.paper.named', {
                part: claimedPart(claim.part),
                verdict: say(verdictOf(claim)),
              })}
            </li>
          ))}
          {verdict.claims.length === 0 ? <li>{say('debrief.you.nothing')}</li> : null}
        </ul>
      </Section>
      {reasoning === null || reasoning.moments.length === 0 ? null : (
        <Section title={say('debrief.moments')}>
          <Moments reasoning={reasoning} />
        </Section>
      )}
      <Section title={say('debrief.proof')}>
        <ProofWords proof={verdict.proof} />
      </Section>
      <Section title={say('debrief.away')}>
        <TakeAwayList reasoning={reasoning} verdict={verdict} />
      </Section>
      <footer>{say('debrief.paper.caution')}</footer>
    </article>
  );
}

function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section>
      <h3>{title}</h3>
      {children}
    </section>
  );
}

function Conduct({ findings }: { readonly findings: Verdict['conduct'] }) {
  if (findings.length === 0) return <p>{say('debrief.paper.clean')}</p>;
  // What was unsafe comes first, and is never what was left out.
  const ordered = [...findings].sort((a, b) => rank(a.severity) - rank(b.severity));
  const left = ordered.length - MOST_FINDINGS;
  return (
    <ul>
      {ordered.slice(0, MOST_FINDINGS).map(({ rule, t, what, severity }) => (
        <li key={`${rule} ${t} ${sayMessage(what)}`}>
          {say('debrief.paper.finding', {
            time: shortClock(t),
            severity: say(severity === 'unsafe' ? 'debrief.unsafe' : 'debrief.careless'),
            what: sayMessage(what),
          })}
        </li>
      ))}
      {left > 0 ? <li>{say('debrief.paper.more', { count: left })}</li> : null}
    </ul>
  );
}

function rank(severity: Verdict['conduct'][number]['severity']): number {
  return severity === 'unsafe' ? 0 : 1;
}

function Matter({ job, verdict }: Pick<Props, 'job' | 'verdict'>) {
  const { truth, standing, held } = verdict;
  return (
    <>
      {truth.faults.length === 0 ? <p>{say('debrief.truth.none')}</p> : null}
      {job.userError === undefined ? null : (
        <p>{say('debrief.truth.user-error', { what: job.userError.what })}</p>
      )}
      <ul>
        {truth.faults.map(({ id, component, mechanism }) => (
          <li key={id}>
            {component}: {mechanism}.{' '}
            {say(standing.includes(id) ? 'debrief.standing' : 'debrief.gone')}.
          </li>
        ))}
      </ul>
      <p>{heldWords(held)}</p>
    </>
  );
}

function Found({ reasoning }: { readonly reasoning: Reasoning }) {
  const { found, path } = reasoning;
  return (
    <>
      {sayWord('debrief.found', found)}.{' '}
      {say('debrief.path.lead', {
        best: minutesText(path.bestMinutes),
        regret: minutesText(path.regretMinutes),
      })}
    </>
  );
}

function verdictOf({ right, supported }: ClaimVerdict) {
  if (!right) return 'debrief.paper.wrong';
  return supported ? 'debrief.paper.right' : 'debrief.paper.right-luck';
}

function Moments({ reasoning }: { readonly reasoning: Reasoning }) {
  const words = useWords();
  return (
    <ol>
      {reasoning.moments.map((place) => {
        const decision = reasoning.decisions[place];
        if (decision === undefined) return null;
        const { t, kind, best, regretMinutes } = decision;
        const said = {
          time: shortClock(t),
          what: words.decision(decision),
          minutes: minutesText(regretMinutes),
        };
        return (
          <li key={place}>
            {best === null || kind === 'suspect'
              ? say(
                  regretMinutes < WORTH_SAYING_MIN
                    ? 'debrief.paper.moment-free'
                    : 'debrief.paper.moment-only',
                  said,
                )
              : say('debrief.paper.moment', {
                  ...said,
                  best: words.checkAt(best.check, best.moment),
                })}
          </li>
        );
      })}
    </ol>
  );
}

function ProofWords({ proof }: Pick<Verdict, 'proof'>) {
  const namesOf = (met: boolean) =>
    proof.items
      .filter((item) => item.met === met)
      .map(({ id }) => sayWord('job.proof', id).toLowerCase())
      .join(', ');
  const [met, open] = [namesOf(true), namesOf(false)];
  return (
    <>
      {met === '' ? null : <p>{say('debrief.paper.proof-met', { what: met })}</p>}
      {open === '' ? null : <p>{say('debrief.paper.proof-open', { what: open })}</p>}
    </>
  );
}
