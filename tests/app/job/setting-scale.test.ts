import { describe, expect, it } from 'vitest';
import { settingScale } from '../../../src/app/job/setting-scale.ts';

const dial = (unit: 'Pa' | 'K' | '°C' | '1' | 'rpm' | '°', max: number) => ({
  part: 'any',
  setting: 'any',
  unit,
  min: 0,
  max,
  value: 0,
});

describe('a dial in the reader’s units', () => {
  it.each([
    ['Pa', 40_000, 6_500, '65', 'mbar', 'SI'],
    ['Pa', 2e6, 950_000, '9.5', 'bar', 'SI'],
    ['Pa', 40_000, 24_908.891, '100', 'inWC', 'US'],
    ['K', 30, 5, '5', 'K', 'US'],
    ['°C', 110, 82, '82', '°C', 'SI'],
    ['rpm', 3000, 1760, '1760', 'rpm', 'SI'],
  ] as const)('%s up to %d: %d reads %s %s', (unit, max, value, text, symbol, units) => {
    const scale = settingScale(dial(unit, max), units);
    expect(scale.shown(value)).toBe(text);
    expect(scale.symbol).toBe(symbol);
  });

  it('takes what was typed back to the dial’s own unit, a comma for a point as well', () => {
    const scale = settingScale(dial('Pa', 40_000), 'SI');
    // Exact but for the last bits of one division.
    expect(scale.typed('65,5')).toBeCloseTo(6550, 9);
    expect(scale.typed('−3')).toBeCloseTo(-300, 9);
  });

  it.each(['', ' ', 'much', '1e', '--2'])('does not take %j for a number', (text) => {
    expect(settingScale(dial('Pa', 40_000), 'SI').typed(text)).toBeNull();
  });
});
