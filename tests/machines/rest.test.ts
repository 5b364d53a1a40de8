import { describe, expect, it } from 'vitest';
import { live, liveOn, SHORT } from './patterns.ts';
import { BAKERY, DAIRY, LAUNDRY, SCHOOL } from './practice.ts';
import { createRig, type Inputs } from './rig.ts';

describe('standby', () => {
  const legend = {
    h: { callForHeat: true },
    n: { callForHeat: false },
    w: { waterAboveFirst: false },
    W: { waterAboveFirst: true },
    v: { supplyInBand: false },
    V: { supplyInBand: true },
    b: { highLimitMade: false, callForHeat: true },
  };
  it.each([
    ['[SQ-1] nothing without a call for heat', '....', 'standby'],
    ['[SQ-1] a call for heat', 'h', 'at-rest check'],
    ['[SQ-1] a call together with an open limit', 'b', 'high limit open'],
    ['[SQ-2] low water, one second before the limit', 'wh....', 'standby'],
    ['[SQ-2] low water for too long', 'wh.....', 'water low'],
    ['[SQ-2] supply out for too long', 'vh.....', 'supply out of band'],
    ['[SQ-2] water back in time', 'wh...W', 'at-rest check'],
    ['[SQ-2] supply back in time', 'vh...V', 'at-rest check'],
    ['[SQ-2] the call gone, the wait begins afresh', 'wh....nh....', 'standby'],
  ])('%s: %s → %s', (_title, pattern, expected) => {
    const rig = createRig(DAIRY, SHORT);
    liveOn(rig, pattern, legend);
    expect(rig.outcome()).toBe(expected);
  });
  it('[SQ-1] drives nothing', () => {
    const rig = createRig(DAIRY, SHORT);
    expect(rig.burner.commands).toBe(0);
    expect(rig.target()).toBe('rest');
  });
});

describe('at-rest check', () => {
  const air = { airProved: true };
  const legend = {
    A: { airProved: false },
    r: { safetyRelayFeedback: false },
    n: { callForHeat: false },
    w: { waterAboveFirst: false },
    v: { supplyInBand: false },
  };
  const rows: readonly (readonly [string, Inputs, string, string])[] = [
    ['[SQ-3] relay right both ways and all at rest', {}, '11', 'valve proving: empty'],
    ['[SQ-3] relay left out for its time', {}, '1', 'at-rest check'],
    ['[SQ-3] relay seen picked up while left out', {}, '0', 'safety relay did not follow'],
    ['[SQ-3] relay not seen picked up', {}, '10', 'safety relay did not follow'],
    ['[SQ-4] air switch made, one second short', air, '11....', 'at-rest check'],
    ['[SQ-4] air switch that stays made', air, '11.....', 'air proved with fan at rest'],
    ['[SQ-4] air switch that opens in time', air, '11....A', 'valve proving: empty'],
    ['[SQ-4] air switch that opens too late', air, '11.....A', 'air proved with fan at rest'],
    [
      '[SQ-4] upstream valve not proved closed',
      { upstreamValveClosed: false },
      '11.....',
      'valve not proved closed',
    ],
    [
      '[SQ-4] downstream valve not proved closed',
      { downstreamValveClosed: false },
      '11.....',
      'valve not proved closed',
    ],
    ['[SQ-4] gas pressure low', { gasPressureAboveLow: false }, '11.....', 'gas pressure low'],
    ['[SQ-4] gas pressure high', { gasPressureBelowHigh: false }, '11.....', 'gas pressure high'],
    ['[SQ-4] relay named before air', air, '11.r...', 'safety relay did not follow'],
    [
      '[SQ-4] air named before valves',
      { ...air, upstreamValveClosed: false },
      '11.....',
      'air proved with fan at rest',
    ],
    [
      '[SQ-4] valves named before gas',
      { upstreamValveClosed: false, gasPressureAboveLow: false },
      '11.....',
      'valve not proved closed',
    ],
    ['[SQ-5] call for heat gone', air, '11n', 'standby'],
    ['[SQ-36] low water', air, '11w', 'standby'],
    ['[SQ-36] supply out', air, '11v', 'standby'],
  ];
  it.each(rows)('%s: %o, %s → %s', (_title, before, pattern, expected) => {
    expect(live(DAIRY, 'at-rest check', pattern, { before, legend }).outcome()).toBe(expected);
  });

  it('[SQ-4] does not ask for proof of closure where none is fitted', () => {
    const before = { upstreamValveClosed: false, downstreamValveClosed: false };
    expect(live(LAUNDRY, 'at-rest check', '11', { before }).outcome()).toBe('drive to purge');
  });

  it.each([
    ['[SQ-6] before start', SCHOOL, 'valve proving: empty'],
    ['[SQ-6] after run-down, not proved yet', BAKERY, 'valve proving: empty'],
    ['[SQ-6] none', LAUNDRY, 'drive to purge'],
  ])('%s → %s', (_title, variant, expected) => {
    expect(live(variant, 'at-rest check', '11').outcome()).toBe(expected);
  });
});
