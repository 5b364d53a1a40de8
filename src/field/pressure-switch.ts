import { choice, flag, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import type { ContactBoard } from './contact.ts';
import { followWithLag, lagGain } from './lag.ts';
import { SIGNALS, signalIndex } from './signals.ts';
import {
  CONTACT_CONDITIONS,
  createSnapSwitch,
  prepareSnapSwitch,
  type SnapSwitch,
  stepSnapSwitch,
} from './snap-switch.ts';

/**
 * A pressure switch: airflow, low and high gas, furnace pressure, operating control, high limit,
 * warm-up. It senses through a tube: p_bellows follows share·p with a first-order lag, so a tube
 * that is off senses the room (share 0) and a blocked one lags for minutes.
 * Valid for: gauge or differential pressure within the switch's own proof pressure.
 * Left out: the switch's own volume, temperature effect on the spring.
 */
export const pressureSwitchParameters = {
  id: name('name of the switch'),
  senses: choice(SIGNALS, 'where its tube goes'),
  feeds: choice(
    [
      'airProved',
      'gasPressureAboveLow',
      'gasPressureBelowHigh',
      'furnacePressureInBand',
      'callForHeat',
      'highLimitMade',
      'warmUpSatisfied',
    ],
    'input terminal its contact stands in; several for one terminal stand in series',
  ),
  makesOn: choice(['rise', 'fall'], 'which way the pressure goes when the contact makes'),
  makePa: number('Pa', -20000, 1e7, 'pressure at which it makes'),
  breakPa: number('Pa', -20000, 1e7, 'pressure at which it breaks'),
  driftPa: number('Pa', -2e6, 2e6, 'both points have moved up by this', 0),
  dwellS: number(
    's',
    0,
    30,
    'how long the pressure must stand there before the contact moves',
    0.2,
  ),
  tubeShare: number('1', 0, 1, 'share of the pressure that arrives; 0 when the tube is off', 1),
  tubeLagS: number('s', 0, 36000, 'lag of the tube; minutes to hours when blocked', 0.05),
  contact: choice(CONTACT_CONDITIONS, 'condition of the contact', 'sound'),
  manualReset: flag('latches when it breaks, until reset by hand', false),
  followsSetpoint: flag('its points shift with the second setpoint', false),
} as const satisfies ParameterTable;
export type PressureSwitchParameters = Values<typeof pressureSwitchParameters>;

export interface PressureSwitch {
  readonly parameters: PressureSwitchParameters;
  readonly snap: SnapSwitch;
  readonly signal: number;
  sensedPa: number;
  tubeShare: number;
  tubeGain: number;
}

export function createPressureSwitch(
  parameters: PressureSwitchParameters,
  stepS: number,
  board: ContactBoard,
): PressureSwitch {
  const pressureSwitch: PressureSwitch = {
    parameters,
    snap: createSnapSwitch(board),
    signal: signalIndex(parameters.senses),
    sensedPa: 0,
    tubeShare: 1,
    tubeGain: 1,
  };
  preparePressureSwitch(pressureSwitch, 0, stepS);
  return pressureSwitch;
}

/** @param setpointShiftPa how far the setpoint in force is above the first one */
export function preparePressureSwitch(
  s: PressureSwitch,
  setpointShiftPa: number,
  stepS: number,
): void {
  const p = s.parameters;
  const shiftPa = p.driftPa + (p.followsSetpoint ? setpointShiftPa : 0);
  s.tubeShare = p.tubeShare;
  s.tubeGain = lagGain(p.tubeLagS, stepS);
  prepareSnapSwitch(
    s.snap,
    p.makesOn === 'rise',
    p.makePa + shiftPa,
    p.breakPa + shiftPa,
    p.dwellS,
    p.manualReset,
    p.contact,
  );
}

export function stepPressureSwitch(
  s: PressureSwitch,
  pressurePa: number,
  resetPressed: boolean,
  stepS: number,
): void {
  const sensedPa = followWithLag(s.sensedPa, pressurePa * s.tubeShare, s.tubeGain);
  s.sensedPa = sensedPa;
  stepSnapSwitch(s.snap, sensedPa, resetPressed, stepS);
}
