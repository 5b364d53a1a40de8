import { describe, expect, it } from 'vitest';
import {
  type FurnaceState,
  fillFurnace,
  stepFurnace,
  type TankState,
} from '../../../src/plant/furnace/index.ts';
import { dairyFurnace, feedOf } from '../../plant/furnace/dairy-furnace.ts';
import { readTable } from './table.ts';

interface Purge {
  readonly shows: string;
  readonly furnaceM3: number;
  readonly passesM3: number;
  readonly bypassShare: number;
  readonly airM3S: number;
  readonly runUpS: number;
  readonly gasM3S: number;
  readonly startShare: number;
  readonly rows: readonly {
    readonly atS: number;
    readonly furnaceShare: number;
    readonly passShare: number;
  }[];
}

const CASES = readTable<readonly Purge[]>('purge');
const STEP_S = 0.01;
const GAS_CONSTANT = 8.314462618;
/** The trapezoidal rule over steps of less than a four-hundredth of an air change. */
const MIXED_SHARE = 1e-5;
/** A trace that nothing can light is mixed ten steps at a time, so it is up to ten steps old. */
const TRACE_SHARE = 1.2e-4;
const PUT_BY_S = 10 * STEP_S;

function furnaceFor(of: Purge): FurnaceState {
  const state = dairyFurnace({
    furnaceVolumeM3: of.furnaceM3,
    passVolumeM3: of.passesM3,
    bypassShare: of.bypassShare,
  });
  fillFurnace(state, of.startShare);
  return state;
}

function molPerM3({ ambient }: FurnaceState): number {
  return ambient.pressurePa / (GAS_CONSTANT * ambient.temperatureK);
}

function fuelShare({ amounts }: FurnaceState, tank: TankState): number {
  const fuel = tank.fuelKg * amounts.fuelMolKg;
  return fuel / (fuel + tank.airKg * amounts.airMolKg + tank.productKg * amounts.productMolKg);
}

function sweep(state: FurnaceState, of: Purge, k: number): void {
  const middleS = (k + 0.5) * STEP_S;
  const airM3S = of.airM3S * (of.runUpS > 0 ? Math.min(1, middleS / of.runUpS) : 1);
  const mol = molPerM3(state);
  const airKgS = (airM3S * mol) / state.amounts.airMolKg;
  const gasKgS = (of.gasM3S * mol) / state.amounts.fuelMolKg;
  stepFurnace(state, feedOf(airKgS, gasKgS, 0, 0, state.ambient.temperatureK), STEP_S);
}

describe('air that sweeps gas out of furnace and passes', () => {
  it.each(CASES.map((one) => [one.shows, one] as const))('%s', (_shows, of) => {
    const state = furnaceFor(of);
    let k = 0;
    for (const { atS, furnaceShare, passShare } of of.rows) {
      for (; k < Math.round(atS / STEP_S); k++) sweep(state, of, k);
      const changeS = ((1 - of.bypassShare) * of.airM3S) / of.passesM3;
      const allowed = passShare < TRACE_SHARE ? changeS * PUT_BY_S : MIXED_SHARE;
      const off = [
        Math.abs(fuelShare(state, state.furnace) / furnaceShare - 1),
        Math.abs(fuelShare(state, state.passes) / passShare - 1),
      ];
      expect(Math.max(...off), `after ${atS} s`).toBeLessThan(allowed);
    }
  });
});
