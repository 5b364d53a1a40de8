import { number, type ParameterTable, type Values } from '../quantity/index.ts';
import type { FiringMode } from './panel.ts';

/**
 * Firing-rate control: PID on the measured vessel pressure.
 *
 * Equation: u = e/PB + I − (Td/PB)·dp/dt, dI/dt = e/(PB·Ti), e = setpoint − measured; output held to
 * low fire … full and to a slew limit. The derivative acts on the measurement, filtered by Td/8.
 * Anti-windup: the integral stops while the output is held at an end and the error pushes outwards.
 * Transfer without a bump: in hand and in low-fire hold the integral follows the output, so that
 * automatic goes on from where it finds the burner. Told to go to low fire it goes there along the
 * curve at its own pace, because fuel and air that each take the shortest way part company. Before
 * release it waits at low fire.
 * Tuning by the SIMC rule for an integrating process dp/dt = k'·u with delay θ:
 * 1/PB = 1/(k'·(τc + θ)), Ti = 4·(τc + θ); dairy-like numbers k' = 2 036 Pa/s, θ = 15 s, τc = 60 s
 * give PB = 1.53 bar, Ti = 300 s.
 * Source: S. Skogestad, J. Process Control 13 (2003) 291.
 */
export const firingRateParameters = {
  setpointPa: number('Pa', 0, 1e7, 'vessel pressure to hold'),
  secondSetpointPa: number('Pa', 0, 1e7, 'the lower one, by time clock or contact'),
  proportionalBandPa: number('Pa', 1000, 5e6, 'error that asks for the whole range'),
  integralS: number('s', 1, 36000, 'integral time'),
  derivativeS: number('s', 0, 600, 'derivative time', 0),
  fullStrokeS: number('s', 1, 600, 'the output takes at least this long from 0 to 1', 40),
} as const satisfies ParameterTable;
export type FiringRateParameters = Values<typeof firingRateParameters>;

/** Lag of the derivative's filter, as a share of the derivative time. */
const DERIVATIVE_FILTER = 0.125;

/** What the sequence lets it do: follow the load, go down to low fire, or wait there. */
export type FiringDemand = 'released' | 'low fire' | 'wait';

export interface FiringRate {
  readonly parameters: FiringRateParameters;
  /** 0…1, what the curve is read at. */
  rate: number;
  integral: number;
  smoothPa: number;
}

export function createFiringRate(
  parameters: FiringRateParameters,
  lowFireRate: number,
): FiringRate {
  return { parameters, rate: lowFireRate, integral: lowFireRate, smoothPa: 0 };
}

export function stepFiringRate(
  control: FiringRate,
  measuredPa: number,
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
    control.smoothPa = measuredPa;
    return;
  }
  const changePa =
    ((measuredPa - control.smoothPa) * stepS) / (DERIVATIVE_FILTER * p.derivativeS + stepS);
  control.smoothPa += changePa;
  const setpointPa = onSecondSetpoint ? p.secondSetpointPa : p.setpointPa;
  const gain = 1 / p.proportionalBandPa;
  const error = setpointPa - measuredPa;
  const proportional = gain * error - (gain * p.derivativeS * changePa) / stepS;

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

  const change = wanted - control.rate;
  control.rate += Math.max(-most, Math.min(most, change));
  if (mode !== 'automatic') control.integral = control.rate - proportional;
}
