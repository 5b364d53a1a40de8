import { describe, expect, it } from 'vitest';
import type { StepName } from '../../machines/index.ts';
import { live } from './patterns.ts';
import { DAIRY, LAUNDRY } from './practice.ts';

const legend = {
  d: { damperAtPurge: false },
  D: { damperAtPurge: true },
  s: { fanAtPurgeSpeed: false },
  S: { fanAtPurgeSpeed: true },
  a: { airProved: false },
  A: { airProved: true },
  c: { airChangesCounted: true },
  f: { flame: true },
  n: { callForHeat: false },
  w: { waterAboveFirst: false },
  v: { supplyInBand: false },
  g: { gasPressureAboveLow: false },
};
type Rows = readonly (readonly [string, StepName, string, string])[];

describe('drive to purge', () => {
  const rows: Rows = [
    ['[SQ-11] all three proved for the dwell', 'drive to purge', '1', 'purge'],
    ['[SQ-11] position missing', 'drive to purge', 'SA..', 'drive to purge'],
    ['[SQ-11] speed missing', 'drive to purge', 'DA..', 'drive to purge'],
    ['[SQ-11] airflow missing', 'drive to purge', 'DS..', 'drive to purge'],
    ['[SQ-11] together at last', 'drive to purge', 'DSA', 'purge'],
    ['[SQ-12] one second before the limit', 'drive to purge', 'SA...', 'drive to purge'],
    ['[SQ-12] position never proved', 'drive to purge', 'SA....', 'purge position not proved'],
    ['[SQ-12] speed never proved', 'drive to purge', 'DA....', 'purge speed not proved'],
    ['[SQ-12] airflow never proved', 'drive to purge', 'DS....', 'airflow not proved'],
    [
      '[SQ-12] nothing proved names the position',
      'drive to purge',
      '......',
      'purge position not proved',
    ],
    ['[SQ-27] call for heat gone', 'drive to purge', '.n', 'post-purge'],
    ['[SQ-32] flame seen', 'drive to purge', '.f', 'flame seen before fuel'],
    ['[SQ-36] low water', 'drive to purge', '.w', 'post-purge'],
    ['[SQ-36] supply out', 'drive to purge', '.v', 'post-purge'],
    ['[SQ-37] gas pressure low', 'drive to purge', '.g', 'gas pressure low'],
  ];
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(DAIRY, step, pattern, { legend }).outcome()).toBe(expected);
  });

  it('[SQ-11] a proof that breaks within the dwell starts the dwell again', () => {
    const rig = live(DAIRY, 'drive to purge', '', { timings: { purgeDwellS: 3 } });
    rig.oblige();
    rig.pass(2);
    rig.give({ airProved: false });
    rig.give({ airProved: true });
    rig.pass(2);
    expect(rig.step()).toBe('drive to purge');
    rig.pass(1);
    expect(rig.step()).toBe('purge');
  });
  it('[SQ-12] proofs present but never steady count as airflow', () => {
    const rig = live(DAIRY, 'drive to purge', '', { timings: { purgeDwellS: 2 } });
    for (let half = 0; half < 6; half++) {
      rig.oblige();
      rig.pass(0.5);
      rig.give({ airProved: false });
      rig.give({ airProved: true });
      rig.pass(0.5);
    }
    expect(rig.outcome()).toBe('airflow not proved');
    expect(rig.burner.lockoutStep).toBe('drive to purge');
  });
  it('[SQ-11] a fan of fixed speed needs no speed proof', () => {
    expect(live(LAUNDRY, 'drive to purge', '1', { legend }).outcome()).toBe('purge');
    expect(live(LAUNDRY, 'drive to purge', 'DA', { legend }).outcome()).toBe('purge');
  });
});

describe('purge', () => {
  const rows: Rows = [
    ['[SQ-14] whole time, then counted', 'purge', '....c', 'drive to light-off'],
    ['[SQ-14] counted first, one second short', 'purge', 'c..', 'purge'],
    ['[SQ-14] counted first, whole time', 'purge', 'c...', 'drive to light-off'],
    ['[SQ-14] never counted, one second before the limit', 'purge', '......', 'purge'],
    ['[SQ-14] never counted', 'purge', '.......', 'airflow not proved'],
    ['[SQ-13] position lost', 'purge', '..d', 'drive to purge'],
    ['[SQ-13] speed lost', 'purge', '..s', 'drive to purge'],
    ['[SQ-13] airflow lost', 'purge', '..a', 'drive to purge'],
    ['[SQ-13] lost while waiting for the count', 'purge', '....a', 'drive to purge'],
    // A second of drive and dwell, then the whole purge once more.
    ['[SQ-13] a lost proof starts the time again, short', 'purge', 'c.aA...', 'purge'],
    ['[SQ-13] a lost proof starts the time again', 'purge', 'c.aA....', 'drive to light-off'],
    ['[SQ-27] call for heat gone', 'purge', '..n', 'post-purge'],
    ['[SQ-32] flame seen', 'purge', '..f', 'flame seen before fuel'],
    ['[SQ-36] low water', 'purge', '..w', 'post-purge'],
    ['[SQ-37] gas pressure low', 'purge', '..g', 'gas pressure low'],
  ];
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(DAIRY, step, pattern, { legend }).outcome()).toBe(expected);
  });

  it.each([
    ['d', 'purge position not proved'],
    ['s', 'purge speed not proved'],
    ['a', 'airflow not proved'],
  ])('[SQ-13] locks out where the profile says so: %s → %s', (lost, expected) => {
    const timings = { lostProofInPurge: 'lockout' } as const;
    const rig = live(DAIRY, 'purge', `..${lost}`, { legend, timings });
    expect(rig.outcome()).toBe(expected);
    expect(rig.burner.lockoutStep).toBe('purge');
  });

  it('[SQ-15] a proof that comes and goes does not begin the purge again for ever', () => {
    const rig = live(DAIRY, 'purge', 'aA.aA.aA.a', { legend, timings: { prePurgeLimitS: 12 } });
    expect(rig.outcome()).toBe('drive to purge');
    rig.pass(1);
    expect(rig.outcome()).toBe('airflow not proved');
  });
  it('[SQ-13] air is counted in purge only, and from the beginning each time', () => {
    const rig = live(DAIRY, 'purge', '.', { legend });
    expect(rig.commanded('countAir')).toBe(true);
    rig.give({ airProved: false });
    expect(rig.commanded('countAir')).toBe(false);
  });
});
