import { choice, number, type ParameterTable, type Values } from '../quantity/index.ts';
import type { FiringMode } from './panel.ts';

const common = {
  integralS: number('s', 1, 36000, 'integral time'),
  derivativeS: number('s', 0, 600, 'derivative time', 0),
  fullStrokeS: number('s', 1, 600, 'the output takes at least this long from 0 to 1', 40),
  leftIn: choice(
    ['automatic', 'hand', 'low fire'],
    'where the selector was left, until someone turns it',
    'automatic',
  ),
  leftAtRate: number('1', 0, 1, 'firing rate that was left set by hand', 0),
} as const satisfies ParameterTable;

/**
 * Firing-rate control: PID on the measured vessel pressure, or on the water's temperature.
 *
 * Equation: u = e/PB + I − (Td/PB)·dx/dt, dI/dt = e/(PB·Ti), e = setpoint − measured x; output held to
 * low fire … full and to a slew limit. The derivative acts on the measurement, filtered by Td/8.
 * Anti-windup: the integral stops while the output is held at an end and the error pushes outwards.
 * Transfer without a bump: in hand and in low-fire hold the integral follows the output, so that
 * automatic goes on from where it finds the burner. Told to go to low fire it goes there along the
 * curve at its own pace, because fuel and air that each take the shortest way part company. Before
 * release it waits at low fire.
 * Tuning by the SIMC rule for an integrating process dx/dt = k'·u with delay θ:
 * 1/PB = 1/(k'·(τc + θ)), Ti = 4·(τc + θ); of a water-tube boiler k' = 2 036 Pa/s, θ = 15 s, τc = 60 s
 * give PB = 1.53 bar, Ti = 300 s.
 * Source: S. Skogestad, J. Process Control 13 (2003) 291.
 */
export const pressureFiringRateParameters = {
  kind: choice(['pressure'], 'steam: holds the pressure of the vessel'),
  setpointPa: number('Pa', 0, 1e7, 'vessel pressure to hold'),
  secondSetpointPa: number('Pa', 0, 1e7, 'the lower one, by time clock or contact'),
  proportionalBandPa: number('Pa', 1000, 5e6, 'error that asks for the whole range'),
  ...common,
} as const satisfies ParameterTable;

export const temperatureFiringRateParameters = {
  kind: choice(['temperature'], 'hot water: holds the temperature of the water leaving'),
  setpointC: number('°C', 20, 200, 'water temperature to hold'),
  secondSetpointC: number('°C', 20, 200, 'the lower one, by time clock or contact'),
  proportionalBandK: number('K', 0.5, 100, 'error that asks for the whole range'),
  ...common,
} as const satisfies ParameterTable;

export type PressureFiringRateParameters = Values<typeof pressureFiringRateParameters>;
export type TemperatureFiringRateParameters = Values<typeof temperatureFiringRateParameters>;
export type FiringRateParameters = PressureFiringRateParameters | TemperatureFiringRateParameters;

/** Lag of the derivative's filter, as a share of the derivative time. */
const DERIVATIVE_FILTER = 0.125;

/** What the sequence lets it do: follow the load, go down to low fire, or wait there. */
export type FiringDemand = 'released' | 'low fire' | 'wait';

/** Setpoints, band and measurement are in Pa or in °C, as the kind says. */
export interface FiringRate {
  readonly parameters: FiringRateParameters;
  readonly onTemperature: boolean;
  /** 0…1, what the curve is read at. */
  rate: number;
  integral: number;
  smooth: number;
  setpoint: number;
  secondSetpoint: number;
  gain: number;
}

export function createFiringRate(
  parameters: FiringRateParameters,
  lowFireRate: number,
): FiringRate {
  const control: FiringRate = {
    parameters,
    onTemperature: parameters.kind === 'temperature',
    rate: lowFireRate,
    integral: lowFireRate,
    smooth: 0,
    setpoint: 0,
    secondSetpoint: 0,
    gain: 1,
  };
  prepareFiringRate(control);
  return control;
}

export function prepareFiringRate(control: FiringRate): void {
  const p = control.parameters;
  if (p.kind === 'temperature') {
    control.setpoint = p.setpointC;
    control.secondSetpoint = p.secondSetpointC;
    control.gain = 1 / p.proportionalBandK;
  } else {
    control.setpoint = p.setpointPa;
    control.secondSetpoint = p.secondSetpointPa;
    control.gain = 1 / p.proportionalBandPa;
  }
}

/** How far the setpoint in force is above the first one, for switches that follow it. */
export function setpointShift(control: FiringRate, onSecondSetpoint: boolean): number {
  return onSecondSetpoint ? control.secondSetpoint - control.setpoint : 0;
}

/** @param measured Pa or °C, as the kind says */
export function stepFiringRate(
  control: FiringRate,
  measured: number,
  demand: FiringDemand,
  mode: FiringMode,
  handRate: number,
  onSecondSetpoint: boolean,
  lowFireRate: number,
  fullRate: number,
  stepS: number,
): void {
  const p = control.parameters;
  const most = stepS / p.fullStrokeS;
  if (demand !== 'released') {
    const fall = demand === 'low fire' ? Math.max(lowFireRate, control.rate - most) : lowFireRate;
    control.rate = fall;
    control.integral = fall;
    control.smooth = measured;
    return;
  }
  const change =
    ((measured - control.smooth) * stepS) / (DERIVATIVE_FILTER * p.derivativeS + stepS);
  control.smooth += change;
  const setpoint = onSecondSetpoint ? control.secondSetpoint : control.setpoint;
  const { gain } = control;
  const error = setpoint - measured;
  const proportional = gain * error - (gain * p.derivativeS * change) / stepS;

  let wanted: number;
  if (mode === 'automatic') {
    const growth = (gain * error * stepS) / p.integralS;
    const asked = proportional + control.integral + growth;
    const outwards = (asked > fullRate && growth > 0) || (asked < lowFireRate && growth < 0);
    if (!outwards) control.integral += growth;
    wanted = proportional + control.integral;
  } else {
    wanted = mode === 'hand' ? handRate : lowFireRate;
  }
  wanted = Math.max(lowFireRate, Math.min(fullRate, wanted));

  const move = wanted - control.rate;
  control.rate += Math.max(-most, Math.min(most, move));
  if (mode !== 'automatic') control.integral = control.rate - proportional;
}
