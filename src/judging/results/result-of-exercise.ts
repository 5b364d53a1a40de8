/** A closed exercise as a result for the map. */
import type { DeskState } from '../../../machines/job/index.ts';
import type { Reasoning } from '../../diagnosis/index.ts';
import {
  type ConductWord,
  difficultyOfLevel,
  outcomeOf,
  usualDifficulty,
} from '../../diagnosis/mastery/index.ts';
import type { LearnerDrill, LearnerJob, Lesson } from '../../scenario/index.ts';
import type { Verdict } from '../work/index.ts';
import type { ExerciseResult } from './exercise-result.ts';

/** What unsafe work leaves of an outcome, as where reasoning is known. */
const UNSAFE = 0.1;

/** What a lesson trains; it walks through a start, whatever else it names on the way. */
export const SKILLS_OF_LESSON = ['sequence'] as const;

/** @param reasoning null for a plant without an atlas: then the verdict alone tells how it went */
export function resultOfJob(
  job: Pick<LearnerJob, 'id' | 'level' | 'skills'>,
  desk: Pick<DeskState, 'guidance' | 'hints'>,
  verdict: Pick<Verdict, 'claims' | 'missed' | 'conduct'>,
  reasoning: Pick<Reasoning, 'found' | 'path'> | null,
): ExerciseResult {
  const conduct = conductOf(verdict);
  const outcome =
    reasoning === null
      ? outcomeWithoutReasoning(verdict)
      : outcomeOf(reasoning, conduct === 'unsafe');
  return {
    kind: 'job',
    id: job.id,
    skills: [...job.skills],
    difficulty: difficultyOfLevel(job.level),
    guidance: desk.guidance,
    hints: desk.hints.length,
    outcome,
    conduct,
    parts: {
      found: reasoning?.found ?? null,
      pathScore: reasoning?.path.score ?? null,
    },
  };
}

function conductOf({ conduct }: Pick<Verdict, 'conduct'>): ConductWord {
  if (conduct.some(({ severity }) => severity === 'unsafe')) return 'unsafe';
  return conduct.length > 0 ? 'careless' : 'clean';
}

/**
 * Whether a drill was answered rightly: by its options, or by the part that was named.
 *
 * @param answered place of the option; null where none was chosen
 * @param verdict null while it is being made out
 * @returns null while that is not known
 */
export function rightOfDrill(
  drill: Pick<LearnerDrill, 'options' | 'right'>,
  answered: number | null,
  verdict: Pick<Verdict, 'claims'> | null,
): boolean | null {
  if (drill.options !== undefined) return answered === drill.right;
  return verdict === null ? null : verdict.claims.some(({ right }) => right);
}

/** Right or wrong; no answer is a wrong one. */
export function resultOfDrill(
  drill: Pick<LearnerDrill, 'id' | 'skill'>,
  isRight: boolean,
): ExerciseResult {
  return {
    ...PLAIN,
    kind: 'drill',
    id: drill.id,
    skills: [drill.skill],
    difficulty: usualDifficulty('drill'),
    outcome: isRight ? 1 : 0,
  };
}

/** The share of its questions that were answered rightly; null for a lesson that asks nothing. */
export function resultOfLesson(
  { id, steps }: Pick<Lesson, 'id' | 'steps'>,
  answers: DeskState['answers'],
): ExerciseResult | null {
  const asked = steps.flatMap(({ ask }, stop) => (ask === undefined ? [] : [{ ask, stop }]));
  if (asked.length === 0) return null;
  const right = asked.filter(({ ask, stop }) => answers[stop]?.option === ask.right).length;
  return {
    ...PLAIN,
    kind: 'lesson',
    id,
    skills: [...SKILLS_OF_LESSON],
    difficulty: usualDifficulty('lesson'),
    outcome: right / asked.length,
  };
}

/** Nobody can say how good the way was: the outcome stays in the middle of what reasoning would give. */
function outcomeWithoutReasoning(verdict: Pick<Verdict, 'claims' | 'missed' | 'conduct'>): number {
  const { claims, missed } = verdict;
  const right = claims.filter((claim) => claim.right);
  const isWhole = missed.length === 0 && right.length === claims.length;
  const isSupported = right.every((claim) => claim.supported);
  const found = right.length === 0 ? 0.15 : (isSupported ? 0.75 : 0.4) * (isWhole ? 1 : 0.7);
  return conductOf(verdict) === 'unsafe' ? found * UNSAFE : found;
}

const PLAIN = {
  guidance: null,
  hints: 0,
  conduct: null,
  parts: { found: null, pathScore: null },
} as const;
