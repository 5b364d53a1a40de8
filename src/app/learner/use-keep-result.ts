/** Called where an exercise ends: its result goes to the learner map, once, however often it is read. */
import { useEffect, useMemo, useState } from 'react';
import {
  type ExerciseResult,
  resultOfDrill,
  resultOfJob,
  resultOfLesson,
} from '../../judging/results/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import type { ReasoningNow } from '../job/use-reasoning.ts';
import { useWorkAround } from '../job/work-context.tsx';
import type { Drill, Job, Lesson } from '../library/exercises.ts';
import { useStorePart } from '../session/store.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { packagedPage } from '../shell/packaged.ts';
import { deviceShelf } from '../work/shelf.ts';
import { useWorkPlace } from '../work/work-place.ts';
import { addResult, type Counted } from './keep-results.ts';
import type { KeptResult } from './result-record.ts';

/** Null while there is nothing to take yet. */
export type CountedNow = Counted | 'branch' | null;

/** A job, once its verdict and its reasoning are there; where there is no atlas the verdict is enough. */
export function useKeepResult(
  job: Job,
  verdict: Verdict | 'failed' | null,
  reasoned: Pick<ReasoningNow, 'reasoning' | 'thinking'>,
): CountedNow {
  const { desk } = useExercise();
  const { reasoning, thinking } = reasoned;
  const attempt = useAttempt();
  const result = useMemo(() => {
    if (attempt === null || verdict === null || verdict === 'failed' || thinking) return null;
    return ofAttempt(attempt, resultOfJob(job, desk, verdict, reasoning));
  }, [job, desk, verdict, reasoning, thinking, attempt]);
  return useTaken(result);
}

/** @param isRight null while that is not known */
export function useKeepDrill(drill: Drill, isRight: boolean | null): CountedNow {
  const attempt = useAttempt();
  const result = useMemo(
    () => ofAttempt(attempt, isRight === null ? null : resultOfDrill(drill, isRight)),
    [drill, isRight, attempt],
  );
  return useTaken(result);
}

export function useKeepLesson(lesson: Lesson): CountedNow {
  const { desk } = useExercise();
  const attempt = useAttempt();
  const result = useMemo(
    () => ofAttempt(attempt, resultOfLesson(lesson, desk.answers)),
    [lesson, desk.answers, attempt],
  );
  return useTaken(result);
}

/** Of one attempt: when it was begun, and when its result is written down. */
type Attempt = Pick<KeptResult, 'startedISO' | 'atISO'>;

function ofAttempt(attempt: Attempt | null, result: ExerciseResult | null): KeptResult | null {
  return attempt === null || result === null ? null : { ...attempt, ...result };
}

function useAttempt(): Attempt | null {
  const work = useWorkAround();
  const startedISO = useStorePart(work.state, ({ record }) => record?.startedISO ?? null);
  const [atISO] = useState(() => new Date().toISOString());
  return useMemo(() => (startedISO === null ? null : { startedISO, atISO }), [startedISO, atISO]);
}

function useTaken(result: KeptResult | null): CountedNow {
  const isBranch = useWorkAround().name.branch !== undefined;
  const [counted, setCounted] = useState<Counted | null>(null);
  const place = useWorkPlace();
  useEffect(() => {
    if (result === null || isBranch) return;
    setCounted(addResult(deviceShelf, result));
    packagedPage()?.tell(result.outcome);
    place.ended(result.outcome);
  }, [result, isBranch, place]);
  return isBranch ? 'branch' : counted;
}
