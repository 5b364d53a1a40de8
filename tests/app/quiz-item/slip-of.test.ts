/** Which slip a wrong number comes from. */
import { describe, expect, it } from 'vitest';
import { slipOf } from '../../../src/app/quiz-item/slip-of.ts';
import type { NumberItem, Statement } from '../../../src/quiz/index.ts';

const why = (code: string): Statement => ({ code });
const ITEM = {
  answer: 'number',
  key: 36,
  tolerance: 0.02,
  of: 'time',
  working: [],
  mistakes: [
    { value: 9, why: why('one change') },
    { value: 9.4, why: why('other slip') },
    { value: 38, why: why('near the key') },
  ],
} as unknown as NumberItem;

describe('the slip behind a wrong number', () => {
  it('is the nearest of those that lead to it', () => {
    expect(slipOf(ITEM, 9.02)).toEqual(why('one change'));
    expect(slipOf(ITEM, 9.35)).toEqual(why('other slip'));
  });

  it('may be a rounding away', () => {
    expect(slipOf(ITEM, 9.2)).not.toBeNull();
  });

  it('is none where no slip leads there, and none for what is nearer to the right answer', () => {
    expect(slipOf(ITEM, 20)).toBeNull();
    expect(slipOf(ITEM, 36.9)).toBeNull();
    const { mistakes: _, ...without } = ITEM;
    expect(slipOf(without, 9)).toBeNull();
  });
});
