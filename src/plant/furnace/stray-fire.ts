import type { FurnaceState } from './furnace-state.ts';
import { burnableFuel } from './puff.ts';
import { burnInTank } from './tank.ts';

/** Flames and pockets must meet: strength of the igniter times share of the fuel able to burn. */
const MEETING = 0.1;
/** A flame front that crosses in burnS: its area grows as it spreads, from a small start. */
const FRONT_SEED = 0.05;
const FRONT_GROWTH = 3;
/** Time in which fuel above its self-ignition temperature is oxidised, s. */
const OXIDATION_S = 0.2;

/**
 * Burning of fuel that gathered in the volumes; returns kg/s.
 *
 * Equation: dφ/dt = 3 (φ + 0.05) / τ up to 1, burning rate 3 φ·m_burnable / τ, τ the time of a
 *   flame to cross the furnace. Above self-ignition also m_fuel / 0.2 s, with or without a flame.
 * Valid for: an index and a pressure pulse of the right size, not for the shape of a pulse.
 * Source: shape chosen here; the rate is that of a flame crossing at flameSpreadMS.
 *
 * @param igniter strength of what could light a mixture in the furnace, 0 to 1
 */
export function stepStrayFire(state: FurnaceState, igniter: number, stepS: number): number {
  const { furnace, passes, fuel } = state;
  const airPerFuel = fuel.airPerFuelKgKg;
  const furnacePart = burnableFuel(furnace, state.furnaceCombustible, fuel);
  const passPart = burnableFuel(passes, state.passCombustible, fuel);
  const burnable = furnacePart + passPart;
  const hot =
    state.gasTemperatureK > state.selfIgnitionK ||
    state.refractoryTemperatureK > state.wallIgnitionK;
  let burnt = 0;
  if (burnable > 0) {
    const meets = hot || igniter * furnacePart > MEETING * furnace.fuelKg;
    if (state.flash > 0 || meets) {
      const grown = state.flash + (stepS * FRONT_GROWTH * (state.flash + FRONT_SEED)) / state.burnS;
      state.flash = Math.min(grown, 1);
      const step = (stepS * FRONT_GROWTH * state.flash) / state.burnS;
      const share = Math.min(step, 1);
      burnInTank(furnace, furnacePart * share, airPerFuel);
      burnInTank(passes, passPart * share, airPerFuel);
      burnt = burnable * share;
    }
  } else {
    state.flash = 0;
  }
  if (state.gasTemperatureK > state.selfIgnitionK && furnace.fuelKg > 0) {
    const withAir = furnace.airKg / airPerFuel;
    const share = stepS / (OXIDATION_S + stepS);
    const oxidised = share * Math.min(furnace.fuelKg, withAir);
    if (oxidised > 0) {
      burnInTank(furnace, oxidised, airPerFuel);
      burnt += oxidised;
    }
  }
  return burnt / stepS;
}
