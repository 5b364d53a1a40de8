/** The whole behaviour of a judging thread, but for the thread itself. */
import {
  itemMaker,
  judgeQuiz,
  partsOfQuiz,
  partsOfWork,
  type ReadyExercise,
  readyExercise,
} from '../../judging/index.ts';
import { exerciseSetup, withGiven } from '../../judging/work/index.ts';
import type { LearnerLibrary } from '../../scenario/index.ts';
import type { ExerciseTask, Judged, JudgeTask, QuizTask } from './judge-task.ts';

/** Exercises that are kept ready; a class is at one. */
const MOST_READY = 8;

/** @param readAtlas text of the atlas of a plant; null where it has none */
export function judgeInThread(
  library: LearnerLibrary,
  readAtlas: (plant: string) => string | null,
): (task: JudgeTask) => Judged {
  const ready = new Map<string, ReadyExercise | null>();
  const atlases = new Map<string, string | null>();
  const makeItem = itemMaker(library, atlasOf);

  function atlasOf(plant: string): string | null {
    const known = atlases.get(plant);
    if (known !== undefined) return known;
    const text = readAtlas(plant);
    atlases.set(plant, text);
    return text;
  }

  function exerciseOf({ kind, id, seed, given }: ExerciseTask): ReadyExercise | null {
    const key = JSON.stringify([kind, id, seed, given]);
    const known = ready.get(key);
    if (known !== undefined) return known;
    const setup = exerciseSetup(
      given === undefined ? library : withGiven(library, given),
      kind,
      id,
    );
    const atlas = setup === null ? null : atlasOf(setup.setup.plant.id);
    const made = readyExercise(library, { kind, id, seed, given }, atlas);
    const [oldest] = ready.keys();
    if (ready.size >= MOST_READY && oldest !== undefined) ready.delete(oldest);
    ready.set(key, made);
    return made;
  }

  function judgeWork(task: ExerciseTask): Judged {
    const exercise = exerciseOf(task);
    const { log, desk, untilS, setupHash, ordered, claimed } = task;
    if (exercise === null) {
      const why = 'no such exercise';
      return partsOfWork({ ok: false, why, where: '', detail: task.id }, claimed);
    }
    const hash = setupHash === undefined ? {} : { setupHash };
    return partsOfWork(exercise.judge({ log, desk, untilS, ordered, ...hash }), claimed);
  }

  function judgeAnswers({ items, mode, entries, claimed }: QuizTask): Judged {
    const parts = partsOfQuiz(judgeQuiz({ items, mode }, entries, makeItem), claimed);
    return { ...parts, hash: null };
  }

  return (task) => (task.of === 'quiz' ? judgeAnswers(task) : judgeWork(task));
}
