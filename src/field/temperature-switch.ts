import { choice, flag, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import type { ContactBoard } from './contact.ts';
import { followWithLag, lagGain } from './lag.ts';
import {
  CONTACT_CONDITIONS,
  createSnapSwitch,
  prepareSnapSwitch,
  type SnapSwitch,
  stepSnapSwitch,
} from './snap-switch.ts';
import { TEMPERATURES, temperatureIndex } from './temperature-signals.ts';

/**
 * A temperature switch with a bulb in a pocket: operating control, high limit, warm-up of a hot
 * water boiler.
 *
 * Equation: the bulb follows the water with a first-order lag; one that has slipped out of its pocket
 * feels the share s of the water and 1 − s of the room: T = T_room + s·(T_water − T_room).
 * Valid for: liquid-filled bulbs, lags of 5 s (bare) to 60 s (dry pocket).
 * Left out: second-order lag of a pocket with paste, heat along the capillary.
 */
export const temperatureSwitchParameters = {
  id: name('name of the switch'),
  senses: choice(TEMPERATURES, 'where its pocket is'),
  feeds: choice(
    ['callForHeat', 'highLimitMade', 'warmUpSatisfied'],
    'input terminal its contact stands in; several for one terminal stand in series',
  ),
  makesOn: choice(['rise', 'fall'], 'which way the temperature goes when the contact makes'),
  makeC: number('°C', -20, 250, 'temperature at which it makes'),
  breakC: number('°C', -20, 250, 'temperature at which it breaks'),
  driftK: number('K', -150, 150, 'both points have moved up by this', 0),
  pocketLagS: number('s', 0, 3600, 'lag of bulb and pocket', 12),
  pocketShare: number(
    '1',
    0,
    1,
    'share of the water that the bulb feels; less when it slipped out',
    1,
  ),
  roomC: number('°C', -20, 50, 'what a bulb out of its pocket feels', 20),
  dwellS: number('s', 0, 30, 'how long it must stand there before the contact moves', 0.5),
  contact: choice(CONTACT_CONDITIONS, 'condition of the contact', 'sound'),
  manualReset: flag('latches when it breaks, until reset by hand', false),
  followsSetpoint: flag('its points shift with the second setpoint', false),
} as const satisfies ParameterTable;
export type TemperatureSwitchParameters = Values<typeof temperatureSwitchParameters>;

export interface TemperatureSwitch {
  readonly parameters: TemperatureSwitchParameters;
  readonly snap: SnapSwitch;
  readonly signal: number;
  /** What the bulb feels, °C; nothing before the first look. */
  sensedC: number;
  share: number;
  roomC: number;
  gain: number;
}

export function createTemperatureSwitch(
  parameters: TemperatureSwitchParameters,
  stepS: number,
  board: ContactBoard,
): TemperatureSwitch {
  const temperatureSwitch: TemperatureSwitch = {
    parameters,
    snap: createSnapSwitch(board),
    signal: temperatureIndex(parameters.senses),
    sensedC: Number.NaN,
    share: 1,
    roomC: 20,
    gain: 1,
  };
  prepareTemperatureSwitch(temperatureSwitch, 0, stepS);
  return temperatureSwitch;
}

/** @param setpointShiftK how far the setpoint in force is above the first one */
export function prepareTemperatureSwitch(
  s: TemperatureSwitch,
  setpointShiftK: number,
  stepS: number,
): void {
  const p = s.parameters;
  const shiftK = p.driftK + (p.followsSetpoint ? setpointShiftK : 0);
  s.share = p.pocketShare;
  s.roomC = p.roomC;
  s.gain = lagGain(p.pocketLagS, stepS);
  prepareSnapSwitch(
    s.snap,
    p.makesOn === 'rise',
    p.makeC + shiftK,
    p.breakC + shiftK,
    p.dwellS,
    p.manualReset,
    p.contact,
  );
}

export function stepTemperatureSwitch(
  s: TemperatureSwitch,
  waterC: number,
  resetPressed: boolean,
  stepS: number,
): void {
  const feltC = s.roomC + s.share * (waterC - s.roomC);
  s.sensedC = Number.isNaN(s.sensedC) ? feltC : followWithLag(s.sensedC, feltC, s.gain);
  stepSnapSwitch(s.snap, s.sensedC, resetPressed, stepS);
}
