import { say, slugOf } from '../../i18n/index.ts';
import type { ReasoningNow } from '../job/use-reasoning.ts';
import type { Drill, Job, Lesson } from '../library/exercises.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { packagedPage } from '../shell/packaged.ts';
import { hrefOf } from '../shell/route.ts';
import { WayOut } from '../shell/way-out.tsx';
import { type CountedNow, useKeepDrill, useKeepLesson, useKeepResult } from './use-keep-result.ts';

/** At the end of a job: takes its result to the learner map, and says so. */
export function JobCounted(props: {
  readonly job: Job;
  readonly verdict: Verdict | 'failed' | null;
  readonly reasoned: Pick<ReasoningNow, 'reasoning' | 'thinking'>;
}) {
  return <CountedNote counted={useKeepResult(props.job, props.verdict, props.reasoned)} />;
}

export function DrillCounted(props: { readonly drill: Drill; readonly isRight: boolean | null }) {
  return <CountedNote counted={useKeepDrill(props.drill, props.isRight)} />;
}

export function LessonCounted({ lesson }: { readonly lesson: Lesson }) {
  return <CountedNote counted={useKeepLesson(lesson)} />;
}

function CountedNote({ counted }: { readonly counted: CountedNow }) {
  // A learning system keeps results of its own, and there is no map in a package.
  if (counted === null || (counted === 'counted' && packagedPage() !== null)) return null;
  return (
    <p className="counted-note quiet">
      {say(`learner.counted.${slugOf(counted) as CountedSlug}`)}{' '}
      {counted === 'counted' ? (
        <WayOut href={hrefOf({ page: 'learner' })}>{say('learner.counted.see')}</WayOut>
      ) : null}
    </p>
  );
}

type CountedSlug =
  | 'counted'
  | 'branch'
  | 'erased'
  | 'newer-version'
  | 'no-room'
  | 'storage-refused';
