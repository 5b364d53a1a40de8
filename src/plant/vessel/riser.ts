import { exactLog } from '../../numeric/index.ts';
import type { Saturation } from '../steam/index.ts';

/** How steam is spread along heated tubes: its share of their volume, and how that changes. */
export interface RiserSteam {
  share: number;
  /** With the mass share of steam at their end. */
  byQuality: number;
  /** With temperature along saturation, quality held. */
  byKelvin: number;
  /** α·(dᾱ/dα)/ᾱ: 1 where there is hardly any steam, less with more. */
  exponent: number;
}

const FEW = 0.01;

/**
 * Mean volume share of steam in tubes heated evenly, with no slip between steam and water.
 *
 * Equation: mass share rising in a straight line to α at the end gives
 *   ᾱ = ρ_w/(ρ_w − ρ_s) · [1 − ln(1 + η)/η], η = α (ρ_w − ρ_s)/ρ_s.
 * Valid for: α from 0 (by its series) to 1.
 * Source: K. J. Åström and R. D. Bell, Automatica 36 (2000) 363, section 4.
 */
export function readRiserSteam(r: RiserSteam, s: Saturation, quality: number): void {
  const w = s.waterDensity;
  const v = s.steamDensity;
  const apart = w - v;
  const perQuality = apart / v;
  const eta = quality * perQuality;
  let shape: number;
  let slope: number;
  if (eta < FEW) {
    shape = eta * (1 / 2 - eta * (1 / 3 - eta * (1 / 4 - eta * (1 / 5 - eta / 6))));
    slope = 1 / 2 - eta * (2 / 3 - eta * (3 / 4 - eta * (4 / 5 - (eta * 5) / 6)));
    r.exponent = 1 - eta / 3;
  } else {
    const bent = exactLog(1 + eta) / eta;
    shape = 1 - bent;
    slope = (bent - 1 / (1 + eta)) / eta;
    r.exponent = (eta * slope) / shape;
  }
  const scale = w / apart;
  const scaleByK = (w * s.steamDensitySlope - v * s.waterDensitySlope) / (apart * apart);
  const etaByK = (quality * (s.waterDensitySlope * v - w * s.steamDensitySlope)) / (v * v);
  r.share = scale * shape;
  r.byQuality = scale * slope * perQuality;
  r.byKelvin = scaleByK * shape + scale * slope * etaByK;
}

/** Heat that raises the riser's quality by one and its temperature by a kelvin; see `riserStores`. */
export interface RiserStores {
  byKelvin: number;
  byQuality: number;
}

/**
 * Energy of the risers less what the mass in them carries at their end.
 *
 * Equation: mass d/dt[V_r(ρ_s ᾱ + ρ_w(1 − ᾱ))] = q_dc − q_r and energy
 *   d/dt[V_r(ρ_s h_s ᾱ + ρ_w h_w(1 − ᾱ)) − pV_r + m_r C T] = Q + q_dc h_w − (h_w + α h_c) q_r.
 *   The second less (h_w + α h_c) times the first: byKelvin · dT/dt + byQuality · dα/dt =
 *   Q − α h_c q_dc. Times dT/dp these are e₃₂ and e₃₃ of the source.
 * Source: K. J. Åström and R. D. Bell, Automatica 36 (2000) 363, section 5, derived again here.
 */
export function riserStores(
  stores: RiserStores,
  r: RiserSteam,
  s: Saturation,
  quality: number,
  volumeM3: number,
  metalJK: number,
): void {
  const latent = s.steamEnthalpy - s.waterEnthalpy;
  const mixed = s.steamDensity + quality * (s.waterDensity - s.steamDensity);
  const water = s.waterDensity * s.waterEnthalpySlope - quality * latent * s.waterDensitySlope;
  const steam =
    (1 - quality) * latent * s.steamDensitySlope + s.steamDensity * s.steamEnthalpySlope;
  stores.byQuality = latent * mixed * volumeM3 * r.byQuality;
  stores.byKelvin =
    volumeM3 *
      (water * (1 - r.share) + steam * r.share + latent * mixed * r.byKelvin - s.pressureSlope) +
    metalJK;
}
