import { nextUniform, type RandomState } from '../../numeric/index.ts';
import { partsOfCheck } from '../observe/reading.ts';
import { checksFirst, LIMIT_MINUTES } from './checks-first.ts';
import type { Learner } from './learner.ts';

/** Any tool or sense at any place, until one suspect stands out or there is no time left. */
export const atRandom: Learner = {
  name: 'random',
  byChance: true,
  goThrough: checksFirst(
    (chance) => (_, open) => {
      const kinds = [...new Set(open.map(({ question }) => partsOfCheck(question.check).what))];
      const kind = oneOf(kinds, chance);
      return oneOf(
        open.filter(({ question }) => partsOfCheck(question.check).what === kind),
        chance,
      );
    },
    LIMIT_MINUTES,
  ),
};

function oneOf<T>(all: readonly T[], chance: RandomState): T | null {
  return all[Math.floor(nextUniform(chance) * all.length)] ?? null;
}
