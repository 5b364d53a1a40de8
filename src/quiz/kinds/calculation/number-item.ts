/** A sum made an item, if the digits that are shown lead to its key in every system of units. */
import { UNIT_SYSTEMS } from '../../../quantity/index.ts';
import type { NumberItem } from '../../item/item.ts';
import type { Made } from '../../item/maker.ts';
import { farthestOff } from '../../item/response.ts';
import { amountsOf, asShown, type Sum, shownValue, valuesOf } from './sum.ts';

/** What rounding may use up of the tolerance; the rest is the learner's own. */
const ROUNDING_SHARE = 0.6;
/** A slip this close to what counts as right would be too fine a line. */
const CLEAR_OF_KEY = 1.5;

/** The key is reckoned from the numbers as they are shown in SI. */
export function numberItem(id: string, plant: string, sum: Sum): Made {
  const givens = asShown(sum.givens, 'SI');
  const values = valuesOf(givens);
  const amounts = amountsOf(givens);
  const key = sum.reckon(values);
  const slips = sum.slips(values, key);
  const plain: NumberItem = {
    id,
    kind: 'calculation',
    plant,
    topic: sum.topic,
    skills: sum.skills,
    difficulty: sum.difficulty,
    stem: {
      tells: sum.tells(amounts),
      asks: sum.asks,
      readings: [],
      shows: { chart: false, trends: [] },
    },
    run: sum.run,
    caution: sum.caution,
    answer: 'number',
    key,
    tolerance: sum.tolerance,
    ...(sum.toleranceAbs === undefined ? {} : { toleranceAbs: sum.toleranceAbs }),
    of: sum.of,
    working: sum.working(amounts, values, key),
  };
  const most = farthestOff(plain);
  if (!Number.isFinite(key) || !holdsAsShown(sum, key, most)) {
    return { ok: false, why: 'differs by tolerance' };
  }
  const mistakes = slips.filter(({ value }) => Math.abs(value - key) > CLEAR_OF_KEY * most);
  return { ok: true, item: mistakes.length === 0 ? plain : { ...plain, mistakes } };
}

/** What was measured, what is shown of it, and what is shown of that in other units, all lead there. */
function holdsAsShown(sum: Sum, key: number, most: number): boolean {
  const shown = asShown(sum.givens, 'SI');
  const ways = [sum.givens, ...UNIT_SYSTEMS.map((system) => asShown(shown, system))];
  const keys = [
    ...ways.map((givens) => sum.reckon(valuesOf(givens))),
    ...UNIT_SYSTEMS.map((system) => shownValue(key, sum.of, system)),
  ];
  return keys.every((one) => Math.abs(one - key) <= ROUNDING_SHARE * most);
}
