import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import { createCurve, prepareCurve } from '../../src/field/curve.ts';
import { createCurveSupervision, stepCurveSupervision } from '../../src/field/curve-supervision.ts';
import { curveSupervisionParameters, TARGET_INDEX } from '../../src/field/index.ts';
import { resolveTarget } from '../../src/field/targets.ts';
import { dairyField } from './dairy-field.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.1;

interface View {
  applies?: boolean;
  damper?: [target: number, feedback: number];
  fan?: [target: number, feedback: number];
}

function watch() {
  const s = createCurveSupervision(
    fillDefaults(curveSupervisionParameters, { positionTimeS: 3, speedTimeS: 3 }),
    createContactBoard(),
  );
  return (seconds: number, at: (t: number) => View) => {
    for (let i = 0; i < seconds / STEP_S; i++) {
      const { applies = true, damper = [25, 25], fan = [900, 900] } = at(i * STEP_S);
      stepCurveSupervision(s, applies, ...damper, 15, 15, ...fan, 1760, STEP_S);
    }
    return [s.positionsContact.made, s.speedContact.made];
  };
}

describe('curve supervision', () => {
  it('lets a sound servo and a sound drive take their time over a large jump of the command', () => {
    const hold = watch();
    hold(5, () => ({}));
    for (let t = 0; t < 40; t += 1) {
      const kept = hold(1, (within) => ({
        damper: [82, Math.min(82, 25 + 3 * (t + within))],
        fan: [1720, Math.min(1720, 900 + 70 * (t + within))],
      }));
      expect(kept).toEqual([true, true]);
    }
  });

  it('trips a damper that stays behind, and not before its time', () => {
    const hold = watch();
    hold(5, () => ({}));
    expect(hold(2, () => ({ damper: [31, 25] }))).toEqual([true, true]);
    expect(hold(6, () => ({ damper: [31, 25] }))).toEqual([false, true]);
  });

  it('trips a damper that runs ahead of the command', () => {
    const hold = watch();
    hold(5, () => ({}));
    expect(hold(4, () => ({ damper: [25, 32] }))).toEqual([false, true]);
  });

  it('trips a fan that loses speed, and takes it back when it returns', () => {
    const hold = watch();
    hold(5, () => ({}));
    expect(hold(4, () => ({ fan: [900, 780] }))).toEqual([true, false]);
    expect(hold(1, () => ({}))).toEqual([true, true]);
  });

  it('forgives a deviation shorter than its time', () => {
    const hold = watch();
    for (let i = 0; i < 5; i++) {
      hold(2.5, () => ({ damper: [25, 32] }));
      expect(hold(0.5, () => ({}))).toEqual([true, true]);
    }
  });

  it('says nothing against any position while the curve does not command', () => {
    const hold = watch();
    const anywhere = { applies: false, damper: [25, 80], fan: [900, 0] } satisfies View;
    expect(hold(30, () => anywhere)).toEqual([true, true]);
  });

  it('begins from where the devices are when the curve takes over', () => {
    const hold = watch();
    hold(5, () => ({ applies: false, damper: [90, 90], fan: [1760, 1760] }));
    for (let t = 0; t < 25; t += 1) {
      const kept = hold(1, (within) => ({
        damper: [25, Math.max(25, 90 - 3 * (t + within))],
        fan: [900, Math.max(900, 1760 - 70 * (t + within))],
      }));
      expect(kept).toEqual([true, true]);
    }
  });
});

describe('targets', () => {
  const { control } = dairyField();
  const resolve = (index: number, rate = 0.5) => {
    const into = { damperDeg: -1, fanRpm: -1, fuelValveDeg: -1 };
    resolveTarget(index, control.points, createCurve(control.curve), rate, into);
    return [into.damperDeg, into.fanRpm, into.fuelValveDeg];
  };

  it('send air, speed and fuel to the points of the plant', () => {
    expect(resolve(TARGET_INDEX.rest)).toEqual([0, 0, 0]);
    expect(resolve(TARGET_INDEX.purge)).toEqual([90, 1760, 0]);
    expect(resolve(TARGET_INDEX['light-off'])).toEqual([25, 900, 15]);
    expect(resolve(TARGET_INDEX['low-fire'], 0.2)).toEqual([25, 900, 15]);
  });

  it('on the curve lie on its points, straight between them, and held at its ends', () => {
    expect(resolve(TARGET_INDEX.curve, 0.6)).toEqual([53.5, 1310, 50]);
    expect(resolve(TARGET_INDEX.curve, 0.5)).toEqual([46.375, 1207.5, 41.25]);
    expect(resolve(TARGET_INDEX.curve, 0)).toEqual([25, 900, 15]);
    expect(resolve(TARGET_INDEX.curve, 2)).toEqual([82, 1720, 85]);
  });

  it('follow a curve that is changed in place', () => {
    const own = dairyField().control.curve;
    const curve = createCurve(own);
    own.damperDeg[2] = 70;
    prepareCurve(curve);
    const into = { damperDeg: 0, fanRpm: 0, fuelValveDeg: 0 };
    resolveTarget(TARGET_INDEX.curve, control.points, curve, 0.6, into);
    expect(into.damperDeg).toBe(70);
  });
});
