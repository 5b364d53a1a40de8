import { readGasHeat } from '../combustion/index.ts';
import type { FurnaceState } from './furnace-state.ts';

export interface HeatBalance {
  /** Released, brought in, and stored at the start. */
  readonly inJ: number;
  readonly waterJ: number;
  readonly casingJ: number;
  readonly stackJ: number;
  readonly spiltJ: number;
  /** In furnace gas and tiles over 25 °C, and on its way to the next slow step. */
  readonly storedJ: number;
}

const REFERENCE_K = 298.15;

/**
 * Books the heat of a slow step and restarts its sums.
 *
 * Equation: passes to water = heat that left the furnace − heat of the flue gas at the outlet, so
 *   heat in = water + casing + stack + spilt + stored, to rounding. Air drawn in through the stack
 *   brings the heat of air.
 */
export function settleHeat(
  state: FurnaceState,
  tileToWaterJ: number,
  casingJ: number,
  spanS: number,
): void {
  const { totals, found } = state;
  const inKg = totals.airKg + totals.gasKg + totals.spiltKg;
  const outKg = state.leftKg - totals.bookedLeftKg;
  let perKg = state.intakeEnthalpy;
  if (outKg > 0) {
    readGasHeat(state.tables.gasHeat, state.flueTemperatureK, state.productShare, found);
    perKg = found.heatJKg;
  }
  const stackJ = outKg * perKg;
  const waterJ = totals.spanWaterJ + tileToWaterJ - stackJ;
  state.heatToWaterW = waterJ / spanS;
  totals.intakeJ += (inKg - totals.bookedInKg) * state.intakeEnthalpy;
  totals.waterJ += waterJ;
  totals.casingJ += casingJ;
  totals.stackJ += stackJ;
  totals.spanWaterJ = 0;
  totals.spanTileJ = 0;
  totals.spanFurnaceOutKg = 0;
  totals.bookedInKg = inKg;
  totals.bookedLeftKg = state.leftKg;
}

/** Counts the gas that was put in by hand as there from the start. */
export function restartBalance(state: FurnaceState): void {
  const { inJ, waterJ, casingJ, stackJ, spiltJ, storedJ } = readHeatBalance(state);
  state.totals.startJ += waterJ + casingJ + stackJ + spiltJ + storedJ - inJ;
}

/** Where all heat has gone so far: inJ less the others is nothing but rounding. */
export function readHeatBalance(state: FurnaceState): HeatBalance {
  const { totals: t, parameters: p } = state;
  const newKg = t.airKg + t.gasKg + t.spiltKg - t.bookedInKg;
  return {
    inJ: t.startJ + t.releasedJ + t.intakeJ + newKg * state.intakeEnthalpy,
    waterJ: t.waterJ,
    casingJ: t.casingJ,
    stackJ: t.stackJ,
    spiltJ: t.spiltJ,
    storedJ:
      state.gasHeatJ +
      p.refractoryHeatJK * (state.refractoryTemperatureK - REFERENCE_K) +
      t.spanTileJ +
      t.spanWaterJ,
  };
}
