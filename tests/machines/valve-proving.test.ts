import { describe, expect, it } from 'vitest';
import type { StepName, Variant } from '../../machines/index.ts';
import { live, liveOn, SHORT } from './patterns.ts';
import { BAKERY, DAIRY, LAUNDRY, SCHOOL } from './practice.ts';
import { createRig, type Rig } from './rig.ts';

const legend = {
  n: { callForHeat: false },
  w: { waterAboveFirst: false },
  v: { supplyInBand: false },
  g: { gasPressureAboveLow: false },
  r: { safetyRelayFeedback: false },
};
const rows: readonly (readonly [string, StepName, string, string])[] = [
  ['[SQ-7] empty at the end', 'valve proving: empty', '11', 'valve proving: hold empty'],
  ['[SQ-7] empty late', 'valve proving: empty', '01', 'valve proving: hold empty'],
  ['[SQ-7] not empty at the end', 'valve proving: empty', '10', 'interspace did not empty'],
  ['[SQ-7] empty at once is not left at once', 'valve proving: empty', '1', 'valve proving: empty'],
  ['[SQ-8] empty all the time', 'valve proving: hold empty', '...', 'valve proving: fill'],
  ['[SQ-8] one second short', 'valve proving: hold empty', '..', 'valve proving: hold empty'],
  ['[SQ-8] rising in the last second', 'valve proving: hold empty', '..0', 'upstream valve passes'],
  ['[SQ-9] full at the end', 'valve proving: fill', '01', 'valve proving: hold full'],
  ['[SQ-9] not full at the end', 'valve proving: fill', '10', 'interspace did not fill'],
  ['[SQ-10] full all the time', 'valve proving: hold full', '...', 'drive to purge'],
  ['[SQ-10] one second short', 'valve proving: hold full', '..', 'valve proving: hold full'],
  [
    '[SQ-10] falling in the last second',
    'valve proving: hold full',
    '..0',
    'downstream or vent valve passes',
  ],
  ['[SQ-27] call for heat gone', 'valve proving: fill', 'n', 'post-purge'],
  ['[SQ-36] low water', 'valve proving: fill', 'w', 'post-purge'],
  ['[SQ-36] supply out', 'valve proving: hold full', 'v', 'post-purge'],
  ['[SQ-37] gas pressure low', 'valve proving: fill', 'g', 'gas pressure low'],
  ['[SQ-42] relay dropping out', 'valve proving: hold empty', 'r', 'safety relay did not follow'],
];

describe.each([
  ['with a proving vent', DAIRY],
  ['with a vent that is normally open', { ...DAIRY, vent: 'normally open' }],
  ['without a vent', { ...DAIRY, vent: 'none' }],
] as [string, Variant][])('valve proving %s', (_name, variant) => {
  it.each(rows)('%s: %s, %s → %s', (_title, step, pattern, expected) => {
    expect(live(variant, step, pattern, { legend }).outcome()).toBe(expected);
  });
});

describe('valve proving after run-down', () => {
  function runDownOf(variant: Variant): Rig {
    const rig = createRig(variant, SHORT);
    rig.reach('modulation');
    rig.give({ callForHeat: false });
    return rig;
  }
  it('[SQ-30] follows the shut valves with the fan running, before post-purge', () => {
    const rig = runDownOf(BAKERY);
    rig.reach('valve proving: empty');
    expect(rig.commanded('fan')).toBe(true);
    liveOn(rig, '11...01', {});
    expect(rig.step()).toBe('valve proving: hold full');
    expect(rig.burner.valvesProved).toBe(false);
    rig.pass(3);
    expect(rig.step()).toBe('post-purge');
    expect(rig.burner.valvesProved).toBe(true);
  });
  it('[SQ-6] what was proved holds for the next start, and for that one only', () => {
    const rig = runDownOf(BAKERY);
    rig.reach('standby');
    rig.reach('at-rest check');
    liveOn(rig, '111');
    expect(rig.step()).toBe('drive to purge');
    rig.reach('main trial');
    expect(rig.burner.valvesProved).toBe(false);
  });
  it('[SQ-6] a start broken off before fuel keeps what was proved', () => {
    const rig = runDownOf(BAKERY);
    rig.reach('standby');
    rig.reach('purge');
    rig.give({ callForHeat: false });
    rig.reach('post-purge');
    rig.reach('at-rest check');
    liveOn(rig, '111');
    expect(rig.step()).toBe('drive to purge');
  });
  it('[SQ-6] a lockout undoes what was proved', () => {
    const rig = runDownOf(BAKERY);
    rig.reach('standby');
    expect(rig.burner.valvesProved).toBe(true);
    rig.give({ emergencyStopClear: false });
    rig.give({ emergencyStopClear: true, resetPressed: true });
    rig.give({ resetPressed: false });
    rig.reach('at-rest check');
    liveOn(rig, '111');
    expect(rig.step()).toBe('valve proving: empty');
  });
  it('[SQ-36] supply out breaks it off, unproved', () => {
    const rig = runDownOf(BAKERY);
    rig.reach('valve proving: fill');
    rig.give({ supplyInBand: false });
    expect(rig.step()).toBe('post-purge');
    expect(rig.burner.valvesProved).toBe(false);
  });
  it('[SQ-30] a leak found after run-down locks out at once', () => {
    const rig = runDownOf(BAKERY);
    rig.reach('valve proving: hold full');
    rig.give({ interspaceFull: false });
    expect(rig.outcome()).toBe('downstream or vent valve passes');
    expect(rig.burner.lockoutStep).toBe('valve proving: hold full');
  });
  it('[SQ-30] without proof of closure it waits out the closing time', () => {
    const rig = runDownOf({ ...BAKERY, proofOfClosure: false });
    rig.pass(SHORT.runDownS);
    rig.pass(SHORT.valveCloseLimitS - 1);
    expect(rig.step()).toBe('run down');
    rig.pass(1);
    expect(rig.step()).toBe('valve proving: empty');
  });
  it.each([
    ['before start', SCHOOL],
    ['none', LAUNDRY],
  ])('[SQ-6] a plant that proves %s does not prove after run-down', (_name, variant) => {
    const rig = runDownOf(variant);
    rig.pass(SHORT.runDownS);
    rig.pass(SHORT.valveCloseLimitS);
    expect(rig.step()).toBe('post-purge');
  });
});
