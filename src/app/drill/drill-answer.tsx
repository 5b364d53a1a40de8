import { say } from '../../i18n/index.ts';
import { rightOfDrill } from '../../judging/results/index.ts';
import { AgainButton } from '../job/again-button.tsx';
import { ClaimVerdicts } from '../job/claim-verdicts.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { ExerciseFront } from '../job/exercise-front.tsx';
import { OptionList } from '../job/option-list.tsx';
import { Truth } from '../job/truth.tsx';
import { useVerdict } from '../job/use-verdict.ts';
import { DrillCounted } from '../learner/counted-note.tsx';
import type { Drill } from '../library/exercises.ts';
import { WayOut } from '../shell/way-out.tsx';

/** Whether it was right, why, and how one sees it. */
export function DrillAnswer({ drill }: { readonly drill: Drill }) {
  const { desk } = useExercise();
  const verdict = useVerdict();
  const answered = desk.answers.at(-1)?.option ?? null;
  const told = verdict === 'failed' ? null : verdict;
  return (
    <ExerciseFront title={drill.title}>
      <div className="debrief">
        <section className="debrief-part">
          {drill.options === undefined || answered === null ? (
            <>
              <h2>{drill.question}</h2>
              {desk.claims.length === 0 ? <p>{say('drill.no-answer')}</p> : null}
              {desk.claims.length === 0 || told === null ? null : (
                <ClaimVerdicts claims={desk.claims} verdict={told} />
              )}
            </>
          ) : (
            <OptionList
              question={drill.question}
              options={drill.options}
              why={drill.why ?? []}
              right={drill.right ?? 0}
              answered={answered}
              onAnswer={() => undefined}
            />
          )}
        </section>
        <section className="debrief-part" aria-labelledby="truth-title">
          <h2 id="truth-title">{say('debrief.truth')}</h2>
          {told === null ? (
            <p role="status">{say(verdict === 'failed' ? 'debrief.failed' : 'debrief.waiting')}</p>
          ) : (
            <Truth verdict={told} brief={true} />
          )}
          <p>{drill.debrief}</p>
        </section>
      </div>
      <DrillCounted drill={drill} isRight={rightOfDrill(drill, answered, told)} />
      <p className="buttons debrief-acts">
        <WayOut className="button primary" href="#/practise">
          {say('job.to-practise')}
        </WayOut>
        <AgainButton />
      </p>
    </ExerciseFront>
  );
}
