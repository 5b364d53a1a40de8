import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alignmentDistance, nearest } from '../../src/scenario/nearest.ts';

describe('the word that was meant', () => {
  const known = ['purge', 'pilot trial', 'pilot proving', 'post-purge', 'at'];
  it.each([
    ['a letter too many', 'purgge', 'purge'],
    ['a letter too few', 'purg', 'purge'],
    ['two letters swapped', 'pruge', 'purge'],
    ['capitals and other marks between words', 'Pilot_Trial', 'pilot trial'],
    ['the nearer of two', 'pilot provin', 'pilot proving'],
    ['a short word', 'att', 'at'],
  ])('is found for %s', (_title, word, meant) => expect(nearest(word, known)).toBe(meant));
  it.each([
    ['nothing like it', 'furnace'],
    ['nothing at all', ''],
    ['half a word', 'pi'],
    ['a whole page', 'purge'.repeat(1000)],
  ])('is not guessed for %s', (_title, word) => expect(nearest(word, known)).toBeNull());
});

describe('the distance between words', () => {
  // Worked by hand: each is one optimal string alignment.
  it.each([
    ['', '', 0],
    ['abc', '', 3],
    ['ab', 'ba', 1],
    ['ca', 'abc', 3],
    ['kitten', 'sitting', 3],
  ])('of %j and %j is %i', (a, b, steps) => expect(alignmentDistance(a, b)).toBe(steps));
  it('is the same both ways, and none only for the same word', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (a, b) => {
        expect(alignmentDistance(a, b)).toBe(alignmentDistance(b, a));
        expect(alignmentDistance(a, b) === 0).toBe(a === b);
        expect(alignmentDistance(a, b)).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
      { seed: 11, numRuns: 300 },
    );
  });
});
