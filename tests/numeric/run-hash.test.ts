import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addNumber,
  addNumbers,
  addText,
  addWords,
  createHash,
  digest,
} from '../../src/numeric/index.ts';

const SEED = 20262;

function digestOf(values: readonly number[]): string {
  const hash = createHash();
  addNumbers(hash, Float64Array.from(values));
  return digest(hash);
}

function flipBit(value: number, bit: number): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  const byte = bit >>> 3;
  view.setUint8(byte, view.getUint8(byte) ^ (1 << (bit & 7)));
  return view.getFloat64(0);
}

describe('run hash', () => {
  it('is frozen: 16 hexadecimal characters for a known input', () => {
    expect(digestOf([])).toBe(FROZEN_EMPTY);
    expect(digestOf([0, 1, -1, 0.1, 1e300])).toBe(FROZEN_FIVE);
    expect(FROZEN_EMPTY).toMatch(/^[0-9a-f]{16}$/);
  });
  it('is the same however the numbers are handed over', () => {
    fc.assert(
      fc.property(fc.array(fc.double()), fc.nat(), (values, cut) => {
        const at = values.length === 0 ? 0 : cut % values.length;
        const all = Float64Array.from(values);
        const parts = createHash();
        addNumbers(parts, all, 0, at);
        digest(parts);
        addNumbers(parts, all, at);
        const single = createHash();
        for (const value of values) addNumber(single, value);
        expect(digest(parts)).toBe(digestOf(values));
        expect(digest(single)).toBe(digestOf(values));
      }),
      { seed: SEED },
    );
  });
  it('changes with any one bit of any one number', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ noNaN: true }), { minLength: 1, maxLength: 50 }),
        fc.nat(),
        fc.nat(63),
        (values, index, bit) => {
          const at = index % values.length;
          const changed = [...values];
          changed[at] = flipBit(values[at] as number, bit);
          expect(digestOf(changed)).not.toBe(digestOf(values));
        },
      ),
      { seed: SEED, numRuns: 2000 },
    );
  });
  it('tells order, length, and the sign of zero apart, and takes all NaN as one', () => {
    expect(digestOf([1, 2])).not.toBe(digestOf([2, 1]));
    expect(digestOf([0])).not.toBe(digestOf([0, 0]));
    expect(digestOf([0])).not.toBe(digestOf([-0]));
    expect(digestOf([NaN])).toBe(digestOf([flipBit(NaN, 60)]));
  });
  it('has no collision among a hundred thousand neighbouring inputs', () => {
    const seen = new Set<string>();
    for (let i = 0; i < 100_000; i++) seen.add(digestOf([i % 316, Math.floor(i / 316)]));
    expect(seen.size).toBe(100_000);
  });
  it('takes texts with their length, so that a shifted boundary shows', () => {
    const first = createHash();
    addText(first, 'ab');
    addText(first, 'c');
    const second = createHash();
    addText(second, 'a');
    addText(second, 'bc');
    expect(digest(first)).not.toBe(digest(second));
  });
});

/** Frozen: a change here changes the hash of every recorded run. */
const FROZEN_EMPTY = 'a87e740a9c7c5fa2';
const FROZEN_FIVE = 'edbb196c9288400a';

describe('words of a frame', () => {
  const frame = (numbers: Float64Array): string => {
    const hash = createHash();
    addNumber(hash, 7);
    addWords(hash, new Int32Array(numbers.buffer), 0, 2 * numbers.length);
    return digest(hash);
  };

  it('one bit of one number anywhere makes another digest, whether the count is odd or even', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ noNaN: true }), { minLength: 1, maxLength: 9 }),
        fc.nat(),
        fc.integer({ min: 0, max: 31 }),
        (numbers, place, bit) => {
          const one = Float64Array.from(numbers);
          const other = Float64Array.from(numbers);
          const words = new Int32Array(other.buffer);
          words[place % words.length] = (words[place % words.length] as number) ^ (1 << bit);
          fc.pre(other.every((value) => !Number.isNaN(value)));
          expect(frame(other)).not.toBe(frame(one));
        },
      ),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('two numbers that change places make another digest', () => {
    const inOrder = frame(Float64Array.from([1, 2, 3, 4]));
    for (const swapped of [
      [2, 1, 3, 4],
      [3, 2, 1, 4],
      [4, 2, 3, 1],
      [1, 3, 2, 4],
    ]) {
      expect(frame(Float64Array.from(swapped))).not.toBe(inOrder);
    }
  });
});
