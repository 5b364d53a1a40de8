import { number, type ParameterTable, type Values } from '../../quantity/index.ts';

export const fanParameters = {
  ratedFlowM3S: number('m³/s', 0.02, 60, 'flow at the design point'),
  ratedPressurePa: number('Pa', 100, 20000, 'pressure rise at the design point, air of 1.2 kg/m³'),
  ratedSpeedRpm: number('rpm', 300, 6000, 'shaft speed at the design point'),
  peakEfficiency: number('1', 0.2, 0.9, 'efficiency at the design point', 0.75),
  backwardsShare: number(
    '1',
    0.05,
    0.8,
    'share of its pressure that the wheel makes when turned the wrong way round',
    0.3,
  ),
} as const satisfies ParameterTable;
export type FanParameters = Values<typeof fanParameters>;

/** Density at which rated pressures are stated: air of 20 °C at sea level, rounded. */
export const RATED_AIR_DENSITY = 1.2;

/**
 * Pressure rise of the fan, as a share of its rated pressure at rated density.
 *
 * Equation: n² [1.25 + 0.25 s − 0.5 s²], s = x / n, written without the division:
 *   d·(1.25 n² + 0.25 n·x) − 0.5 x·|x|, so a fan at rest is a plain resistance; d is 1, or the
 *   share a wheel makes when it turns backwards.
 * Valid for: 0 ≤ n ≤ 1.3; x the volume flow over the rated one, of either sign. The middle
 *   term is left out for reverse flow, so that pressure falls steadily as flow rises from there.
 * Left out: stall, surge, the wheel driven by a draught, Reynolds effects.
 * Source: a generic backward-curved shape chosen for this project; affinity laws as in any
 *   text on turbomachines.
 */
export function fanPressureShare(
  flowShare: number,
  speedShare: number,
  driveShare: number,
): number {
  const forward = Math.max(flowShare, 0);
  const driven = speedShare * (1.25 * speedShare + 0.25 * forward);
  return driveShare * driven - 0.5 * flowShare * Math.abs(flowShare);
}

/**
 * Shaft torque of the fan, as a share of its rated torque at rated density.
 *
 * Equation: power/rated = n³ p̂(s)·s / η̂(s), η̂ = 2 s − s², p̂ = 1.25 + 0.25 s − 0.5 s², so
 *   torque/rated = n² (1.25 + 0.25 s − 0.5 s²) / (2 − s).
 * Valid for: 0 ≤ s ≤ 1.5; held at its ends outside.
 * Source: as fanPressureShare.
 */
export function fanTorqueShare(flowShare: number, speedShare: number): number {
  if (speedShare <= 0) return 0;
  const s = flowShare <= 0 ? 0 : flowShare >= 1.5 * speedShare ? 1.5 : flowShare / speedShare;
  return (speedShare * speedShare * (1.25 + s * (0.25 - 0.5 * s))) / (2 - s);
}

/** Shaft power at the design point with air of rated density, W. */
export function ratedFanPower(p: FanParameters): number {
  return (p.ratedFlowM3S * p.ratedPressurePa) / p.peakEfficiency;
}
