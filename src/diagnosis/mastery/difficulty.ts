/** How hard exercises are, and what help takes off. Log-odds on the scale of ratings; own training values. */
import type { Guidance } from '../../../machines/job/index.ts';

/** A quiz item brings its own difficulty. */
export const RESULT_KINDS = ['job', 'drill', 'lesson', 'quiz'] as const;
export type ResultKind = (typeof RESULT_KINDS)[number];

/** Between two levels: who does well in seven of ten jobs of one level does in half of the next. */
const LEVEL_STEP = 1;
const MIDDLE_LEVEL = 3;
/** One question with the place to look at hand: about a job of level 2 with most of it left away. */
const DRILL = -1;
/** Every stop explains before it asks: easier than the easiest job. */
const LESSON = -3;
const QUIZ = -1;

/** A whole job is the measure. The others are one decision or a few, and some can be guessed. */
const WEIGHTS: Readonly<Record<ResultKind, number>> = {
  job: 1,
  drill: 0.4,
  lesson: 0.25,
  quiz: 0.2,
};

interface Help {
  /** What it makes the exercise easier by. */
  readonly ease: number;
  /** How much a result under it still tells of the learner. */
  readonly weight: number;
}
const HELP: Readonly<Record<Guidance, Help>> = {
  assessment: { ease: 0, weight: 1 },
  /** Feedback comes only when asked for, and after the decision. */
  practice: { ease: 0.2, weight: 0.9 },
  /** A word after every decision, and what readings say for and against: half a level. */
  guided: { ease: LEVEL_STEP / 2, weight: 0.7 },
};
/** A rung of the hint ladder; all four of them give one decision of some five away. */
const EASE_OF_HINT = LEVEL_STEP / 4;
const MOST_EASE_OF_HINTS = LEVEL_STEP;
/** Whose hand was held has shown little of his own, well or badly. */
const WEIGHT_WITH_HINTS = 0.4;
/** The debrief has told what was the matter; how one gets there may still be learnt. */
const EASE_OF_REPEAT = LEVEL_STEP;
const WEIGHT_OF_REPEAT = 0.3;

/** @param level of a job, 1 to 5 */
export function difficultyOfLevel(level: number): number {
  return (level - MIDDLE_LEVEL) * LEVEL_STEP;
}

export function usualDifficulty(kind: Exclude<ResultKind, 'job'>): number {
  return { drill: DRILL, lesson: LESSON, quiz: QUIZ }[kind];
}

export interface Circumstances {
  readonly kind: ResultKind;
  /** Null where an exercise knows no such steps. */
  readonly guidance: Guidance | null;
  /** Rungs of hints taken. */
  readonly hints: number;
  /** The same exercise has been done before. */
  readonly repeated: boolean;
}

/** What the circumstances made an exercise easier by, and how much is to be learnt from its result. */
export function helpGiven({ kind, guidance, hints, repeated }: Circumstances): Help {
  const own = HELP[guidance ?? 'assessment'];
  const ofHints = Math.min(MOST_EASE_OF_HINTS, hints * EASE_OF_HINT);
  return {
    ease: own.ease + ofHints + (repeated ? EASE_OF_REPEAT : 0),
    weight:
      WEIGHTS[kind] *
      (hints > 0 ? Math.min(own.weight, WEIGHT_WITH_HINTS) : own.weight) *
      (repeated ? WEIGHT_OF_REPEAT : 1),
  };
}
