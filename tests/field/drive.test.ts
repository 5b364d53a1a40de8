import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  createDrive,
  type Drive,
  prepareDrive,
  proveDrive,
  readDriveCurrent,
  stepDrive,
} from '../../src/field/drive.ts';
import {
  type FixedSpeedParameters,
  fixedSpeedParameters,
  type VariableSpeedParameters,
  variableSpeedParameters,
} from '../../src/field/index.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;
const PURGE_RPM = 1760;
const LIGHT_OFF_RPM = 900;

const motor = {
  id: 'fan',
  ratedTorqueNm: 81.4,
  ratedCurrentA: 24,
  magnetisingCurrentA: 9,
  inertiaKgM2: 3,
} as const;

function variable(given: Partial<VariableSpeedParameters> = {}, stepS = STEP_S): Drive {
  const p = fillDefaults(variableSpeedParameters, {
    ...motor,
    kind: 'variable speed',
    rampUpS: 25,
    rampDownS: 25,
    currentLimitA: 32,
    ...given,
  });
  return createDrive(p, PURGE_RPM, LIGHT_OFF_RPM, stepS, createContactBoard());
}

function fixed(given: Partial<FixedSpeedParameters> = {}): Drive {
  const p = fillDefaults(fixedSpeedParameters, { ...motor, kind: 'fixed speed', ...given });
  return createDrive(p, PURGE_RPM, LIGHT_OFF_RPM, STEP_S, createContactBoard());
}

/** A fan that asks for 70 N·m at 1760 rpm and for the square of the speed below. */
function run(
  drive: Drive,
  rpm: number,
  seconds: number,
  { on = true, volts = 1, loadNm = 70, stepS = STEP_S } = {},
): void {
  const steps = Math.round(seconds / stepS);
  for (let i = 0; i < steps; i++) {
    const share = drive.fanRpm / PURGE_RPM;
    drive.targetRpm = rpm;
    drive.loadNm = loadNm * share * share;
    drive.voltsShare = volts;
    drive.mainsHz = 60;
    stepDrive(drive, on, stepS);
    proveDrive(drive, stepS);
  }
}

