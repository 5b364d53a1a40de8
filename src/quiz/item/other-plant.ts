import { nextUniform, type RandomState } from '../../numeric/index.ts';

/** No particle of an atlas has tolerances from here on, so what is asked about is none of them. */
export const FIRST_TOLERANCES = 1000;
const DIFFERENT_TOLERANCES = 1_000_000;

/** One more plant of a kind, by the number that `withTolerances` takes. */
export function pickTolerances(chance: RandomState): number {
  return FIRST_TOLERANCES + Math.floor(DIFFERENT_TOLERANCES * nextUniform(chance));
}
