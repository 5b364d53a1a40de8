import { AIR_MOLAR_MASS } from '../air/index.ts';
import { readGasHeat } from '../combustion/index.ts';
import type { FurnaceFeed } from './furnace-feed.ts';
import { readCombustible, stepReadings } from './furnace-readings.ts';
import type { FurnaceState } from './furnace-state.ts';
import { stepVentedPressure } from './puff.ts';
import { stepStrayFire } from './stray-fire.ts';
import { drawBack, spill, stepTank, tankAmount, tankMass } from './tank.ts';

/** Every tenth step: what changes slowly. */
const SLOW_STEPS = 10;
const NO_FUEL_KG = 1e-9;
/** Gas flow of a hundred sound seats together; and a mixture that nothing can light, over the lower limit. */
const SEEP_KGS = 2e-6;
const SEEP_COMBUSTIBLE = 2e-3;
/** Below this velocity in the vents, and this pressure, the gas is taken to be at rest. */
const QUIET_MS = 0.5;
const QUIET_PA = 0.2;

/**
 * Gas, fire and heat of the furnace.
 *
 * Equation: each volume as stepTank; heat of the furnace gas as a well-stirred furnace,
 *   dH/dt = Σ ṁ_in h_in − ṁ_out h(T) + Q − h_w (T − T_water) − h_r (T − T_tiles): T by one linearly
 *   implicit step, then H by the flows at that T, so that heat is conserved to rounding, and T
 *   anew from H / m, with the enthalpy of the gas at equilibrium. Q is the fuel's lower heating
 *   value less what the flame leaves as carbon monoxide and hydrogen. Passes by effectiveness,
 *   refractory and flue by lags, ten times coarser.
 * While air alone goes through and the mixture is a trace that nothing can light, ten steps are
 * taken as one; that moves the trace by less than 1 % of itself, and nothing else noticeably.
 * Fuel that did not burn in a flame gathers; it burns with the tank's own air when it is hot
 *   enough, or as a puff when a flame or spark meets pockets that can burn.
 * Valid for: flows of either sign; reverse air takes gas of the furnace with it.
 * Left out: fuel in the air intake, heat of the pass gas itself, burning of carbon monoxide once its
 *   pocket has left the flame, moisture of the air.
 */
export function stepFurnace(state: FurnaceState, feed: FurnaceFeed, stepS: number): void {
  if (isQuiet(state, feed)) {
    state.gatheredAirKg += feed.airKgS * stepS;
    state.gatheredGasKg += feed.gasKgS * stepS;
    state.gatheredS += stepS;
    state.gatheredSteps += 1;
    if (state.gatheredSteps < SLOW_STEPS) return;
    mixGathered(state, feed);
  } else {
    if (state.gatheredSteps > 0) mixGathered(state, feed);
    mixAndBurn(state, feed, stepS, 1);
  }
}

/**
 * Stands in for stepFurnace while nothing burns and nothing could light: true when the step was
 * only put by, so that nothing else is to be done; false when stepFurnace must be called.
 */
export function putBy(state: FurnaceState, airKgS: number, gasKgS: number, stepS: number): boolean {
  if (!holdsAirAlone(state, gasKgS) || state.gatheredSteps >= SLOW_STEPS - 1) return false;
  state.gatheredAirKg += airKgS * stepS;
  state.gatheredGasKg += gasKgS * stepS;
  state.gatheredS += stepS;
  state.gatheredSteps += 1;
  return true;
}

/** Air alone goes through: nothing burns, and what gas seeps in past shut valves is a trace. */
function isQuiet(state: FurnaceState, feed: FurnaceFeed): boolean {
  return feed.burntKgS === 0 && feed.igniter === 0 && holdsAirAlone(state, feed.gasKgS);
}

function holdsAirAlone(state: FurnaceState, gasKgS: number): boolean {
  return gasKgS < SEEP_KGS && state.pulsePa === 0 && state.combustible < SEEP_COMBUSTIBLE;
}

/** The steps that were let go by, as one: the mean flow over the whole of their time. */
function mixGathered(state: FurnaceState, feed: FurnaceFeed): void {
  const { airKgS, gasKgS, burntKgS, igniter } = feed;
  const spanS = state.gatheredS;
  feed.airKgS = state.gatheredAirKg / spanS;
  feed.gasKgS = state.gatheredGasKg / spanS;
  feed.burntKgS = 0;
  feed.igniter = 0;
  const steps = state.gatheredSteps;
  state.gatheredAirKg = 0;
  state.gatheredGasKg = 0;
  state.gatheredS = 0;
  state.gatheredSteps = 0;
  mixAndBurn(state, feed, spanS, steps);
  feed.airKgS = airKgS;
  feed.gasKgS = gasKgS;
  feed.burntKgS = burntKgS;
  feed.igniter = igniter;
}

