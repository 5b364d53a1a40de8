import { useState } from 'react';
import type { ToolId } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';
import { GuidanceChoice, guidanceFor } from '../guidance/guidance-choice.tsx';
import { suggestedGuidance } from '../learner/suggested-guidance.ts';
import type { Job } from '../library/exercises.ts';
import { useSession } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';
import { ExerciseFront } from './exercise-front.tsx';
import { JobCard } from './job-card.tsx';
import { ToolChoice } from './tool-choice.tsx';

/** Before the drive: the card, and what to take along. */
export function CardPage({ job, ready }: { readonly job: Job; readonly ready: boolean }) {
  const { take } = useExercise();
  const session = useSession();
  const [tools, setTools] = useState<readonly ToolId[]>([]);
  const [guidance, setGuidance] = useState(() => suggestedGuidance() ?? guidanceFor(job.level));
  return (
    <ExerciseFront title={job.title}>
      <div className="card-page">
        <JobCard job={job} />
        <div className="card-page-side">
          <ToolChoice permitted={job.tools} taken={tools} onTaken={setTools} />
          <GuidanceChoice chosen={guidance} onChoose={setGuidance} />
          <button
            type="button"
            className="button primary card-page-go"
            disabled={!ready}
            onClick={() => {
              if (take({ type: 'arrive', tools, guidance }) === null) session.play(1);
            }}
          >
            {say('job.card.go')}
          </button>
          {ready ? null : (
            <p className="quiet" role="status">
              {say('job.card.not-ready')}
            </p>
          )}
        </div>
      </div>
    </ExerciseFront>
  );
}
