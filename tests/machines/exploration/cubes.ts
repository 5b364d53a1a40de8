/** All words that agree with `value` on the bits of `mask`. */
export interface Cube {
  readonly mask: number;
  readonly value: number;
}
export const EVERY_WORD: Cube = { mask: 0, value: 0 };

export function isKnown(cube: Cube, bit: number): boolean {
  return (cube.mask & bit) !== 0;
}
/** True when the bit has the value in every word of the cube. */
export function alwaysIs(cube: Cube, bit: number, value: boolean): boolean {
  return isKnown(cube, bit) && ((cube.value & bit) !== 0) === value;
}
export function contains(cube: Cube, word: number): boolean {
  return (word & cube.mask) === cube.value;
}
/** How many words of `width` bits it stands for. */
export function sizeOf(cube: Cube, width: number): number {
  let known = 0;
  for (let mask = cube.mask; mask !== 0; mask &= mask - 1) known += 1;
  return 2 ** (width - known);
}

/** True when some word belongs to both. */
export function meets(a: Cube, b: Cube): boolean {
  return ((a.value ^ b.value) & a.mask & b.mask) === 0;
}

/** Runs once on a word and says which bits the outcome rested on, in the order they were first read. */
export type ReadingRun<T> = (word: number) => {
  readonly outcome: T;
  readonly bitsRead: readonly number[];
};

/**
 * Every outcome of a run over every word of a cube: one leaf for all words that agree on the bits that
 * were read. A run that reads bits b1, b2, ... is the same for every word with those bits, so the
 * rest of the words are those that differ in b1, or agree in b1 and differ in b2, and so on.
 */
export function forEachLeaf<T>(
  run: ReadingRun<T>,
  visit: (outcome: T, cube: Cube) => void,
  within: Cube = EVERY_WORD,
): void {
  const open: Cube[] = [within];
  for (let cube = open.pop(); cube !== undefined; cube = open.pop()) {
    const { outcome, bitsRead } = run(cube.value);
    let mask = cube.mask;
    for (const bit of bitsRead) {
      if ((mask & bit) !== 0) continue;
      open.push({ mask: mask | bit, value: (cube.value & mask) | (~cube.value & bit) });
      mask |= bit;
    }
    visit(outcome, { mask, value: cube.value & mask });
  }
}