function mixAndBurn(state: FurnaceState, feed: FurnaceFeed, stepS: number, steps: number): void {
  const { airKgS, gasKgS, burntKgS, igniter, waterTemperatureK } = feed;
  const { furnace, passes, amounts, parameters: p, fuel, ambient, totals, found } = state;
  const { gasHeat } = state.tables;
  const perS = 1 / stepS;
  const airPerFuel = fuel.airPerFuelKgKg;

  let stray = 0;
  if (furnace.fuelKg + passes.fuelKg > NO_FUEL_KG) {
    stray = stepStrayFire(state, igniter, stepS);
  } else {
    state.flash = 0;
  }
  const unfinishedKgS = burntKgS * state.flameProducts.unfinishedShare;
  const heatW = (burntKgS + stray) * fuel.lowerHeatingJKg - unfinishedKgS * state.unfinishedHeatJKg;
  state.heatReleaseW = heatW;

  const gasK = state.gasTemperatureK;
  const tileK = state.refractoryTemperatureK;
  const through = Math.max(airKgS, 0) + gasKgS;
  const mass = tankMass(furnace);
  const store = mass * state.specificHeat * perS;
  const tiles = p.refractoryConductanceWK;
  const walls = state.gasConductanceWK;
  const gain =
    heatW -
    through * (state.specificEnthalpy - state.intakeEnthalpy) -
    walls * (gasK - waterTemperatureK) -
    tiles * (gasK - tileK);
  const newK = gasK + gain / (store + through * state.specificHeat + walls + tiles);

  let airIn = airKgS * stepS;
  let spiltMol = 0;
  if (airIn < 0) {
    const share = -airIn < mass ? -airIn / mass : 1;
    spiltMol = share * tankAmount(furnace, amounts);
    spill(furnace, share);
    const spiltJ = share * state.gasHeatJ;
    state.gasHeatJ -= spiltJ;
    totals.spiltJ += spiltJ;
    totals.spiltKg -= airIn;
    airIn = 0;
  }
  const burnt = burntKgS * stepS;
  const unfinished = unfinishedKgS * stepS;
  const finished = burnt - unfinished;
  const inKg = airIn + gasKgS * stepS;
  const inMol = airIn * amounts.airMolKg + gasKgS * stepS * amounts.fuelMolKg;
  furnace.capacityMol = state.furnaceMolK / newK;
  furnace.inFuelKg = gasKgS * stepS - burnt;
  furnace.inAirKg = airIn - finished * airPerFuel;
  furnace.inProductKg = finished * (1 + airPerFuel);
  furnace.inUnfinishedKg = unfinished;
  stepTank(furnace, amounts);
  const outKg =
    furnace.outFuelKg + furnace.outAirKg + furnace.outProductKg + furnace.outUnfinishedKg;
  const lack = furnace.lackMol;
  if (lack > 0) {
    const behind = tankAmount(passes, amounts);
    const share = lack < behind ? lack / behind : 1;
    const passKg = tankMass(passes);
    const passK = 0.5 * (newK + state.flueTemperatureK);
    readGasHeat(gasHeat, passK, passes.productKg / passKg, found);
    const drawnJ = share * passKg * found.heatJKg;
    state.gasHeatJ += drawnJ;
    totals.spanWaterJ -= drawnJ;
    drawBack(passes, furnace, share);
    furnace.amountMol += lack;
  }
  const massAfter = tankMass(furnace);
  readGasHeat(gasHeat, newK, furnace.productKg / massAfter, found);
  const wallJ = walls * (newK - waterTemperatureK) * stepS;
  const tileJ = tiles * (newK - tileK) * stepS;
  const outJ = outKg * found.heatJKg;
  const inJ = inKg * state.intakeEnthalpy;
  state.gasHeatJ += inJ + heatW * stepS - wallJ - tileJ - outJ;
  const specific = state.gasHeatJ / massAfter;
  state.specificEnthalpy = specific;
  state.specificHeat = found.capacityJKgK;
  state.gasTemperatureK = newK + (specific - found.heatJKg) / found.capacityJKgK;
  totals.airKg += airKgS * stepS;
  totals.gasKg += gasKgS * stepS;
  totals.releasedJ += heatW * stepS;
  totals.spanTileJ += tileJ;
  totals.spanWaterJ += wallJ + outJ;
  totals.spanFurnaceOutKg += outKg;
  passes.capacityMol = (2 * state.passMolK) / (newK + state.flueTemperatureK);
  passes.inFuelKg = furnace.outFuelKg;
  passes.inAirKg = furnace.outAirKg;
  passes.inProductKg = furnace.outProductKg;
  passes.inUnfinishedKg = furnace.outUnfinishedKg;
  stepTank(passes, amounts);
  let out = passes.outFuelKg + passes.outAirKg + passes.outProductKg + passes.outUnfinishedKg;
  if (passes.outFuelKg + passes.outUnfinishedKg > 0) {
    totals.fuelOutKg += passes.outFuelKg;
    totals.unfinishedOutKg += passes.outUnfinishedKg;
  }
  if (passes.lackMol > 0) {
    const drawn = passes.lackMol * AIR_MOLAR_MASS;
    passes.airKg += drawn;
    out -= drawn;
  }
  state.outflowKgS = out * perS;
  state.leftKg += out;
  state.airChanges += inMol / (furnace.amountMol + passes.amountMol);

  const expansionM3S =
    (furnace.outMol + spiltMol - lack - inMol) * newK * state.volumePerMolK * perS;
  if (Math.abs(expansionM3S) > QUIET_MS * p.ventAreaM2 || Math.abs(state.pulsePa) > QUIET_PA) {
    const pulse = stepVentedPressure(
      state.pulsePa,
      expansionM3S,
      furnace.volumeM3 + passes.volumeM3,
      p.ventAreaM2,
      mass / furnace.volumeM3,
      ambient.pressurePa,
      stepS,
    );
    state.pulsePa = pulse;
    state.puffIndex = pulse > 0 ? pulse / p.casingStrengthPa : 0;
    if (state.puffIndex > state.puffPeakIndex) state.puffPeakIndex = state.puffIndex;
  } else {
    state.pulsePa = 0;
    state.puffIndex = 0;
  }

  if (furnace.fuelKg + passes.fuelKg > 0 || state.combustible > 0) readCombustible(state);
  state.slowCount += steps;
  state.slowS += stepS;
  if (state.slowCount >= SLOW_STEPS) {
    stepReadings(state, feed, state.slowS);
    state.slowCount = 0;
    state.slowS = 0;
  }
}
