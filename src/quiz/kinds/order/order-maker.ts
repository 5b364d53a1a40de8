/** Items that ask in which order things come, in a start, a stop or a lockout of a plant. */
import type { StepName } from '../../../../machines/burner/index.ts';
import { faultsFor } from '../../../engine/index.ts';
import { createRandom, nextUniform, type RandomState, shuffled } from '../../../numeric/index.ts';
import type { Option, OrderItem } from '../../item/item.ts';
import { itemId } from '../../item/item-id.ts';
import type { ItemMaker, QuizPlant } from '../../item/maker.ts';
import { pickTolerances } from '../../item/other-plant.ts';
import type { Statement } from '../../item/statement.ts';
import { reasonsFor } from './reasons.ts';
import { SORTS, type SortOfOrder, windowOf } from './sorts.ts';
import { THINGS, type Thing } from './things.ts';
import { type Course, comesEverywhere, courseOf, isInOrder } from './timetables.ts';

/** Each alone keeps a start from coming into service, at its worst. */
const STOPPING = [
  'ignition transformer dead',
  'fan contactor coil open',
  'upstream valve coil open',
] as const;

export const orderMaker: ItemMaker = {
  kind: 'order',
  make(plant, seed) {
    const chance = createRandom(seed, `order of ${plant.id}`);
    const sort = pick(chance, SORTS);
    const tolerances = pickTolerances(chance);
    const faults = stoppingOf(plant);
    const fault = sort === 'lockout' && faults.length > 0 ? pick(chance, faults) : null;
    const course = courseOf(plant, tolerances, fault, sort === 'stop');
    if ((course.lockout !== null) !== (sort === 'lockout')) {
      return { ok: false, why: 'not worth asking' };
    }
    const chosen = windowOf(course.times, sort, chance);
    if (chosen === null) return { ok: false, why: 'too few neighbours' };
    if (!isInOrder(course.times, chosen) || !comesEverywhere(plant, fault, chosen)) {
      return { ok: false, why: 'differs by tolerance' };
    }
    return { ok: true, item: itemOf(plant, seed, sort, course, chosen, chance) };
  },
};

function itemOf(
  plant: QuizPlant,
  seed: number,
  sort: SortOfOrder,
  course: Course,
  chosen: readonly string[],
  chance: RandomState,
): OrderItem {
  const shown = mixedUp(chosen, chance);
  return {
    id: itemId({ kind: 'order', plant: plant.id, seed }),
    kind: 'order',
    plant: plant.id,
    topic: `order/${sort}`,
    skills: ['sequence'],
    difficulty: DIFFICULTIES[sort] + 0.3 * (chosen.length - 4),
    stem: {
      tells: tellsOf(plant, sort, course),
      asks: { code: 'quiz.order.asks' },
      readings: [],
      shows: { chart: false, trends: [] },
    },
    run: course.run,
    caution: { code: 'quiz.order.caution' },
    answer: 'order',
    steps: shown.map((id) => stepOf(plant, course, id)),
    key: chosen.map((id) => shown.indexOf(id)),
  };
}
const DIFFICULTIES: Readonly<Record<SortOfOrder, number>> = {
  'whole start': -0.8,
  stretch: 0.2,
  stop: 0.3,
  lockout: 0.5,
};

function tellsOf(plant: QuizPlant, sort: SortOfOrder, { lockout }: Course): readonly Statement[] {
  const { title } = plant.plan.setup.plant;
  const slug = sort.replace(' ', '-');
  const told: Statement = { code: `quiz.order.tells.${slug}`, with: { plant: title } };
  if (sort !== 'lockout' || lockout === null) return [told];
  return [
    told,
    {
      code: 'quiz.order.tells.lockout-cause',
      with: { cause: { is: 'word', of: 'cause', word: lockout } },
    },
  ];
}

function stepOf(plant: QuizPlant, { times }: Course, id: string): Option {
  const thing = THINGS.find((one) => one.id === id) as Thing;
  return {
    says: {
      code: 'quiz.order.step',
      with: { what: { is: 'word', of: 'quiz.thing', word: id } },
    },
    why: reasonsFor(plant, thing, stepBefore(times, thing)),
    share: null,
    decidedBy: null,
    atS: times.get(id) ?? null,
  };
}

/** The last step that something came in before this thing's own. */
function stepBefore(times: Course['times'], thing: Thing): StepName | null {
  const at = times.get(thing.id) ?? 0;
  const earlier = THINGS.filter(
    ({ id, step }) =>
      step !== null && step !== thing.step && (times.get(id) ?? Number.POSITIVE_INFINITY) < at,
  ).sort((a, b) => (times.get(a.id) as number) - (times.get(b.id) as number));
  return earlier[earlier.length - 1]?.step ?? null;
}

function stoppingOf(plant: QuizPlant): readonly string[] {
  const own = new Set(faultsFor(plant.plan.setup.plant).map(({ id }) => id));
  return STOPPING.filter((id) => own.has(id));
}

/** Another order than the right one. */
function mixedUp(of: readonly string[], chance: RandomState): readonly string[] {
  const mixed = shuffled(of, chance);
  if (mixed.some((id, i) => id !== of[i])) return mixed;
  return [...mixed.slice(1), mixed[0] as string];
}

function pick<T>(chance: RandomState, of: readonly T[]): T {
  return of[Math.floor(nextUniform(chance) * of.length)] as T;
}
