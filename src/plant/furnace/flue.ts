import { AIR_OXYGEN, LEAST_SPREAD, readMixingTable, WIDEST_SPREAD } from '../combustion/index.ts';
import type { FurnaceFeed } from './furnace-feed.ts';
import type { FurnaceState } from './furnace-state.ts';
import { tankMass } from './tank.ts';

const LEAST_AIR_KGS = 1e-6;
const LEAST_HEAD_PA = 1;
/** A diffuser that has slipped all the way lets three times the unmixedness pass. */
const SHIFT_GAIN = 2;
/** Fuel left over in a hot furnace has turned to carbon monoxide and hydrogen by here; below, not at all. */
const RAW_BELOW_K = 900;
const REFORMED_SPAN_K = 200;

/**
 * What the flame of the moment leaves unfinished, and its nitric oxide.
 *
 * Equation: mean equivalence ratio φ = ṁ_gas L / ṁ_air; spread s = s₀ (Δp₀/Δp)^⅛ (1 + 2 shift), then
 *   as buildMixingTable.
 * Valid for: a lit main flame; spreads from 0.02 to 0.25.
 * Source: turbulent jets mix over a length that does not depend on their velocity, so the head's
 *   pressure drop enters weakly (swirl, buoyancy at low fire); the exponent and what a slipped
 *   diffuser does are allowances chosen here.
 */
export function mixFlame(state: FurnaceState, feed: FurnaceFeed): void {
  const { flameProducts: products, parameters: p, fuel } = state;
  if (feed.burntKgS <= 0) {
    products.unfinishedShare = 0;
    products.nitricMolKg = 0;
    return;
  }
  const air = Math.max(feed.airKgS, LEAST_AIR_KGS);
  const weak = p.mixingHeadPa / Math.max(feed.headDifferentialPa, LEAST_HEAD_PA);
  const eighthRoot = Math.sqrt(Math.sqrt(Math.sqrt(weak)));
  const spread = p.mixingSpread * eighthRoot * (1 + SHIFT_GAIN * feed.diffuserShift);
  state.spread = Math.min(Math.max(spread, LEAST_SPREAD), WIDEST_SPREAD);
  const equivalence = (feed.gasKgS * fuel.airPerFuelKgKg) / air;
  readMixingTable(state.tables.mixing, equivalence, state.spread, products);
}

/** Nitric oxide through the two volumes, then the gas at the boiler outlet. */
export function stepFlue(state: FurnaceState, burntKgS: number, spanS: number): void {
  const { totals, furnace, passes } = state;
  const made = burntKgS * spanS * state.flameProducts.nitricMolKg;
  if (made + state.furnaceNitricMol + state.passNitricMol > 0) {
    const first = shareKept(totals.spanFurnaceOutKg, tankMass(furnace));
    const inside = (state.furnaceNitricMol + made) * first;
    const moved = state.furnaceNitricMol + made - inside;
    const outKg = Math.max(0, state.leftKg - totals.bookedLeftKg);
    const second = shareKept(outKg, tankMass(passes));
    state.furnaceNitricMol = inside;
    state.passNitricMol = (state.passNitricMol + moved) * second;
    if (state.passNitricMol < TRACE_MOL) state.passNitricMol = 0;
    if (inside < TRACE_MOL) state.furnaceNitricMol = 0;
  }
  readFlue(state);
}

const TRACE_MOL = 1e-12;

/** Share that stays in a stirred volume of so much mass while so much leaves it. */
function shareKept(outKg: number, massKg: number): number {
  return massKg / (massKg + outKg);
}

/**
 * Dry flue gas at the boiler outlet, from what the passes hold.
 *
 * Equation: atom balance over air, burnt gas, unburnt fuel, and fuel that is carbon monoxide and
 *   hydrogen in the proportion of equilibrium at 1600 K.
 * Left out: moisture of the air; nitrogen dioxide.
 */
export function readFlue(state: FurnaceState): void {
  const { passes, amounts, fuel } = state;
  const airMol = passes.airKg * amounts.airMolKg;
  const burntMol = passes.productKg * state.fuelMolPerProductKg;
  const rawMol = passes.fuelKg * amounts.fuelMolKg;
  const hot = (state.gasTemperatureK - RAW_BELOW_K) / REFORMED_SPAN_K;
  const reformedMol = hot <= 0 ? 0 : hot >= 1 ? rawMol : hot * rawMol;
  const partMol = passes.unfinishedKg * amounts.fuelMolKg + reformedMol;
  const reducedMol = partMol * state.reducedPerFuelMol;
  const monoxideMol = state.monoxideShare * reducedMol;
  const dioxideMol = Math.max(0, fuel.carbonMol * (burntMol + partMol) - monoxideMol);
  const dryMol =
    airMol +
    burntMol * fuel.dryProductsPerFuelMol +
    partMol * (fuel.carbonMol + 0.5 * fuel.nitrogenMol) +
    (reducedMol - monoxideMol) +
    (rawMol - reformedMol);
  const per = 1 / dryMol;
  state.flueOxygen = Math.max(0, AIR_OXYGEN * airMol - 0.5 * state.passNitricMol) * per;
  state.flueCarbonDioxide = dioxideMol * per;
  state.flueCarbonMonoxide = monoxideMol * per;
  state.flueNitricOxide = state.passNitricMol * per;
  state.productShare = passes.productKg / tankMass(passes);
}
