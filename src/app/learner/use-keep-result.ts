/** Called where an exercise ends: its result goes to the learner map, once, however often it is read. */
import { useEffect, useMemo, useState } from 'react';
import { useExercise } from '../job/exercise-context.tsx';
import type { ReasoningNow } from '../job/use-reasoning.ts';
import { useWorkAround } from '../job/work-context.tsx';
import type { Drill, Job, Lesson } from '../library/exercises.ts';
import { useStorePart } from '../session/store.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { deviceShelf } from '../work/shelf.ts';
import { addResult, type Counted } from './keep-results.ts';
import { type Attempt, resultOfDrill, resultOfJob, resultOfLesson } from './result-of-exercise.ts';
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
    return resultOfJob(job, desk, verdict, reasoning, attempt);
  }, [job, desk, verdict, reasoning, thinking, attempt]);
  return useTaken(result);
}

/** @param isRight null while that is not known */
export function useKeepDrill(drill: Drill, isRight: boolean | null): CountedNow {
  const attempt = useAttempt();
  const result = useMemo(
    () => (attempt === null || isRight === null ? null : resultOfDrill(drill, isRight, attempt)),
    [drill, isRight, attempt],
  );
  return useTaken(result);
}

export function useKeepLesson(lesson: Lesson): CountedNow {
  const { desk } = useExercise();
  const attempt = useAttempt();
  const result = useMemo(
    () => (attempt === null ? null : resultOfLesson(lesson, desk.answers, attempt)),
    [lesson, desk.answers, attempt],
  );
  return useTaken(result);
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
  useEffect(() => {
    if (result !== null && !isBranch) setCounted(addResult(deviceShelf, result));
  }, [result, isBranch]);
  return isBranch ? 'branch' : counted;
}
