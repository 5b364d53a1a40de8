import type { ReactNode } from 'react';
import { say } from '../../i18n/index.ts';
import { ClaimVerdicts } from '../job/claim-verdicts.tsx';
import { ConductList } from '../job/conduct-list.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { MinutesTable } from '../job/minutes-table.tsx';
import { NeedlessList } from '../job/needless-list.tsx';
import { ProofItems } from '../job/proof-list.tsx';
import { Truth } from '../job/truth.tsx';
import type { ReasoningNow } from '../job/use-reasoning.ts';
import type { Job } from '../library/exercises.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { Calibration } from './calibration.tsx';
import { HandoverNote } from './handover-note.tsx';
import { IdealWay } from './ideal-way.tsx';
import { PathPart } from './path-part.tsx';
import { PeopleTruth } from './people-truth.tsx';

interface Props {
  readonly job: Job;
  readonly verdict: Verdict;
  readonly reasoned: ReasoningNow;
  readonly onReplay: (tS: number | null) => void;
}

/** The parts by which the visit is judged, and what the matter was. */
export function DebriefParts({ job, verdict, reasoned, onReplay }: Props) {
  const { desk } = useExercise();
  const reasoning = reasoned.reasoning;
  const careless = verdict.conduct.filter(({ severity }) => severity !== 'unsafe');
  return (
    <div className="debrief-columns">
      {careless.length > 0 || verdict.conduct.length === 0 ? (
        <Part id="conduct" title={say('debrief.conduct')}>
          <ConductList findings={careless} onSee={onReplay} />
        </Part>
      ) : null}
      {reasoning === null ? null : (
        <>
          <Part id="path" title={say('debrief.path')}>
            <PathPart reasoning={reasoning} />
          </Part>
          <Part id="calibration" title={say('debrief.calibration')}>
            <Calibration calibration={reasoning.calibration} />
          </Part>
        </>
      )}
      <Part id="said" title={say('debrief.you.said')}>
        <ClaimVerdicts claims={desk.claims} verdict={verdict} judged={reasoning?.claims ?? []} />
        <HandoverNote />
      </Part>
      <Part id="debrief-proof" title={say('debrief.proof')}>
        <ProofItems proof={verdict.proof} />
      </Part>
      {reasoning === null || reasoning.ideal.length === 0 ? null : (
        <Part id="ideal" title={say('debrief.ideal')}>
          <IdealWay reasoning={reasoning} />
        </Part>
      )}
      <Part id="truth" title={say('debrief.truth')}>
        <Truth job={job} verdict={verdict} />
      </Part>
      <Part id="good" title={say('debrief.good')}>
        <p>{job.debrief}</p>
        <PeopleTruth job={job} />
      </Part>
      <Part id="minutes" title={say('debrief.minutes')}>
        <MinutesTable minutes={verdict.minutes} budget={job.budgetMinutes} />
        <NeedlessList works={verdict.needless} />
      </Part>
    </div>
  );
}

export function Part(props: {
  readonly id: string;
  readonly title: string;
  readonly children: ReactNode;
}) {
  return (
    <section className="debrief-part" aria-labelledby={`${props.id}-title`}>
      <h2 id={`${props.id}-title`}>{props.title}</h2>
      {props.children}
    </section>
  );
}
