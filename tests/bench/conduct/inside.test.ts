import { describe, expect, it } from 'vitest';
import { CALL, check, judge, repair, rulesOf, supply } from './visit.ts';

/** The fan of the dairy runs from the drive to purge on; the main flame burns from about 190 s. */
const PURGE_S = 100;
const BURNING_S = 230;

describe('inside fan and burner', () => {
  it('[SC-15] hands where the fan turns are unsafe, at rest and isolated they are right', () => {
    expect(judge({ log: [CALL, repair(PURGE_S, 'fan belt', 'tighten')] })).toMatchObject([
      { rule: 'SC-15', severity: 'unsafe', what: { code: 'conduct.inside-turning.what' } },
    ]);
    expect(rulesOf({ log: [supply(4, false), repair(5, 'fan belt', 'tighten')] })).toEqual([]);
  });
  it('[SC-15] a fan that runs down still turns when the isolator has just gone off', () => {
    const belt = repair(PURGE_S, 'fan belt', 'tighten');
    expect(rulesOf({ log: [CALL, supply(PURGE_S - 1, false), belt] })).toEqual(['SC-15']);
    const later = repair(PURGE_S + 240, 'fan belt', 'tighten');
    expect(rulesOf({ log: [CALL, supply(PURGE_S - 1, false), later] })).toEqual([]);
  });
  it('[SC-15] a look for which the burner is opened is unsafe while it burns, not at rest', () => {
    for (const look of [
      check(BURNING_S, 'look', 'electrode'),
      check(BURNING_S, 'look: electrode'),
      check(BURNING_S, 'mirror and torch', 'electrode'),
    ]) {
      expect(judge({ log: [CALL, look] })).toMatchObject([
        { rule: 'SC-15', what: { code: 'conduct.inside-burning.what' } },
      ]);
    }
    expect(rulesOf({ log: [check(5, 'look', 'electrode')] })).toEqual([]);
  });
  it('[SC-15] a look from outside is right while it burns', () => {
    const log = [CALL, check(BURNING_S, 'look', 'sight glass'), check(BURNING_S, 'look', 'fuses')];
    expect(rulesOf({ log })).toEqual([]);
  });
  it('[SC-16] hands where a spark could jump at once are careless, isolated they are right', () => {
    const work = repair(5, 'ignition electrode', 'realign');
    expect(judge({ log: [work] })).toMatchObject([{ rule: 'SC-16', severity: 'careless' }]);
    expect(rulesOf({ log: [supply(4, false), work] })).toEqual([]);
  });
});
