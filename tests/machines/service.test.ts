import { describe, expect, it } from 'vitest';
import type { StepName } from '../../machines/index.ts';
import { live, liveOn, SHORT } from './patterns.ts';
import { DAIRY, LAUNDRY } from './practice.ts';

const legend = {
  m: { warmUpSatisfied: true },
  F: { flame: false },
  a: { airProved: false },
  n: { callForHeat: false },
  h: { callForHeat: true },
  q: { callForHeat: true, safetyRelayFeedback: false },
  w: { waterAboveFirst: false },
  v: { supplyInBand: false },
  g: { gasPressureAboveLow: false },
  G: { gasPressureBelowHigh: false },
  r: { safetyRelayFeedback: false },
  p: { positionsOnCurve: false },
  P: { positionsOnCurve: true },
  s: { speedOnCurve: false },
  S: { speedOnCurve: true },
  b: { positionsOnCurve: false, speedOnCurve: false },
  o: { upstreamValveClosed: false },
  c: { downstreamValveClosed: false },
  C: { upstreamValveClosed: true, downstreamValveClosed: true },
};
type Rows = readonly (readonly [string, StepName, string, string])[];

describe('low-fire hold', () => {
  const rows: Rows = [
    ['[SQ-25] warm from the beginning, held all the same', 'low-fire hold', 'm', 'low-fire hold'],
    ['[SQ-25] warm from the beginning', 'low-fire hold', 'm.', 'modulation'],
    ['[SQ-25] warm later', 'low-fire hold', '...m', 'modulation'],
    ['[SQ-25] one second before the limit', 'low-fire hold', '.....', 'low-fire hold'],
    ['[SQ-25] never warm', 'low-fire hold', '......', 'warm-up not satisfied'],
    ['[SQ-33] flame lost', 'low-fire hold', '.F', 'flame lost in service'],
    ['[SQ-38] airflow lost', 'low-fire hold', '.a', 'airflow lost in service'],
    ['[SQ-37] gas pressure low', 'low-fire hold', '.g', 'gas pressure low'],
    ['[SQ-37] gas pressure high', 'low-fire hold', '.G', 'gas pressure high'],
    ['[SQ-42] relay dropping out', 'low-fire hold', '.r', 'safety relay did not follow'],
    ['[SQ-27] call for heat gone', 'low-fire hold', '.n', 'run down'],
    ['[SQ-39] off the curve does not matter yet', 'low-fire hold', 'b....', 'low-fire hold'],
  ];
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(DAIRY, step, pattern, { legend }).outcome()).toBe(expected);
  });
});

describe('modulation', () => {
  const onCurve = { positionsOnCurve: true, speedOnCurve: true };
  const rows: Rows = [
    ['[SQ-26] goes on', 'modulation', '...............', 'modulation'],
    ['[SQ-33] flame lost', 'modulation', '.F', 'flame lost in service'],
    ['[SQ-38] airflow lost', 'modulation', '.a', 'airflow lost in service'],
    ['[SQ-37] gas pressure low', 'modulation', '.g', 'gas pressure low'],
    ['[SQ-42] relay dropping out', 'modulation', '.r', 'safety relay did not follow'],
    ['[SQ-39] position off, one second short', 'modulation', 'p', 'modulation'],
    ['[SQ-39] position off', 'modulation', 'p.', 'position left its curve'],
    ['[SQ-39] position off and back', 'modulation', 'pPpP', 'modulation'],
    ['[SQ-39] speed off', 'modulation', 's.', 'speed left its curve'],
    ['[SQ-39] speed off and back', 'modulation', 'sSsS', 'modulation'],
    // The position's comings and goings do not lend the speed more time.
    ['[SQ-39] each counts for itself', 'modulation', 'bP', 'speed left its curve'],
    ['[SQ-27] call for heat gone', 'modulation', '.n', 'run down'],
    ['[SQ-36] low water', 'modulation', '.w', 'post-purge'],
    ['[SQ-36] supply out', 'modulation', '.v', 'post-purge'],
  ];
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(DAIRY, step, pattern, { legend, before: onCurve }).outcome()).toBe(expected);
  });
  it('[SQ-39] a fan of fixed speed has no speed to keep', () => {
    expect(live(LAUNDRY, 'modulation', 's...', { legend, before: onCurve }).outcome()).toBe(
      'modulation',
    );
  });
  it('[SQ-37] gas pressure high', () => {
    expect(live(DAIRY, 'modulation', 'G', { legend }).outcome()).toBe('gas pressure high');
  });
});

