import { describe, expect, it } from 'vitest';
import { severityScale, severityText } from '../../../src/app/reading/severity-scale.ts';

describe('the scale of a severity', () => {
  it.each([
    [0.2, 0.9],
    [0.015, 20],
    [20, 4000],
    [0, 500],
  ])('goes from %d to %d and back again at every place', (low, high) => {
    const scale = severityScale(low, high);
    expect(scale.at(0)).toBe(low);
    expect(scale.at(1)).toBe(high);
    for (const place of [0, 0.1, 0.5, 0.9, 1]) {
      expect(scale.placeOf(scale.at(place))).toBeCloseTo(place, 9);
    }
  });

  it('gives the low end of a wide range as much room as the high end', () => {
    expect(severityScale(0.01, 100).at(0.5)).toBeCloseTo(1, 9);
  });
});

describe('the words of a severity', () => {
  it('names a difference of temperature in kelvins, not as a temperature', () => {
    expect(severityText('K', 20, 'SI')).toBe('20 K');
    expect(severityText('K', 20, 'US')).toBe('20 K');
  });

  it('tells a share in per cent and a multiple as one', () => {
    expect(severityText('1', 0.25, 'SI')).toContain('%');
    expect(severityText('1', 20, 'SI')).toBe('20 ×');
  });
});