describe('variable-speed drive', () => {
  it('ramps to purge speed in its ramp time, holds it on the rpm, and proves it', () => {
    const d = variable();
    run(d, PURGE_RPM, 23);
    expect(d.atPurge.contact.made).toBe(false);
    run(d, PURGE_RPM, 10);
    // Slip compensation brings the shaft to the speed asked for: within 1 rpm of it.
    expect(Math.abs(d.fanRpm - PURGE_RPM)).toBeLessThan(1);
    expect([d.atPurge.contact.made, d.atLightOff.contact.made]).toEqual([true, false]);
  });

  it('at purge puts out the synchronous frequency of that speed and the slip of its torque', () => {
    const d = variable();
    run(d, PURGE_RPM, 60);
    // 58.67 Hz for 1760 rpm with 4 poles; 71 N·m of 81.4 slip 34.9 of 40 rpm, 1.16 Hz.
    expect(d.torqueNm).toBeCloseTo(71, 1);
    expect(d.frequencyHz).toBeCloseTo(58.667 + (71 / 81.4) * (40 / 30), 2);
    // √(9² + (22.25·71/81.4)²)
    expect(readDriveCurrent(d)).toBeCloseTo(21.39, 1);
  });

  it('without slip compensation stays below its speed by just that slip', () => {
    const d = variable({ slipCompensation: 0 });
    run(d, PURGE_RPM, 60);
    expect(d.frequencyHz).toBeCloseTo(58.667, 2);
    // Load falls with the speed, so the slip is a little under 34.9 rpm.
    expect(PURGE_RPM - d.fanRpm).toBeGreaterThan(32);
    expect(PURGE_RPM - d.fanRpm).toBeLessThan(35);
  });

  it('in current limit just never gets there: torque stands at the limit, speed below purge', () => {
    const d = variable({ currentLimitA: 16 });
    run(d, PURGE_RPM, 200);
    expect(readDriveCurrent(d)).toBeCloseTo(16, 1);
    // The limit's torque, 48.4 N·m, is what the fan asks for at the speed it stops at.
    const share = d.fanRpm / PURGE_RPM;
    expect(70 * share * share + 1).toBeCloseTo(48.4, 0);
    expect(d.atPurge.contact.made).toBe(false);
  });

  it('never lets more current through than its limit, on the way up or at speed', () => {
    const d = variable({ currentLimitA: 20 });
    let most = 0;
    for (let i = 0; i < 600; i++) {
      run(d, PURGE_RPM, 0.1);
      most = Math.max(most, readDriveCurrent(d));
    }
    expect(most).toBeLessThan(20.01);
  });

  it('comes down to light-off speed on its ramp and proves that', () => {
    const d = variable();
    run(d, PURGE_RPM, 35);
    run(d, LIGHT_OFF_RPM, 20);
    expect(Math.abs(d.fanRpm - LIGHT_OFF_RPM)).toBeLessThan(1);
    expect([d.atPurge.contact.made, d.atLightOff.contact.made]).toEqual([false, true]);
  });

  it('coasts to a stand on its load and friction when told to stop, its contactor dead or its supply gone', () => {
    for (const stop of ['stop', 'coil', 'contacts', 'supply'] as const) {
      const d = variable();
      run(d, PURGE_RPM, 35);
      if (stop === 'coil') d.parameters.contactorCoil = 'open';
      if (stop === 'contacts') d.parameters.contactorContacts = 'burnt';
      prepareDrive(d, PURGE_RPM, LIGHT_OFF_RPM, STEP_S);
      const how = { on: stop !== 'stop', volts: stop === 'supply' ? 0 : 1 };
      run(d, PURGE_RPM, 1, how);
      expect(d.fanRpm).toBeGreaterThan(1200);
      run(d, PURGE_RPM, 300, how);
      expect(d.fanRpm).toBe(0);
      expect(d.feedbackRpm).toBe(0);
    }
  });

  it('catches a fan that is still turning instead of braking it', () => {
    const d = variable();
    run(d, PURGE_RPM, 35);
    run(d, PURGE_RPM, 3, { on: false });
    const before = d.fanRpm;
    run(d, PURGE_RPM, 0.5);
    expect(d.fanRpm).toBeGreaterThan(0.9 * before);
    run(d, PURGE_RPM, 30);
    expect(Math.abs(d.fanRpm - PURGE_RPM)).toBeLessThan(1);
  });

  it('with its speed feedback lost turns as before and proves nothing', () => {
    const d = variable({ feedback: 'lost' });
    run(d, PURGE_RPM, 60);
    expect(Math.abs(d.fanRpm - PURGE_RPM)).toBeLessThan(1);
    expect([d.feedbackRpm, d.atPurge.contact.made]).toEqual([0, false]);
  });

  it.each([
    ['fan shaft', false],
    ['motor shaft', true],
  ] as const)(
    'with a slipping belt is seen through only by a pick-up on the fan: %s',
    (feedbackOn, proved) => {
      const d = variable({ beltSlip: 0.2, feedbackOn });
      run(d, PURGE_RPM, 60);
      expect(d.fanRpm).toBeCloseTo(0.8 * PURGE_RPM, 0);
      expect(d.atPurge.contact.made).toBe(proved);
    },
  );

  it('tells which way it turns', () => {
    expect(variable({ rotation: 'backward' }).backward).toBe(true);
  });

  it('keeps running without command when its contacts are welded', () => {
    const d = variable({ contactorContacts: 'welded' });
    run(d, PURGE_RPM, 60, { on: false });
    expect(Math.abs(d.fanRpm - PURGE_RPM)).toBeLessThan(1);
  });

  it('follows the same run-up at half the step: within 0.5 % of full speed', () => {
    const whole = variable();
    const half = variable({}, STEP_S / 2);
    for (let i = 0; i < 60; i++) {
      run(whole, PURGE_RPM, 0.5);
      run(half, PURGE_RPM, 0.5, { stepS: STEP_S / 2 });
      expect(Math.abs(whole.fanRpm - half.fanRpm)).toBeLessThan(0.005 * PURGE_RPM);
    }
  });

  it('is stable at 10 ms with a rotor a thousand times lighter', () => {
    const d = variable({ inertiaKgM2: 0.003 });
    run(d, LIGHT_OFF_RPM, 30);
    const before = d.fanRpm;
    run(d, LIGHT_OFF_RPM, 0.5);
    expect(Math.abs(d.fanRpm - before)).toBeLessThan(0.1);
  });
});

describe('fixed-speed motor', () => {
  it('runs up on the mains to its rated slip at rated torque', () => {
    const d = fixed();
    run(d, 0, 30, { loadNm: (80.4 * PURGE_RPM * PURGE_RPM) / (PURGE_RPM * PURGE_RPM) });
    // Rated torque is 81.4 N·m with 1 N·m of friction: 1800 − 40 rpm.
    expect(d.fanRpm).toBeCloseTo(PURGE_RPM, 0);
    expect(readDriveCurrent(d)).toBeCloseTo(24, 1);
  });

  it('draws several times its rated current from rest', () => {
    const d = fixed();
    run(d, 0, STEP_S);
    expect(readDriveCurrent(d)).toBeGreaterThan(4 * 24);
  });

  it('takes longer to run up, and slips more, at lower volts', () => {
    const whole = fixed();
    const low = fixed();
    run(whole, 0, 2);
    run(low, 0, 2, { volts: 0.8 });
    expect(low.fanRpm).toBeLessThan(whole.fanRpm);
    run(whole, 0, 60);
    run(low, 0, 60, { volts: 0.8 });
    expect(low.fanRpm).toBeLessThan(whole.fanRpm - 10);
  });

  it('is let go by its contactor when the volts collapse', () => {
    const d = fixed();
    run(d, 0, 30);
    run(d, 0, STEP_S, { volts: 0.5 });
    expect(d.torqueNm).toBe(0);
  });
});