describe('run down and post-purge', () => {
  const rows: Rows = [
    ['[SQ-28] low fire, one second short', 'modulation', 'n', 'run down'],
    ['[SQ-28] heat called for again does not stop it', 'modulation', 'nh', 'post-purge'],
    ['[SQ-33] flame lost at low fire', 'modulation', 'nF', 'flame lost in service'],
    ['[SQ-38] airflow lost at low fire', 'modulation', 'na', 'airflow lost in service'],
    ['[SQ-36] low water at low fire', 'modulation', 'nw', 'post-purge'],
    ['[SQ-29] upstream valve not closed, one second short', 'modulation', 'on.', 'run down'],
    ['[SQ-29] upstream valve not closed', 'modulation', 'on...', 'valve not proved closed'],
    ['[SQ-29] downstream valve not closed', 'modulation', 'cn...', 'valve not proved closed'],
    ['[SQ-29] closed late', 'modulation', 'on.C', 'post-purge'],
    ['[SQ-29] closing is not judged without supply', 'modulation', 'on.v.', 'post-purge'],
    ['[SQ-31] one second short', 'modulation', 'n...', 'post-purge'],
    ['[SQ-31] then standby', 'modulation', 'n....', 'standby'],
    ['[SQ-31] heat called for again waits', 'modulation', 'n.q.', 'post-purge'],
    ['[SQ-31] and is answered then', 'modulation', 'n.q..', 'at-rest check'],
    ['[SQ-31] airflow is not needed for it', 'modulation', 'n.a.', 'post-purge'],
    ['[SQ-36] low water does not lengthen it', 'modulation', 'n.w..', 'standby'],
  ];
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(DAIRY, step, pattern, { legend }).outcome()).toBe(expected);
  });
  it('[SQ-27] tells why it stopped', () => {
    expect(live(DAIRY, 'modulation', 'n', { legend }).burner.stopReason).toBe(
      'call for heat ended',
    );
    expect(live(DAIRY, 'modulation', 'w', { legend }).burner.stopReason).toBe('water low');
  });
  it('[SQ-32] a flame that dies in time is no fault, one that stays is', () => {
    const rig = live(DAIRY, 'modulation', 'n', { legend });
    rig.clock.advanceTo(rig.clock.nowMs + 1000 + SHORT.flameOutS * 1000 - 10);
    expect(rig.step()).toBe('post-purge');
    rig.clock.advanceTo(rig.clock.nowMs + 10);
    expect(rig.outcome()).toBe('flame seen at rest');
    expect(rig.burner.lockoutStep).toBe('post-purge');
  });
});

describe('recycling', () => {
  const once = { recyclesAllowed: 1 };
  it('[SQ-34] none allowed: a flame lost locks out', () => {
    expect(live(DAIRY, 'modulation', 'F', { legend }).outcome()).toBe('flame lost in service');
  });
  it('[SQ-34] one allowed: fuel is shut and a whole start follows', () => {
    const rig = live(DAIRY, 'modulation', 'F', { legend, timings: once });
    expect(rig.step()).toBe('post-purge');
    expect(rig.burner.stopReason).toBe('flame lost in service');
    rig.reach('valve proving: empty');
    rig.reach('purge');
    rig.reach('modulation');
    rig.give({ flame: false });
    expect(rig.outcome()).toBe('flame lost in service');
  });
  it('[SQ-34] a call for heat that ends gives it back', () => {
    const rig = live(DAIRY, 'modulation', 'F', { legend, timings: once });
    rig.reach('modulation');
    rig.give({ callForHeat: false });
    rig.reach('standby');
    rig.reach('modulation');
    rig.give({ flame: false });
    expect(rig.step()).toBe('post-purge');
  });
  it.each(['pilot proving', 'main trial', 'main proving'] as const)(
    '[SQ-34] a flame lost in %s is not recycled',
    (step) => {
      const rig = live(DAIRY, step, 'F', { legend, timings: once });
      expect(rig.step()).toBe('lockout');
    },
  );
  it('[SQ-34] other causes are not recycled', () => {
    const rig = live(DAIRY, 'modulation', 'a', { legend, timings: once });
    expect(rig.outcome()).toBe('airflow lost in service');
  });
  it('[SQ-34] counts in the same way with supply out in the same instant', () => {
    const rig = live(DAIRY, 'modulation', '', { timings: once });
    rig.give({ flame: false, supplyInBand: false });
    expect(rig.step()).toBe('post-purge');
    rig.give({ supplyInBand: true });
    rig.reach('modulation');
    liveOn(rig, 'F', legend);
    expect(rig.outcome()).toBe('flame lost in service');
  });
});
