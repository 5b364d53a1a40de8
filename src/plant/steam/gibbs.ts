import { WATER_GAS_CONSTANT } from './if97-coefficients.ts';

/** Dimensionless Gibbs energy γ(π, τ) = g/(RT) and its derivatives. */
export interface Gibbs {
  g: number;
  gP: number;
  gPP: number;
  gT: number;
  gTT: number;
  gPT: number;
}

/** Properties of one phase at a temperature and a pressure; SI. */
export interface Phase {
  volumeM3Kg: number;
  enthalpyJKg: number;
  internalEnergyJKg: number;
  entropyJKgK: number;
  heatCapacityJKgK: number;
  soundMS: number;
  /** Change of volume with temperature at one pressure, m³/(kg·K). */
  volumePerK: number;
  /** Change of volume with pressure at one temperature, m³/(kg·Pa). */
  volumePerPa: number;
}

/**
 * Properties out of the Gibbs energy.
 *
 * Equation: v = RT/p·πγ_π, h = RT·τγ_τ, u = h − pv, s = R(τγ_τ − γ), c_p = −Rτ²γ_ττ,
 *   w² = RT·γ_π² / [(γ_π − τγ_πτ)²/(τ²γ_ττ) − γ_ππ].
 * Source: IAPWS R7-97(2012), tables 3 and 12.
 */
export function phaseOf(
  gibbs: Gibbs,
  kelvin: number,
  pascal: number,
  pi: number,
  tau: number,
): Phase {
  const { g, gP, gPP, gT, gTT, gPT } = gibbs;
  const heat = WATER_GAS_CONSTANT * kelvin;
  const expansion = gP - tau * gPT;
  const enthalpyJKg = heat * tau * gT;
  const volumeM3Kg = (heat / pascal) * pi * gP;
  return {
    volumeM3Kg,
    enthalpyJKg,
    internalEnergyJKg: heat * (tau * gT - pi * gP),
    entropyJKgK: WATER_GAS_CONSTANT * (tau * gT - g),
    heatCapacityJKgK: -WATER_GAS_CONSTANT * tau * tau * gTT,
    soundMS: Math.sqrt((heat * gP * gP) / ((expansion * expansion) / (tau * tau * gTT) - gPP)),
    volumePerK: (WATER_GAS_CONSTANT / pascal) * pi * expansion,
    volumePerPa: (heat / (pascal * pascal)) * pi * pi * gPP,
  };
}

/** x to the power of `least` (0 or less) to `most`, by multiplication: the same bits everywhere. */
export function powersOf(x: number, least: number, most: number): Float64Array {
  const powers = new Float64Array(most - least + 1);
  powers[-least] = 1;
  for (let n = 1; n <= most; n++) powers[n - least] = (powers[n - 1 - least] as number) * x;
  const inverse = 1 / x;
  for (let n = -1; n >= least; n--) {
    powers[n - least] = (powers[n + 1 - least] as number) * inverse;
  }
  return powers;
}
