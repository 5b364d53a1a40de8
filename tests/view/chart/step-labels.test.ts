import { describe, expect, it } from 'vitest';
import { alignExpected } from '../../../src/view/chart/alignment.ts';
import { groupSpans, placeStepLabels, spansOf } from '../../../src/view/chart/step-labels.ts';

const NAMES = ['standby', 'valve proving: fill', 'valve proving: hold', 'drive to purge', 'purge'];
const familyOf = (step: number): string => NAMES[step].split(':')[0];
const measure = (text: string): number => text.length * 8;

describe('the steps along the top of the chart', () => {
  const actual = [
    { step: 0, tS: 0 },
    { step: 1, tS: 10 },
    { step: 2, tS: 13 },
    { step: 3, tS: 25 },
  ];
  const expected = [
    { step: 3, tS: 0 },
    { step: 4, tS: 30 },
  ];
  const stretches = alignExpected(actual, expected, 75, 30);
  const groups = groupSpans(spansOf(actual, stretches, 30), familyOf);

  it('are the actual ones, then the expected ones to come', () => {
    expect(groups.map(({ family, isFuture }) => [family, isFuture])).toEqual([
      ['standby', false],
      ['valve proving', false],
      ['drive to purge', false],
      ['purge', true],
    ]);
  });

  it('stand without touching, and the current one always stands', () => {
    for (const pxPerS of [1, 2, 3, 5, 9, 14]) {
      const width = 100 * pxPerS + 120;
      const labels = placeStepLabels(groups, (tS) => tS * pxPerS, width, measure);
      expect(labels.some(({ isCurrent }) => isCurrent)).toBe(true);
      labels.slice(1).forEach((label, i) => {
        expect(label.x).toBeGreaterThanOrEqual(labels[i].x + measure(labels[i].text));
      });
      for (const label of labels) expect(label.x + measure(label.text)).toBeLessThanOrEqual(width);
    }
  });

  it('all stand where there is room', () => {
    expect(placeStepLabels(groups, (tS) => tS * 20, 2000, measure)).toHaveLength(4);
  });
});
