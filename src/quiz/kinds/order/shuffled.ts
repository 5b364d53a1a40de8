import { nextUniform, type RandomState } from '../../../numeric/index.ts';

/** The same things as chance puts them (Fisher and Yates). */
export function shuffled<T>(of: readonly T[], chance: RandomState): readonly T[] {
  const mixed = [...of];
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = Math.floor(nextUniform(chance) * (i + 1));
    const held = mixed[i] as T;
    mixed[i] = mixed[j] as T;
    mixed[j] = held;
  }
  return mixed;
}
