import { boilingEnergy } from './boiling-balance.ts';
import type { VesselState } from './vessel-state.ts';

/** What went into a vessel and came out since it was settled, and what it holds now. */
export interface VesselBalance {
  readonly massInKg: number;
  readonly massOutKg: number;
  readonly energyInJ: number;
  readonly energyOutJ: number;
  readonly massKg: number;
  readonly energyJ: number;
}

/**
 * The balance of water and energy. What the vessel holds is worked out from what can be seen of it
 * (temperature, volumes), not from the sums kept, so that it proves something: over any span
 * in − out = change of what is held.
 *
 * Energy counts from water at 0.01 °C; what the heating surface holds is part of it.
 */
export function readBalance(state: VesselState): VesselBalance {
  const { massInKg, massOutKg, energyInJ, energyOutJ, saturation: s, prepared } = state;
  const sums = { massInKg, massOutKg, energyInJ, energyOutJ };
  if (state.parameters.kind === 'hot water') {
    const { boilerKg, metalJK } = prepared;
    return {
      ...sums,
      massKg: boilerKg + state.systemKg,
      energyJ:
        boilerKg * s.waterEnthalpy +
        boilingEnergy(s, 0, 0, metalJK) +
        state.systemKg * state.middle.waterEnthalpy +
        state.surfaceHeatJ,
    };
  }
  const steamM3 = prepared.volumeM3 - state.waterM3;
  const hot = s.temperatureK > prepared.boilingK;
  const accumulatorJKg = hot
    ? s.waterEnthalpy - s.pressurePa / s.waterDensity
    : prepared.boilingEnergyJKg;
  return {
    ...sums,
    massKg: s.waterDensity * state.waterM3 + s.steamDensity * steamM3 + state.accumulatorKg,
    energyJ:
      boilingEnergy(s, state.waterM3, steamM3, prepared.metalJK) +
      state.accumulatorKg * accumulatorJKg +
      state.surfaceHeatJ,
  };
}
