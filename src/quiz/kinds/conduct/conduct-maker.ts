/**
 * Safe conduct: a situation at the plant and three courses of action. Which one is safe is not said
 * here: each is run at the plant and judged as any work there is judged.
 */
import { createRandom, nextUniform, shuffled } from '../../../numeric/index.ts';
import type { ChoiceItem, ItemRun, Option } from '../../item/item.ts';
import { itemId } from '../../item/item-id.ts';
import type { ItemMaker, QuizPlant, Rejection } from '../../item/maker.ts';
import type { Statement, Term } from '../../item/statement.ts';
import { lintItem } from '../../lint/lint-item.ts';
import { type JudgedCourse, judgeCourse } from './judge-course.ts';
import { factsOf } from './plant-facts.ts';
import { whySafe, whyUnsafe } from './reasons.ts';
import { oneOf, type Scene } from './scene.ts';
import { SCENES } from './scenes/index.ts';
import type { Step } from './step.ts';

export interface ConductCourses {
  readonly scene: Scene;
  readonly safe: JudgedCourse;
  /** Each with one finding. */
  readonly unsafe: readonly JudgedCourse[];
  /** Place of the safe one. */
  readonly key: number;
}
type Courses =
  | ({ readonly ok: true } & ConductCourses)
  | { readonly ok: false; readonly why: Rejection };

const DISTRACTORS = 2;
/** A draw may have nothing of its kind, as a fault that does not lock out. */
const DRAWS = 3;
const MOST_KEPT = 8;

const kept = new WeakMap<QuizPlant, Map<number, Courses>>();
const CAUTION: Statement = { code: 'job.card.caution' };

export const conductMaker: ItemMaker = {
  kind: 'conduct',
  make(plant, seed) {
    const courses = conductCourses(plant, seed);
    if (!courses.ok) return courses;
    const item = itemOf(plant, seed, courses);
    return lintItem(item).length > 0 ? { ok: false, why: 'lint' } : { ok: true, item };
  },
};

/** The courses of an item with how each of them went, or why there are none; the last few are kept. */
export function conductCourses(plant: QuizPlant, seed: number): Courses {
  const known = kept.get(plant) ?? new Map<number, Courses>();
  kept.set(plant, known);
  const made = known.get(seed) ?? coursesOf(plant, seed);
  known.set(seed, made);
  for (const oldest of known.keys()) {
    if (known.size <= MOST_KEPT) break;
    known.delete(oldest);
  }
  return made;
}

function coursesOf(plant: QuizPlant, seed: number): Courses {
  const facts = factsOf(plant);
  const chance = createRandom(seed, `quiz conduct at ${plant.id}`);
  const of = oneOf(SCENES, chance);
  let scene: Scene | null = null;
  for (let draw = 0; draw < DRAWS && scene === null; draw++) scene = of?.(facts, chance) ?? null;
  if (scene === null) return { ok: false, why: 'nothing goes wrong' };
  const drawn = shuffled(scene.unsafe, chance);
  const key = Math.floor(nextUniform(chance) * (DISTRACTORS + 1));
  const safe = judgeCourse(plant, scene, scene.safe);
  if (safe.findings.length > 0 || !safe.isTrue || scene.holds?.(safe.trace) === false) {
    return { ok: false, why: 'key not proved' };
  }
  const unsafe: JudgedCourse[] = [];
  for (const { rule, steps } of drawn) {
    if (unsafe.length === DISTRACTORS) break;
    const judged = judgeCourse(plant, scene, steps);
    const [only, ...more] = judged.findings;
    if (judged.isTrue && only?.rule === rule && more.length === 0) unsafe.push(judged);
  }
  if (unsafe.length < DISTRACTORS) return { ok: false, why: 'distractor not ruled out' };
  return { ok: true, scene, safe, unsafe, key };
}

function itemOf(
  plant: QuizPlant,
  seed: number,
  { scene, safe, unsafe, key }: ConductCourses,
): ChoiceItem {
  const { run, shows, tells, skills, difficulty } = scene;
  const options = unsafe.map((course) => optionOf(run, course));
  options.splice(key, 0, optionOf(run, safe));
  const rule = unsafe[0]?.findings[0]?.rule ?? '';
  return {
    id: itemId({ kind: 'conduct', plant: plant.id, seed }),
    kind: 'conduct',
    plant: plant.id,
    topic: `conduct/${rule}`,
    skills: ['conduct', ...skills],
    difficulty,
    stem: {
      tells,
      asks: { code: 'quiz.conduct.asks' },
      readings: [],
      shows: { chart: shows, trends: [] },
    },
    run,
    caution: CAUTION,
    answer: 'choice',
    options,
    key,
  };
}

function optionOf(run: ItemRun, { steps, laid, trace, findings, fromS }: JudgedCourse): Option {
  const [found] = findings;
  return {
    says: courseSaid(steps),
    why: found === undefined ? whySafe(trace, fromS) : whyUnsafe(found),
    share: null,
    decidedBy: null,
    atS: found?.t ?? null,
    run: { ...run, actions: [...run.actions, ...laid.log], untilS: laid.untilS },
  };
}

function courseSaid(steps: readonly Step[]): Statement {
  const acts = steps.map(({ says }): Term => ({ is: 'statement', statement: says }));
  return { code: 'quiz.conduct.course', with: { acts: { is: 'list', of: acts } } };
}
