import { describe, expect, it } from 'vitest';
import { CAUSES, type Cause, STEPS } from '../../machines/index.ts';
import { live, liveOn, SHORT } from './patterns.ts';
import { DAIRY } from './practice.ts';
import { createRig, type Inputs, type Rig } from './rig.ts';

const legend = {
  p: { resetPressed: true },
  r: { resetPressed: false },
  h: { highLimitMade: false },
  H: { highLimitMade: true },
  v: { supplyInBand: false },
  V: { supplyInBand: true },
};
const CALLING = { callForHeat: true };

function lockedOut(): Rig {
  const rig = live(DAIRY, 'purge', 'hH', { legend });
  rig.give({ safetyRelayFeedback: false });
  return rig;
}
function press(rig: Rig): void {
  rig.give({ resetPressed: true });
  rig.pass(0.5);
  rig.give({ resetPressed: false });
}

describe('supervision that is always on', () => {
  const watched: readonly (readonly [Cause, Inputs])[] = [
    ['emergency stop', { emergencyStopClear: false }],
    ['water very low', { waterAboveSecond: false }],
    ['high limit open', { highLimitMade: false }],
    ['furnace pressure high', { furnacePressureInBand: false }],
    ['control fuse open', { controlFuseMade: false }],
  ];
  const steps = STEPS.filter((step) => step !== 'lockout');
  it.each(watched)('[SQ-35] [SQ-41] %s locks out at every step', (cause, inputs) => {
    for (const step of steps) {
      const rig = live(
        DAIRY,
        step === 'run down' || step === 'post-purge' ? 'modulation' : step,
        '',
      );
      if (step === 'run down' || step === 'post-purge') {
        rig.give({ callForHeat: false });
        rig.reach(step);
      }
      rig.give(inputs);
      expect([step, rig.outcome(), rig.burner.lockoutStep]).toEqual([step, cause, step]);
    }
  });
  it('[SQ-32] a flame at rest locks out', () => {
    const rig = createRig(DAIRY, SHORT);
    rig.pass(SHORT.flameOutS);
    rig.give({ flame: true });
    expect(rig.outcome()).toBe('flame seen at rest');
  });
  it('[SQ-40] fuse and relay are not judged without supply', () => {
    const rig = live(DAIRY, 'purge', '');
    rig.give({ supplyInBand: false, controlFuseMade: false, safetyRelayFeedback: false });
    expect(rig.outcome()).toBe('post-purge');
    rig.give({ supplyInBand: true });
    expect(rig.outcome()).toBe('control fuse open');
  });
});

describe('first out', () => {
  it('[SQ-43] the first cause is kept with its step', () => {
    const rig = live(DAIRY, 'purge', 'h', { legend });
    rig.give({ emergencyStopClear: false, flame: true });
    expect(rig.outcome()).toBe('high limit open');
    expect(rig.burner.lockoutStep).toBe('purge');
  });
  it('[SQ-43] of several in one instant what someone did comes first', () => {
    const rig = live(DAIRY, 'modulation', '');
    rig.give({
      flame: false,
      airProved: false,
      emergencyStopClear: false,
      gasPressureAboveLow: false,
    });
    expect(rig.outcome()).toBe('emergency stop');
  });
  it('[SQ-43] of several in one instant the flame comes last', () => {
    const rig = live(DAIRY, 'modulation', '');
    rig.give({ flame: false, gasPressureAboveLow: false });
    expect(rig.outcome()).toBe('gas pressure low');
  });
  it('[SQ-44] drives the alarm alone', () => {
    const rig = lockedOut();
    expect(rig.commanded('alarm')).toBe(true);
    rig.give({ ...CALLING, flame: true, airProved: true, safetyRelayFeedback: true });
    rig.pass(3600);
    expect(rig.outcome()).toBe('high limit open');
    expect(rig.burner.commands).toBe(live(DAIRY, 'purge', 'h', { legend }).burner.commands);
  });
});

