import { describe, expect, it } from 'vitest';
import type { StepName, Variant } from '../../machines/index.ts';
import { live } from './patterns.ts';
import { DAIRY, LAUNDRY, SCHOOL } from './practice.ts';

const legend = {
  d: { damperAtLightOff: false },
  D: { damperAtLightOff: true },
  s: { fanAtLightOffSpeed: false },
  S: { fanAtLightOffSpeed: true },
  u: { fuelValveAtLightOff: false },
  U: { fuelValveAtLightOff: true },
  a: { airProved: false },
  f: { flame: true },
  F: { flame: false },
  n: { callForHeat: false },
  w: { waterAboveFirst: false },
  v: { supplyInBand: false },
  g: { gasPressureAboveLow: false },
  r: { safetyRelayFeedback: false },
};
type Rows = readonly (readonly [string, StepName, string, string])[];

describe('drive to light-off', () => {
  const rows: Rows = [
    ['[SQ-16] all proved for the dwell', 'drive to light-off', '1', 'spark check'],
    ['[SQ-16] damper missing', 'drive to light-off', 'SU..', 'drive to light-off'],
    ['[SQ-16] speed missing', 'drive to light-off', 'DU..', 'drive to light-off'],
    ['[SQ-16] fuel valve missing', 'drive to light-off', 'DS..', 'drive to light-off'],
    ['[SQ-16] together at last', 'drive to light-off', 'DSU', 'spark check'],
    ['[SQ-17] one second before the limit', 'drive to light-off', 'DS..', 'drive to light-off'],
    ['[SQ-17] never proved', 'drive to light-off', 'DS...', 'light-off position not proved'],
    ['[SQ-38] airflow lost', 'drive to light-off', '.a', 'airflow not proved'],
    ['[SQ-32] flame seen', 'drive to light-off', '.f', 'flame seen before fuel'],
    ['[SQ-27] call for heat gone', 'drive to light-off', '.n', 'post-purge'],
  ];
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(DAIRY, step, pattern, { legend }).outcome()).toBe(expected);
  });
  it('[SQ-16] a proof that breaks within the dwell starts the dwell again', () => {
    const rig = live(DAIRY, 'drive to light-off', '', { timings: { lightOffDwellS: 2 } });
    rig.oblige();
    rig.pass(1.5);
    rig.give({ damperAtLightOff: false });
    rig.give({ damperAtLightOff: true });
    rig.pass(1.5);
    expect(rig.step()).toBe('drive to light-off');
    rig.pass(0.5);
    expect(rig.step()).toBe('spark check');
  });
  it('[SQ-16] a fan of fixed speed needs no speed proof', () => {
    expect(live(LAUNDRY, 'drive to light-off', 'DU', { legend }).outcome()).toBe('spark check');
  });
});

describe.each([
  ['an interrupted pilot', DAIRY],
  ['an intermittent pilot', { ...DAIRY, ignition: 'intermittent pilot' }],
] as [string, Variant][])('light-off with %s', (_name, variant) => {
  const rows: Rows = [
    ['[SQ-18] no flame for the whole time', 'spark check', '..', 'pilot trial'],
    ['[SQ-18] one second short', 'spark check', '.', 'spark check'],
    ['[SQ-18] flame seen', 'spark check', '.f', 'flame seen before fuel'],
    ['[SQ-19] flame at the end', 'pilot trial', '..f', 'pilot proving'],
    ['[SQ-19] flame early does not end the trial', 'pilot trial', 'f.', 'pilot trial'],
    ['[SQ-19] flame early, gone and back', 'pilot trial', 'fFf', 'pilot proving'],
    ['[SQ-19] flame gone at the end', 'pilot trial', 'f.F', 'pilot not lit'],
    ['[SQ-19] no flame', 'pilot trial', '...', 'pilot not lit'],
    ['[SQ-20] flame all the time', 'pilot proving', '...', 'main trial'],
    ['[SQ-20] one second short', 'pilot proving', '..', 'pilot proving'],
    ['[SQ-20] flame lost in the last second', 'pilot proving', '..F', 'pilot lost'],
    ['[SQ-21] flame all the time', 'main trial', '...', 'main proving'],
    ['[SQ-21] one second short', 'main trial', '..', 'main trial'],
    ['[SQ-21] flame lost at once', 'main trial', 'F', 'main not lit'],
    ['[SQ-21] flame lost in the last second', 'main trial', '..F', 'main not lit'],
    ['[SQ-22] flame all the time', 'main proving', '...', 'low-fire hold'],
    ['[SQ-22] flame lost in the last second', 'main proving', '..F', 'main lost'],
  ];
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(variant, step, pattern, { legend }).outcome()).toBe(expected);
  });
});

describe('light-off with direct spark', () => {
  const rows: Rows = [
    ['[SQ-23] no pilot steps', 'spark check', '..', 'main trial'],
    ['[SQ-21] flame at the end', 'main trial', '..f', 'main proving'],
    ['[SQ-21] flame early does not end the trial', 'main trial', 'f.', 'main trial'],
    ['[SQ-21] flame early, gone and back', 'main trial', 'fFf', 'main proving'],
    ['[SQ-21] no flame', 'main trial', '...', 'main not lit'],
    ['[SQ-21] flame gone at the end', 'main trial', 'ffF', 'main not lit'],
    ['[SQ-22] flame all the time', 'main proving', '...', 'low-fire hold'],
    ['[SQ-22] flame lost', 'main proving', '.F', 'main lost'],
  ];
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(SCHOOL, step, pattern, { legend }).outcome()).toBe(expected);
  });
});

describe.each([
  'spark check',
  'pilot trial',
  'pilot proving',
  'main trial',
  'main proving',
] as const)('supervision in %s', (step) => {
  const lit = step === 'pilot trial' ? { flame: true } : {};
  it.each([
    ['[SQ-27] call for heat gone', '.n', 'post-purge'],
    ['[SQ-36] low water', '.w', 'post-purge'],
    ['[SQ-36] supply out', '.v', 'post-purge'],
    ['[SQ-37] gas pressure low', '.g', 'gas pressure low'],
    ['[SQ-38] airflow lost', '.a', 'airflow not proved'],
    ['[SQ-42] relay dropping out', '.r', 'safety relay did not follow'],
  ])('%s: %s → %s', (_title, pattern, expected) => {
    const timings = {
      sparkCheckS: 5,
      pilotTrialS: 5,
      mainTrialS: 5,
      pilotProvingS: 5,
      mainProvingS: 5,
    };
    const rig = live(DAIRY, step, pattern, { legend, timings, before: lit });
    expect(rig.outcome()).toBe(expected);
    expect(rig.commanded('upstreamValve') || rig.commanded('pilotValve')).toBe(false);
  });
  it.each(['d', 's', 'u'])('[SQ-39] light-off left for too long (%s) locks out', (lost) => {
    const timings = {
      sparkCheckS: 5,
      pilotTrialS: 5,
      mainTrialS: 5,
      pilotProvingS: 5,
      mainProvingS: 5,
    };
    const short = live(DAIRY, step, `${lost}`, { legend, timings, before: lit });
    expect(short.outcome()).toBe(step);
    const back = live(DAIRY, step, `${lost}${lost.toUpperCase()}.`, {
      legend,
      timings,
      before: lit,
    });
    expect(back.outcome()).toBe(step);
    const long = live(DAIRY, step, `${lost}.`, { legend, timings, before: lit });
    expect(long.outcome()).toBe('light-off position not proved');
    expect(long.burner.lockoutStep).toBe(step);
  });
});
