import { LOCKED_OUT, NOT_REACHED } from '../../../diagnosis/index.ts';
import type { QuizPlant } from '../../item/maker.ts';

/** So many plants of a fault do not get through their start. */
const AS_A_RULE = 0.6;

const byPlant = new WeakMap<QuizPlant, readonly string[]>();

/** Faults that end a start in lockout: with the others there is nothing to be asked about. */
export function stoppingFaults(plant: QuizPlant): readonly string[] {
  const known = byPlant.get(plant);
  if (known !== undefined) return known;
  const { causes, causeOf, keys } = plant.atlas;
  const kept = keys.find(
    ({ check, moment, aspect }) =>
      check === 'history|' && moment === LOCKED_OUT && aspect === 'cause',
  );
  const all = causes.map(() => 0);
  const stopped = causes.map(() => 0);
  causeOf.forEach((cause, p) => {
    all[cause] = (all[cause] as number) + 1;
    const word = kept?.bins[kept.column[p] as number] ?? NOT_REACHED;
    if (word !== NOT_REACHED) stopped[cause] = (stopped[cause] as number) + 1;
  });
  const found = causes.flatMap(({ fault }, cause) =>
    fault !== null && (stopped[cause] as number) >= AS_A_RULE * (all[cause] as number)
      ? [fault]
      : [],
  );
  byPlant.set(plant, found);
  return found;
}