describe('reset', () => {
  it.each([
    ['[SQ-45] pressed and let go', 'pr', 'at-rest check'],
    ['[SQ-45] pressed only', 'p', 'high limit open'],
    ['[SQ-46] held until too long, then let go', 'p.r', 'high limit open'],
    ['[SQ-46] held too long, let go and pressed again', 'p.rpr', 'at-rest check'],
    ['[SQ-47] while the cause stands', 'hpr', 'high limit open'],
    ['[SQ-47] while the cause stands, and again when it is gone', 'hprHpr', 'at-rest check'],
    ['[SQ-47] the cause coming back before it is let go', 'phr', 'high limit open'],
    ['[SQ-47] the cause gone before it is let go', 'hpHr', 'high limit open'],
    ['[SQ-47] without supply', 'vpr', 'high limit open'],
    ['[SQ-44] loss of supply alone', 'vV', 'high limit open'],
  ])('%s: %s → %s', (_title, pattern, expected) => {
    const rig = lockedOut();
    liveOn(rig, pattern, legend);
    expect(rig.outcome()).toBe(expected);
  });

  it('[SQ-46] a button already in at lockout does not reset by being let go', () => {
    const rig = live(DAIRY, 'purge', 'p', { legend });
    liveOn(rig, 'hH', legend);
    expect(rig.burner.resets.held).toBe(1);
    rig.give({ resetPressed: false });
    expect(rig.outcome()).toBe('high limit open');
    press(rig);
    expect(rig.step()).toBe('at-rest check');
  });
  it('[SQ-46] a button that never comes out is noted and resets nothing', () => {
    const rig = lockedOut();
    rig.give({ resetPressed: true });
    rig.pass(86_400);
    expect(rig.outcome()).toBe('high limit open');
    expect(rig.burner.resets).toMatchObject({ accepted: 0, held: 1 });
    expect(rig.changes).toContainEqual(expect.objectContaining({ kind: 'reset held' }));
  });
  it('[SQ-47] a refused reset is noted', () => {
    const rig = lockedOut();
    liveOn(rig, 'hpr', legend);
    expect(rig.burner.resets).toMatchObject({ accepted: 0, refused: 1 });
    expect(rig.changes).toContainEqual(expect.objectContaining({ kind: 'reset refused' }));
  });
  it('[SQ-48] accepted resets are counted and timed', () => {
    const rig = lockedOut();
    const atMs = rig.clock.nowMs + 500;
    press(rig);
    expect(rig.burner.resets).toMatchObject({ accepted: 1, timesMs: [atMs], repeated: false });
  });
  it.each([
    ['within the window', 20, true],
    ['spread over more than the window', 40, false],
  ])('[SQ-48] three resets %s', (_title, apartS, repeated) => {
    const rig = createRig(DAIRY, SHORT);
    for (let time = 0; time < 3; time++) {
      rig.give({ highLimitMade: false });
      rig.give({ highLimitMade: true });
      press(rig);
      rig.pass(apartS - 0.5);
    }
    expect(rig.burner.resets).toMatchObject({ accepted: 3, repeated });
  });
  it('[SQ-43] after a reset another open limit locks out anew', () => {
    const rig = live(DAIRY, 'purge', 'h', { legend });
    rig.give({ highLimitMade: true, emergencyStopClear: false });
    press(rig);
    expect(rig.outcome()).toBe('emergency stop');
    expect(rig.burner.lockoutStep).toBe('standby');
  });
  it('[SQ-45] without a lockout the button does nothing', () => {
    const rig = live(DAIRY, 'purge', 'pr', { legend });
    expect(rig.step()).toBe('purge');
    expect(rig.burner.resets).toMatchObject({ accepted: 0, refused: 0, held: 0 });
  });
});

describe('loss of power', () => {
  it('[SQ-44] cause, step and resets outlast it', () => {
    const before = lockedOut();
    liveOn(before, 'prh', legend);
    const saved = before.burner.saved();
    before.burner.stop();
    expect(before.burner.commands).toBe(0);
    expect(before.clock.nextDueMs).toBe(Number.POSITIVE_INFINITY);

    const rig = createRig(DAIRY, SHORT, {
      saved,
      stuck: CALLING,
      startS: before.clock.nowMs / 1000,
    });
    expect(rig.outcome()).toBe('high limit open');
    expect(rig.burner.lockoutStep).toBe(saved.step);
    expect(rig.burner.resets).toEqual(saved.resets);
    press(rig);
    expect(rig.step()).toBe('at-rest check');
    expect(rig.burner.resets.accepted).toBe(2);
  });
  it('[SQ-44] a limit open at power-up does not replace the kept cause', () => {
    const saved = lockedOut().burner.saved();
    const rig = createRig(DAIRY, SHORT, { saved, stuck: { emergencyStopClear: false } });
    expect(rig.outcome()).toBe('high limit open');
  });
  it('[SQ-44] a button in at power-up resets nothing', () => {
    const saved = lockedOut().burner.saved();
    const rig = createRig(DAIRY, SHORT, { saved });
    expect(rig.step()).toBe('lockout');
    const pressed = createRig(DAIRY, SHORT, { saved, stuck: { resetPressed: true } });
    pressed.pass(3600);
    expect(pressed.outcome()).toBe('high limit open');
  });
  it('[SQ-1] without a lockout it begins again from standby', () => {
    const before = live(DAIRY, 'modulation', '');
    const rig = createRig(DAIRY, SHORT, { saved: before.burner.saved() });
    expect(rig.step()).toBe('standby');
  });
  it.each(CAUSES)('[SQ-44] %s is kept', (cause) => {
    const { resets } = createRig(DAIRY, SHORT).burner;
    const rig = createRig(DAIRY, SHORT, {
      saved: { cause, step: 'purge', resets },
      stuck: CALLING,
    });
    rig.pass(60);
    expect(rig.outcome()).toBe(cause);
  });
});
