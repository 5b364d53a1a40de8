import { describe, expect, it } from 'vitest';
import { createRandom, nextUniform } from '../../../src/numeric/index.ts';
import { CONFIDENCES, type Confidence } from '../../../src/quiz/index.ts';
import {
  type CalibrationVerdict,
  calibrationOf,
  type GivenAnswer,
} from '../../../src/quiz/taking/index.ts';
import { answerOn } from './small-bank.ts';

const SEEDS = Array.from({ length: 100 }, (_, i) => i + 1);

/** Answers whose chance of being right is as given for what was stated. */
function stating(count: number, chanceOf: (stated: number) => number, seed = 1): GivenAnswer[] {
  const random = createRandom(seed, 'stating');
  return Array.from({ length: count }, (_, i) => {
    const confidence = CONFIDENCES[Math.floor(4 * nextUniform(random))] as Confidence;
    const right = nextUniform(random) < chanceOf(confidence / 100);
    return answerOn(`t${i}`, i, right, { confidence });
  });
}

describe('calibration', () => {
  it('finds out who is too sure, too unsure or about right, by two hundred answers', () => {
    const times = (verdict: CalibrationVerdict, chanceOf: (stated: number) => number) =>
      SEEDS.filter((seed) => calibrationOf(stating(200, chanceOf, seed)).verdict === verdict);
    // Of a hundred: five may look uncalibrated by chance, and twice that is one case in fifty.
    expect(times('about right', (stated) => stated).length).toBeGreaterThanOrEqual(90);
    expect(times('too sure', (stated) => stated - 0.15).length).toBeGreaterThanOrEqual(98);
    expect(times('too unsure', (stated) => Math.min(1, stated + 0.2)).length).toBe(100);
  });
  it('says nothing by fewer than twenty', () => {
    expect(calibrationOf(stating(19, () => 0)).verdict).toBe('too few to say');
    expect(calibrationOf(stating(20, () => 0)).verdict).toBe('too sure');
    const none = calibrationOf([]);
    expect(none).toMatchObject({ count: 0, stated: null, brier: null, brierOfBaseRate: null });
    expect(none.rows.map(({ share, low, high }) => [share, low, high])).toEqual(
      CONFIDENCES.map(() => [null, 0, 1]),
    );
  });
  it('counts each step by itself, with an interval that holds the true share', () => {
    const all = calibrationOf(stating(4000, (stated) => stated));
    expect(all.rows.reduce((sum, { count }) => sum + count, 0)).toBe(4000);
    for (const { confidence, share, low, high } of all.rows) {
      expect(low).toBeLessThan(share as number);
      expect(high).toBeGreaterThan(share as number);
      expect(high - low).toBeLessThan(0.07);
      // Twice the half width: half of it would miss one row of twenty.
      expect(Math.abs((share as number) - confidence / 100)).toBeLessThan(high - low);
    }
  });
  it('gives intervals as the tables have them', () => {
    const answers = Array.from({ length: 10 }, (_, i) => answerOn(`t${i}`, i, i < 8));
    const row = calibrationOf(answers).rows.find(({ confidence }) => confidence === 75);
    // Wilson's interval of 8 in 10 at 95 %.
    expect(row?.low).toBeCloseTo(0.49, 3);
    expect(row?.high).toBeCloseTo(0.943, 3);
  });
  it('holds the score against always stating the base rate: honest steps win, noise loses', () => {
    const honest = calibrationOf(stating(2000, (stated) => stated));
    expect(honest.brier as number).toBeLessThan(honest.brierOfBaseRate as number);
    const noise = calibrationOf(stating(2000, () => 0.6));
    expect(noise.brier as number).toBeGreaterThan(noise.brierOfBaseRate as number);
    const four = [true, true, true, false].map((right, i) => answerOn(`t${i}`, i, right));
    expect(calibrationOf(four)).toMatchObject({ brier: 0.1875, brierOfBaseRate: 0.1875 });
  });
});
