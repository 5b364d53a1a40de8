import { nextUniform, type RandomState } from '../../../numeric/index.ts';

/** In an order of chance. */
export function shuffled<T>(all: readonly T[], chance: RandomState): T[] {
  return all
    .map((one) => ({ one, at: nextUniform(chance) }))
    .sort((a, b) => a.at - b.at)
    .map(({ one }) => one);
}
