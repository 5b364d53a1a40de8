import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { ExerciseFront } from '../job/exercise-front.tsx';
import { useReasoning } from '../job/use-reasoning.ts';
import { useVerdict } from '../job/use-verdict.ts';
import { useWorkAround } from '../job/work-context.tsx';
import type { Job } from '../library/exercises.ts';
import { hrefOf } from '../shell/route.ts';
import { workBranched } from '../work/device-branches.ts';
import type { WorkRecord } from '../work/work-record.ts';
import { shortClock } from '../working/clock-text.ts';
import { lastClaimS, type Way } from './compare.ts';
import { ComparedWays } from './compared-ways.tsx';
import { useSourceWay } from './use-source-way.ts';

interface Props {
  readonly job: Job;
  readonly branch: WorkRecord;
  /** Back into the branch; null when it is closed. */
  readonly onBackIn: (() => void) | null;
}

/** The branch beside the work it comes from: what each took, and what was decided where they part. */
export function Comparison({ job, branch, onBackIn }: Props) {
  const work = useWorkAround();
  const [source] = useState(() => workBranched(branch));
  const own = useSourceWay(job, source);
  const other = useBranchWay();
  const t = branch.branchOf?.t ?? 0;
  const debrief = hrefOf({ page: 'job', id: job.id });
  return (
    <ExerciseFront title={`${say('branch.compare-title')}: ${job.title}`}>
      <p className="front-lead">
        {source === null
          ? say('branch.source-gone')
          : say('branch.compare-lead', { time: shortClock(t) })}
      </p>
      <Body own={own} other={other} alone={source === null} t={t} />
      <p className="buttons debrief-acts">
        <a className="button primary" href={debrief}>
          {say('branch.to-debrief')}
        </a>
        {onBackIn === null ? null : (
          <button type="button" className="button" onClick={onBackIn}>
            {say('branch.back-in')}
          </button>
        )}
        <SureButton
          label={say('branch.erase-this')}
          ask={say('branch.erase-sure')}
          sure={say('branch.erase')}
          keep={say('branch.erase-keep')}
          onSure={() => {
            work.erase();
            location.hash = debrief;
          }}
        />
      </p>
    </ExerciseFront>
  );
}

function Body(props: {
  readonly own: Way | 'failed' | null;
  readonly other: Way | 'failed' | null;
  readonly alone: boolean;
  readonly t: number;
}) {
  const { own, other, alone, t } = props;
  if (own === 'failed' || other === 'failed') {
    return <p className="invalid">{say('branch.failed')}</p>;
  }
  if (other === null || (own === null && !alone)) {
    return (
      <p className="quiet" role="status">
        {say('branch.waiting')}
      </p>
    );
  }
  return <ComparedWays own={own} other={other} t={t} />;
}

function useBranchWay(): Way | 'failed' | null {
  const { desk } = useExercise();
  const verdict = useVerdict();
  const { reasoning, upTo } = useReasoning(true);
  if (verdict === 'failed') return 'failed';
  if (verdict === null || upTo === null) return null;
  return { verdict, reasoning, claimedAtS: lastClaimS(desk.claims) };
}
