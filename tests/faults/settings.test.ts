import { describe, expect, it } from 'vitest';
import { settingsOf, writeSetting } from '../../src/faults/index.ts';
import { findFieldIssues } from '../../src/field/index.ts';
import { UNITS } from '../../src/quantity/index.ts';
import { library } from '../support/library.ts';

const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (_id, plant) => {
  const settings = settingsOf(plant);

  it('has dials with names of their own, in a unit, standing within their range', () => {
    expect(settings.length).toBeGreaterThan(20);
    expect(new Set(settings.map(({ part, setting }) => `${part}/${setting}`)).size).toBe(
      settings.length,
    );
    for (const { unit, min, max, value } of settings) {
      expect(UNITS).toContain(unit);
      expect(value).toBeGreaterThanOrEqual(min);
      expect(value).toBeLessThanOrEqual(max);
      expect(max).toBeGreaterThan(min);
    }
  });

  it.each(settings.map((one) => [`${one.part}, ${one.setting}`, one] as const))(
    '%s: takes what it is set to, moves no other dial but its partner, and can be set back',
    (_name, { part, setting, min, max, value }) => {
      const set = copyOf(plant);
      const aim = value + 0.1 * (max - value > value - min ? max - value : min - value);
      expect(writeSetting(set, part, setting, aim)).toBe(true);
      // A differential is read as a difference of two points: the last digits are rounding.
      const moved = settingsOf(set).filter(
        (one, i) => Math.abs(one.value - (settings[i]?.value as number)) > 1e-9,
      );
      expect(moved).toHaveLength(1);
      expect(moved[0]).toMatchObject({ part, setting });
      expect(moved[0]?.value).toBeCloseTo(aim, 6);
      expect(findFieldIssues(set)).toEqual([]);
      writeSetting(set, part, setting, value);
      settingsOf(set).forEach((one, i) => {
        expect(one.value).toBeCloseTo(settings[i]?.value as number, 6);
      });
    },
  );

  it('stops a dial at its ends', () => {
    const set = copyOf(plant);
    writeSetting(set, 'gas regulator', 'outlet pressure', 1e9);
    const [regulator] = settingsOf(set);
    expect(regulator?.value).toBe(regulator?.max);
    writeSetting(set, 'gas regulator', 'outlet pressure', -1e9);
    expect(settingsOf(set)[0]?.value).toBe(regulator?.min);
  });

  it('knows no dial that is not there, and takes no number that is none', () => {
    const set = copyOf(plant);
    expect(writeSetting(set, 'gas regulator', 'colour', 1)).toBe(false);
    expect(writeSetting(set, 'flue', 'outlet pressure', 1)).toBe(false);
    expect(writeSetting(set, 'gas regulator', 'outlet pressure', Number.NaN)).toBe(false);
    expect(set).toEqual(plant);
  });
});
