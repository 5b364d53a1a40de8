import { choice, number, type ParameterTable, type Values } from '../../quantity/index.ts';

export const ignitionParameters = {
  sparkAt: choice(['pilot', 'main'], 'which gas the electrode stands in', 'pilot'),
  ratedSparkW: number('W', 1, 500, 'spark power for which kernelGain is stated'),
  electrodeGapMm: number('mm', 0.2, 15, 'gap between the electrodes', 3),
  jumpGapMm: number('mm', 1, 30, 'widest gap the transformer can jump', 7),
  electrodeOffset: number(
    '1',
    0,
    1,
    'how far the electrode is moved away from its gas: 0 in place, 1 clear of it',
    0,
  ),
  kernelGain: number(
    '1',
    0.5,
    20,
    'kernel that rated spark would keep up in still, best mixture',
    4,
  ),
  kernelTimeS: number('s', 0.02, 3, 'time in which a kernel grows or dies', 0.35),
  kernelVelocityMS: number('m/s', 0.2, 50, 'gas velocity that doubles the loss of a kernel', 5),
  scatter: number('1', 0, 1, 'half width of the chance in growth, from moment to moment', 0.4),
} as const satisfies ParameterTable;
export type IgnitionParameters = Values<typeof ignitionParameters>;

/** Quenching distance of methane in air, mm: no kernel lives in a narrower gap. */
const QUENCH_MM = 2;
const SHORT_MM = 0.5;
/** A gap this close to the widest one is jumped only now and then. */
const MISFIRE_SHARE = 0.3;

/**
 * Share of the spark's power that a kernel can use, by gap.
 *
 * Equation: straight from 0 at 0.5 mm to 1 at the quenching distance; straight to 0 over the
 *   last 30 % before the widest gap that the transformer jumps.
 * Source: quenching distance of methane 2.0 to 2.2 mm, B. Lewis and G. von Elbe, Combustion,
 *   Flames and Explosions of Gases; breakdown voltage near proportional to gap (Paschen).
 */
export function gapTransfer(p: IgnitionParameters): number {
  const narrow = (p.electrodeGapMm - SHORT_MM) / (QUENCH_MM - SHORT_MM);
  const wide = jumpShare(p);
  return Math.max(0, Math.min(1, narrow)) * wide;
}

/** Share of the half waves that jump the gap. */
export function jumpShare(p: IgnitionParameters): number {
  const left = (p.jumpGapMm - p.electrodeGapMm) / (MISFIRE_SHARE * p.jumpGapMm);
  return Math.max(0, Math.min(1, left));
}

/**
 * A flame kernel, one step by the trapezoidal rule; at 1 it lights.
 *
 * Equation: τ de/dt = G · (P/P_rated) · s(φ) · ξ − e (1 + u/u_k), s the burning velocity over its
 *   highest, u the gas velocity there, ξ chance about 1.
 * Valid for: trains of sparks as an ignition transformer makes, each far above the least energy
 *   of 0.3 mJ, so that place, mixture and velocity decide.
 * Left out: the single spark, electrode heat.
 * Source: form chosen here: growth by burning, loss by heat conduction and stretch.
 */
export function stepKernel(
  kernel: number,
  drive: number,
  velocityMS: number,
  p: IgnitionParameters,
  stepS: number,
): number {
  const loss = 1 + velocityMS / p.kernelVelocityMS;
  const half = 0.5 * stepS * loss;
  const kept = Math.max(0, p.kernelTimeS - half);
  return (kept * kernel + stepS * drive) / (p.kernelTimeS + half);
}
