import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import { type PressureSwitchParameters, pressureSwitchParameters } from '../../src/field/index.ts';
import {
  createPressureSwitch,
  preparePressureSwitch,
  stepPressureSwitch,
} from '../../src/field/pressure-switch.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;

function airflow(given: Partial<PressureSwitchParameters> = {}) {
  const p = fillDefaults(pressureSwitchParameters, {
    id: 'airflow',
    senses: 'windbox-furnace differential',
    feeds: 'airProved',
    makesOn: 'rise',
    makePa: 50,
    breakPa: 30,
    ...given,
  });
  return createPressureSwitch(p, STEP_S, createContactBoard());
}

function hold(s: ReturnType<typeof airflow>, pressurePa: number, seconds: number): boolean {
  for (let i = 0; i < seconds / STEP_S; i++) stepPressureSwitch(s, pressurePa, false, STEP_S);
  return s.snap.contact.made;
}

describe('pressure switch', () => {
  it('makes above its make point and holds down to its break point', () => {
    const s = airflow();
    expect(hold(s, 49, 5)).toBe(false);
    expect(hold(s, 51, 5)).toBe(true);
    expect(hold(s, 31, 5)).toBe(true);
    expect(hold(s, 29, 5)).toBe(false);
  });

  it('that makes on fall opens above its break point and makes again below its make point', () => {
    const s = airflow({ makesOn: 'fall', makePa: 13500, breakPa: 14000 });
    expect(hold(s, 10000, 5)).toBe(true);
    expect(hold(s, 13900, 5)).toBe(true);
    expect(hold(s, 14100, 5)).toBe(false);
    expect(hold(s, 13600, 5)).toBe(false);
    expect(hold(s, 13400, 5)).toBe(true);
  });

  it('senses the room when its tube is off', () => {
    expect(hold(airflow({ tubeShare: 0 }), 1400, 60)).toBe(false);
  });

  it('answers minutes late through a blocked tube, both ways', () => {
    const s = airflow({ tubeLagS: 600 });
    // 1400·(1 − e^(−t/600)) passes 50 Pa at 21.8 s.
    expect(hold(s, 1400, 20)).toBe(false);
    expect(hold(s, 1400, 4)).toBe(true);
    hold(s, 1400, 3000);
    expect(hold(s, 0, 600)).toBe(true);
  });

  it('set too high does not make on the air there is', () => {
    const s = airflow();
    expect(hold(s, 100, 2)).toBe(true);
    s.parameters.driftPa = 200;
    preparePressureSwitch(s, 0, STEP_S);
    expect(hold(s, 100, 2)).toBe(false);
  });

  it('shifts with the setpoint where it follows it', () => {
    const s = airflow({
      senses: 'vessel',
      makesOn: 'fall',
      makePa: 1.15e6,
      breakPa: 1.28e6,
      followsSetpoint: true,
    });
    expect(hold(s, 1.1e6, 5)).toBe(true);
    preparePressureSwitch(s, -2e5, STEP_S);
    expect(hold(s, 1.1e6, 5)).toBe(false);
    expect(hold(s, 0.9e6, 5)).toBe(true);
  });
});
