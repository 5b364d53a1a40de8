/** What can be asked next at the plant of a case, as one does it: a tool hangs on for a whole start. */
import type { Atlas, AtlasKey } from '../atlas/atlas.ts';
import { NOT_REACHED } from '../atlas/band.ts';
import { binsOf } from '../atlas/observations.ts';
import { questionCost, questionMinutes } from '../atlas/question-cost.ts';
import type { Sample } from '../atlas/take-sample.ts';
import { LOCKED_OUT, STANDING } from '../observe/moment.ts';
import { checkName } from '../observe/reading.ts';
import type { Observation } from '../reasoning/particles.ts';
import type { Question } from '../reasoning/questions.ts';
import { isPermitted } from '../score/is-permitted.ts';
import { isStepOfStart, questionsOfStarts, WATCH_A_START } from '../score/questions-of-starts.ts';

/** A check where the plant stands, or kept up from the call for heat to where the start ends. */
export interface Ask {
  readonly question: Question;
  /** Moments of the case at which it is answered, in the order of the start. */
  readonly moments: readonly string[];
  /** What the plant of the case answers. */
  readonly seen: readonly Observation[];
  readonly permitted: boolean;
  /** Whoever comes sees it: what the panel keeps of a lockout, and where the start ended. */
  readonly onArrival: boolean;
  readonly inStart: boolean;
  readonly minutes: number;
  /** With surcharges. */
  readonly cost: number;
}

const HISTORY = checkName('history');

/** @param atlas with the plant of the case in it */
export function asksOf(
  atlas: Atlas,
  truth: Sample,
  tools: readonly string[] | 'all',
  questions: readonly Question[] = questionsOfStarts(atlas),
): readonly Ask[] {
  const bins = binsOf(atlas, truth);
  const isReached = (key: number) => atlas.keys[key]?.bins[bins[key] as number] !== NOT_REACHED;
  return questions.map((question): Ask => {
    const { check } = question;
    const reached = question.keys.filter(isReached);
    const moments = [...new Set(reached.map((key) => (atlas.keys[key] as AtlasKey).moment))].sort(
      (a, b) => (atlas.reachedS[a] ?? 0) - (atlas.reachedS[b] ?? 0),
    );
    const last = { check, moment: moments.at(-1) ?? question.moment };
    return {
      question,
      moments,
      seen: reached.map((key) => ({ key, bin: bins[key] as number })),
      permitted: isPermitted(check, tools),
      onArrival: isOnThePanel(question),
      inStart: question.keys.some((key) => isStepOfStart(atlas.keys[key]?.moment ?? STANDING)),
      minutes: questionMinutes(atlas, last),
      cost: questionCost(atlas, last),
    };
  });
}

/** A start is watched, with eyes on the panel. */
export function isWatching({ question, inStart }: Ask): boolean {
  return inStart && question.check === WATCH_A_START;
}

function isOnThePanel({ check, moment }: Question): boolean {
  return (
    check === HISTORY || (check === WATCH_A_START && (moment === STANDING || moment === LOCKED_OUT))
  );
}
