import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import { type ServoParameters, servoParameters } from '../../src/field/index.ts';
import {
  createServo,
  prepareServo,
  proveServo,
  refreshServoNoise,
  type Servo,
  stepServo,
} from '../../src/field/servo.ts';
import { createRandom } from '../../src/numeric/index.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;

function servo(given: Partial<ServoParameters> = {}, seed = 1): Servo {
  const p = fillDefaults(servoParameters, { id: 'damper', moves: 'damper', slewDegS: 3, ...given });
  return createServo(p, 90, 25, createRandom(seed, 'servo'), createContactBoard());
}

function run(s: Servo, targetDeg: number, seconds: number, powered = true): void {
  const steps = Math.round(seconds / STEP_S);
  for (let i = 0; i < steps; i++) {
    if (i % 10 === 0) refreshServoNoise(s);
    stepServo(s, targetDeg, powered, STEP_S);
    proveServo(s, STEP_S);
  }
}

describe('servo', () => {
  it('takes its stroke time for a full stroke and stops on the target', () => {
    const s = servo({ backlashDeg: 0 });
    run(s, 90, 29.9);
    expect(s.bladeDeg).toBeCloseTo(89.7, 6);
    run(s, 90, 0.2);
    expect(s.bladeDeg).toBe(90);
    expect(s.feedbackDeg).toBe(90);
  });

  it('proves purge, then light-off, and neither on the way between', () => {
    const s = servo();
    run(s, 90, 32);
    expect([s.atPurge.contact.made, s.atLightOff.contact.made]).toEqual([true, false]);
    for (let i = 0; i < 2000; i++) {
      run(s, 10, STEP_S);
      expect(s.atLightOff.contact.made).toBe(false);
    }
    run(s, 25, 12);
    expect([s.atPurge.contact.made, s.atLightOff.contact.made]).toEqual([false, true]);
  });

  it('with a slipped shaft moves the blade and leaves feedback and proofs as they were', () => {
    const sound = servo();
    const slipped = servo({ slipDeg: -30 });
    run(sound, 90, 32);
    run(slipped, 90, 32);
    expect(slipped.feedbackDeg).toBe(sound.feedbackDeg);
    expect(slipped.atPurge.contact.made).toBe(true);
    expect(sound.bladeDeg - slipped.bladeDeg).toBeCloseTo(30, 9);
  });

  it('lets a slip that comes in mid-run show at once, though the motor is at rest', () => {
    const s = servo();
    run(s, 90, 32);
    s.parameters.slipDeg = -40;
    prepareServo(s, 90, 25);
    run(s, 90, STEP_S);
    expect(s.bladeDeg).toBeCloseTo(49.9, 9);
  });

  it('stalls against a stop, and its feedback shows where', () => {
    const s = servo({ jamMaxDeg: 65 });
    run(s, 90, 60);
    expect(s.shaftDeg).toBe(65);
    expect(s.feedbackDeg).toBeCloseTo(65.1, 9);
    expect(s.atPurge.contact.made).toBe(false);
  });

  it('is not thrown about by a stop that appears behind it, but cannot come back past it', () => {
    const s = servo({ backlashDeg: 0 });
    run(s, 90, 32);
    s.parameters.jamMaxDeg = 60;
    prepareServo(s, 90, 25);
    run(s, 90, 1);
    expect(s.shaftDeg).toBe(90);
    run(s, 25, 30);
    expect(s.shaftDeg).toBe(25);
    run(s, 90, 60);
    expect(s.shaftDeg).toBe(60);
  });

  it('stands where it is with a dead motor or without supply', () => {
    const dead = servo({ motorHealth: 0 });
    const unfed = servo();
    run(dead, 90, 30);
    run(unfed, 90, 10);
    run(unfed, 90, 30, false);
    expect(dead.shaftDeg).toBe(0);
    expect(unfed.feedbackDeg).toBeCloseTo(30, 6);
  });

  it('believes its feedback: an offset is an error of the blade that the proof cannot see', () => {
    const s = servo({ feedbackOffsetDeg: 10, maxDeg: 90, backlashDeg: 0 });
    run(s, 25, 30);
    expect(s.feedbackDeg).toBeCloseTo(25, 6);
    expect(s.bladeDeg).toBeCloseTo(15, 6);
    expect(s.atLightOff.contact.made).toBe(true);
  });

  it('answers a feedback that shifts while it rests', () => {
    const s = servo({ backlashDeg: 0 });
    run(s, 25, 30);
    s.parameters.feedbackOffsetDeg = 10;
    prepareServo(s, 90, 25);
    run(s, 25, 10);
    expect(s.bladeDeg).toBeCloseTo(15, 6);
  });

  it('drives to its end stop and proves nothing with an open feedback', () => {
    const s = servo({ feedback: 'open' });
    run(s, 25, 60);
    expect(s.motorDeg).toBe(90);
    expect([s.atPurge.contact.made, s.atLightOff.contact.made]).toEqual([false, false]);
  });

  it('loses its backlash on every reversal', () => {
    const s = servo({ backlashDeg: 2 });
    run(s, 50, 30);
    expect(s.shaftDeg).toBeCloseTo(49, 6);
    run(s, 20, 30);
    expect(s.shaftDeg).toBeCloseTo(21, 6);
  });

  it('sticks, winds its coupling up, and jumps', () => {
    const s = servo({ backlashDeg: 0, stictionDeg: 4 });
    run(s, 90, 1.3);
    expect(s.shaftDeg).toBe(0);
    run(s, 90, 0.05);
    expect(s.shaftDeg).toBeGreaterThan(4);
  });

  it('needs its end switch at purge where one is fitted', () => {
    const outOfAdjustment = servo({ endSwitch: 'fitted', endSwitchDeg: 90 });
    const sound = servo({ endSwitch: 'fitted' });
    const open = servo({ endSwitch: 'fitted', endSwitchContact: 'open' });
    for (const s of [outOfAdjustment, sound, open]) run(s, 90, 35);
    expect(outOfAdjustment.atPurge.contact.made).toBe(false);
    expect(sound.atPurge.contact.made).toBe(true);
    expect(open.atPurge.contact.made).toBe(false);
  });

  it('proves nothing steady on a badly worn track, and reads the same noise for the same seed', () => {
    const walk = (seed: number) => {
      const s = servo({ feedbackNoiseDeg: 4 }, seed);
      const seen: number[] = [];
      for (let i = 0; i < 600; i++) {
        run(s, 25, 0.1);
        seen.push(s.feedbackDeg);
        expect(s.atLightOff.contact.made).toBe(false);
      }
      return seen;
    };
    const first = walk(5);
    expect(walk(5)).toEqual(first);
    expect(walk(6)).not.toEqual(first);
  });

  it('never leaves its stops, whatever it is told and whatever is wrong with it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: -20, max: 110, noNaN: true }), fc.nat(20)), {
          maxLength: 30,
        }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        (orders, looseDeg, slipDeg) => {
          const s = servo({ backlashDeg: looseDeg, stictionDeg: looseDeg, slipDeg, slewDegS: 20 });
          for (const [target, tenths] of orders) {
            run(s, target, tenths / 10);
            for (const angle of [s.motorDeg, s.shaftDeg, s.bladeDeg]) {
              expect(angle).toBeGreaterThanOrEqual(0);
              expect(angle).toBeLessThanOrEqual(90);
            }
          }
        },
      ),
      { seed: 23, numRuns: 50 },
    );
  });
});
