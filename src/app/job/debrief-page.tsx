import { say, sayWord } from '../../i18n/index.ts';
import type { Job } from '../library/exercises.ts';
import { AgainButton } from './again-button.tsx';
import { ClaimVerdicts } from './claim-verdicts.tsx';
import { ConductList } from './conduct-list.tsx';
import { useExercise } from './exercise-context.tsx';
import { ExerciseFront } from './exercise-front.tsx';
import { MinutesTable } from './minutes-table.tsx';
import { NeedlessList } from './needless-list.tsx';
import { ProofItems } from './proof-list.tsx';
import { Truth } from './truth.tsx';
import { useVerdict } from './use-verdict.ts';

interface Props {
  readonly job: Job;
  /** Opens the run again, at a moment of it where one is given. */
  readonly onReplay: (tS: number | null) => void;
}

/** What was the matter, and how the visit went. */
export function DebriefPage({ job, onReplay }: Props) {
  const { desk } = useExercise();
  const verdict = useVerdict();
  return (
    <ExerciseFront title={`${say('debrief.title')}: ${job.title}`}>
      {verdict === null || verdict === 'failed' ? (
        <p className="front-lead" role="status">
          {say(verdict === null ? 'debrief.waiting' : 'debrief.failed')}
        </p>
      ) : (
        <div className="debrief">
          <section className="debrief-part" aria-labelledby="truth-title">
            <h2 id="truth-title">{say('debrief.truth')}</h2>
            <Truth job={job} verdict={verdict} />
          </section>
          <section className="debrief-part" aria-labelledby="said-title">
            <h2 id="said-title">{say('debrief.you.said')}</h2>
            <ClaimVerdicts claims={desk.claims} verdict={verdict} />
            {desk.handover === null ? null : <HandoverNote />}
          </section>
          <section className="debrief-part" aria-labelledby="conduct-title">
            <h2 id="conduct-title">{say('debrief.conduct')}</h2>
            <ConductList findings={verdict.conduct} onSee={onReplay} />
          </section>
          <section className="debrief-part" aria-labelledby="debrief-proof-title">
            <h2 id="debrief-proof-title">{say('debrief.proof')}</h2>
            <ProofItems proof={verdict.proof} />
          </section>
          <section className="debrief-part" aria-labelledby="good-title">
            <h2 id="good-title">{say('debrief.good')}</h2>
            <p>{job.debrief}</p>
            <PeopleTruth job={job} />
          </section>
          <section className="debrief-part" aria-labelledby="minutes-title">
            <h2 id="minutes-title">{say('debrief.minutes')}</h2>
            <MinutesTable minutes={verdict.minutes} budget={job.budgetMinutes} />
            <NeedlessList works={verdict.needless} />
          </section>
        </div>
      )}
      <p className="buttons debrief-acts">
        <button type="button" className="button primary" onClick={() => onReplay(null)}>
          {say('debrief.replay')}
        </button>
        <button
          type="button"
          className="button"
          disabled={verdict === null}
          onClick={() => window.print()}
        >
          {say('debrief.print')}
        </button>
        <a className="button" href="#/practise">
          {say('job.to-practise')}
        </a>
        <AgainButton />
      </p>
    </ExerciseFront>
  );
}

function HandoverNote() {
  const { desk } = useExercise();
  if (desk.handover === null) return null;
  const { cause, evidence, done, watch } = desk.handover;
  const lines = { cause, evidence, done, watch };
  return (
    <details className="fold">
      <summary>{say('debrief.note')}</summary>
      <dl className="job-card-lines">
        {(['cause', 'evidence', 'done', 'watch'] as const).map((field) => (
          <div key={field}>
            <dt>{say(`job.finish.${field}`)}</dt>
            <dd className="as-written">{lines[field] === '' ? '–' : lines[field]}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

/** What people said that was not so, now that it may be told. */
function PeopleTruth({ job }: { readonly job: Job }) {
  const doubtful = job.people.filter(({ truth }) => truth !== 'true');
  if (doubtful.length === 0) return null;
  return (
    <>
      <h3>{say('debrief.people')}</h3>
      <ul className="people-truth">
        {doubtful.map(({ says, truth, who }) => (
          <li key={says}>
            <blockquote className="answer">
              {says}
              <footer>{who ?? job.card.by}</footer>
            </blockquote>
            <p className="quiet">{sayWord('debrief.people', truth)}</p>
          </li>
        ))}
      </ul>
    </>
  );
}
