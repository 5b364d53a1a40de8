import type { SteamParameters } from './vessel-parameters.ts';
import type { VesselState } from './vessel-state.ts';

const RESEAT_SHARE = 0.95;
/** Below this share of its volume a vessel gives less and less, and its surface takes less heat. */
const DRY_BELOW = 0.03;
/** No frost: a vessel in a cold room stops losing heat just above freezing. */
const FREEZING_K = 274.15;

/**
 * What leaves a steam vessel, and takes mass and energy with it.
 *
 * Equation: steam to the load q = load · q_rated · √(p ρ_s)/√(p ρ_s)_normal; the safety valve pops
 *   open at its pressure, passes in proportion to the absolute pressure and reseats 5 % below; water
 *   by blow-down or a leak q = q_stated · √(p ρ_w)/√(p ρ_w)_normal; heat of the shell to the room.
 * Left out: choked steam valves, carry-over of water.
 */
export function stepOutlets(
  state: VesselState,
  p: SteamParameters,
  load: number,
  spanS: number,
): void {
  const { saturation: s, prepared, ambient, gaugePa } = state;
  const wet = wetShare(state);
  state.steamKgS = wet * load * prepared.loadFactor * Math.sqrt(gaugePa * s.steamDensity);
  if (gaugePa > p.safetyValvePa) state.safetyValveOpen = p.safetyValveWorks;
  else if (gaugePa < RESEAT_SHARE * p.safetyValvePa) state.safetyValveOpen = false;
  const lift = state.safetyValveOpen ? 1 : gaugePa > 0 ? p.safetyValveLeak : 0;
  state.safetyValveKgS =
    (wet * lift * p.safetyValveKgS * s.pressurePa) / (p.safetyValvePa + ambient.pressurePa);
  const waterKgS = wet * prepared.leakFactor * Math.sqrt(gaugePa * s.waterDensity);
  const steamKgS = state.steamKgS + state.safetyValveKgS;
  const kelvin = s.temperatureK;
  const freezes = kelvin < FREEZING_K && kelvin > ambient.temperatureK;
  const lossW = freezes ? 0 : prepared.lossWK * (kelvin - ambient.temperatureK);

  const inKg = state.feedKgS * spanS;
  const outKg = (steamKgS + waterKgS) * spanS;
  const inJ = inKg * prepared.feedEnthalpyJKg;
  const outJ = (steamKgS * s.steamEnthalpy + waterKgS * s.waterEnthalpy + lossW) * spanS;
  state.massKg += inKg - outKg;
  state.energyJ += inJ - outJ;
  state.massInKg += inKg;
  state.massOutKg += outKg;
  state.energyInJ += inJ;
  state.energyOutJ += outJ;
  state.heatDeliveredW = state.steamKgS * (s.steamEnthalpy - prepared.feedEnthalpyJKg);
}

/** 1 with water enough, falling to 0 as the last of it goes. */
export function wetShare(state: VesselState): number {
  const share = state.waterM3 / (DRY_BELOW * state.prepared.volumeM3);
  return share >= 1 ? 1 : Math.max(share, 0);
}
