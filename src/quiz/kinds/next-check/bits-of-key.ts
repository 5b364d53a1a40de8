import { type Atlas, gainBits, questionsOf, type uncertaintyOf } from '../../../diagnosis/index.ts';

/** What one of the things that a check tells is worth by itself. */
export function bitsOfKey(
  atlas: Atlas,
  uncertainty: ReturnType<typeof uncertaintyOf>,
  key: number,
): number {
  const at = atlas.keys[key];
  const [alone] = at === undefined ? [] : questionsOf({ ...atlas, keys: [at] });
  return alone === undefined ? 0 : gainBits(uncertainty, alone);
}
