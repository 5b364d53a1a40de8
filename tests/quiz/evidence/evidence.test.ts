import { describe, expect, it } from 'vitest';
import { beliefOf, causeSharesOf } from '../../../src/quiz/evidence/belief-of.ts';
import { binShares, refutingReading, weighedBy } from '../../../src/quiz/evidence/refuting.ts';
import { seededPlant } from '../../../src/quiz/evidence/seeded-plant.ts';
import { observationsAt, toldInWords, toldOnArrival } from '../../../src/quiz/evidence/told.ts';
import { quizPlant } from '../quiz-plants.ts';

const school = quizPlant('school');
const stuck = seededPlant(school, 7, ['damper servo motor dead']);
const sound = seededPlant(school, 7, [null]);

describe('a seeded plant', () => {
  it('is the same again from the same seed, made anew', () => {
    const again = seededPlant({ ...school }, 7, ['damper servo motor dead']);
    expect(again.run).toEqual(stuck.run);
    expect([...again.bins]).toEqual([...stuck.bins]);
  });

  it('is another plant than any that the atlas was made of', () => {
    expect(stuck.run.tolerances).toBeGreaterThanOrEqual(1000);
    expect(seededPlant(school, 8, ['damper servo motor dead']).run.tolerances).not.toBe(
      stuck.run.tolerances,
    );
  });

  it('says how its start ended, and when each situation did', () => {
    expect(stuck.lockout).toEqual({ cause: 'purge position not proved', step: 'drive to purge' });
    expect(stuck.momentsS['drive to purge']).toBeLessThan(stuck.run.untilS);
    expect(sound.lockout).toBeNull();
    expect(sound.endsIn).toBe('modulation');
  });
});

describe('what is known of it', () => {
  it('is less by the words than by the whole chart', () => {
    const words = new Set(toldInWords(school, stuck).map(({ key }) => key));
    const chart = new Set(toldOnArrival(school, stuck).map(({ key }) => key));
    expect(words.size).toBeGreaterThan(0);
    expect([...words].every((key) => chart.has(key))).toBe(true);
    expect(chart.size).toBeGreaterThan(words.size);
  });

  it('leaves a sound start no lockout to speak of', () => {
    const checks = toldInWords(school, sound).map(({ key }) => school.atlas.keys[key]?.check);
    expect(checks).not.toContain('history|');
  });

  it('makes the true cause likelier than it was', () => {
    const share = (seen: Parameters<typeof beliefOf>[1]) =>
      causeSharesOf(school, beliefOf(school, seen))[stuck.cause] ?? 0;
    expect(share(toldInWords(school, stuck))).toBeGreaterThan(5 * share([]));
  });
});

describe('a reading that rules a cause out', () => {
  const seen = toldInWords(school, stuck);
  const blown = school.atlas.causes.findIndex(({ fault }) => fault === 'control fuse blown');

  it('is one that hardly any plant of the cause would give', () => {
    const found = refutingReading(school, stuck, seen, blown);
    expect(found).not.toBeNull();
    if (found === null) return;
    const { key, bin } = found.observation;
    const at = school.atlas.keys[key];
    const weights = weighedBy(school, seen)(`${at?.check}@${at?.moment}`);
    expect(binShares(school, weights, key, blown)[bin]).toBeLessThanOrEqual(0.05);
    expect(found.instead).not.toBe(found.told.word);
  });

  it('is none where the cause is the true one', () => {
    const all = observationsAt(school, stuck, [...school.atlas.keys.keys()]);
    expect(refutingReading(school, stuck, all, stuck.cause, seen)).toBeNull();
  });
});
