import { readSaturation, type Saturation, saturationTemperature } from '../steam/index.ts';
import { passHeat } from './heating-surface.ts';
import type { HotWaterParameters } from './vessel-parameters.ts';
import type { VesselFeed, VesselState } from './vessel-state.ts';

const PUMP_S = 2;
const RESEAT_SHARE = 0.9;
const ROUNDS = 4;
const CLOSE_K = 1e-7;
const METAL_FROM_K = 273.16;
/** The system never gives off its last water. */
const LEAST_SYSTEM_KG = 1;

/**
 * A boiler of a closed heating system: its water and metal, the water of pipes and emitters, a
 * circulating pump with a shunt, an expansion vessel.
 *
 * Equation: boiler d(M_b h + mC T_b)/dt = Q − (1 − σ) q (h(T_b) − h(T_s)) − loss; system
 *   d(M_s h)/dt = (1 − σ) q (h(T_b) − h(T_s)) − E, emitters E = load · K · (½(T_b + T_s) − T_room); of
 *   the flow q the share σ goes straight round, so the water coming back has
 *   σ T_b + (1 − σ) T_s. Water expands into the gas of the expansion vessel,
 *   p = p_fill V_gas/(V_gas − ΔV). Water that boils leaves as steam by the safety valve.
 * Numerics: the heats of a step are those of its middle (explicit midpoint, second order); what
 *   leaves one store is what enters the next.
 * Valid for: 0 to 340 °C, each store well mixed.
 * Left out: the time water needs along the pipes, air, static height, steam pockets.
 */
export function stepHotWater(
  state: VesselState,
  p: HotWaterParameters,
  feed: VesselFeed,
  spanS: number,
): void {
  const { saturation: boiler, middle: system, prepared } = state;
  const heatW = passHeat(state, feed.heatW, 1, spanS);
  const turns = feed.pumpFed && p.circulatingPumpRuns ? p.pumpShare : 0;
  const share = Math.max(turns, p.thermosiphonShare);
  const wanted = share * prepared.circulationKgS;
  state.circulationKgS += ((wanted - state.circulationKgS) * spanS) / (PUMP_S + spanS);
  const throughSystem = (1 - p.shuntShare) * state.circulationKgS;

  let carriedW = throughSystem * (boiler.waterEnthalpy - system.waterEnthalpy);
  let emittedW = emitted(state, feed.load, boiler.temperatureK, system.temperatureK);
  let lossW = prepared.lossWK * (boiler.temperatureK - state.ambient.temperatureK);
  const boilerHalf =
    boiler.temperatureK + (0.5 * spanS * (heatW - carriedW - lossW)) / boilerStore(state, boiler);
  const systemHalf =
    system.temperatureK +
    (0.5 * spanS * (carriedW - emittedW)) / (state.systemKg * system.waterEnthalpySlope);
  carriedW +=
    throughSystem *
    (boiler.waterEnthalpySlope * (boilerHalf - boiler.temperatureK) -
      system.waterEnthalpySlope * (systemHalf - system.temperatureK));
  emittedW = emitted(state, feed.load, boilerHalf, systemHalf);
  lossW = prepared.lossWK * (boilerHalf - state.ambient.temperatureK);

  const lostKg = blowOff(state, p, spanS);
  const lostJ = lostKg * system.waterEnthalpy;
  state.systemKg -= lostKg;
  state.massKg -= lostKg;
  state.massOutKg += lostKg;
  state.energyJ += spanS * (heatW - carriedW - lossW);
  state.systemEnergyJ += spanS * (carriedW - emittedW) - lostJ;
  state.energyOutJ += spanS * (lossW + emittedW) + lostJ;
  solveStores(state);
  boilOff(state, p, spanS);
  state.heatDeliveredW = emittedW;
  showHotWater(state, p);
}

/** Boiler and system at one temperature. */
export function settleHotWater(state: VesselState, p: HotWaterParameters, kelvin: number): void {
  const { saturation: boiler, middle: system, prepared } = state;
  readSaturation(system, FILL_K);
  state.systemKg = p.systemWaterM3 * system.waterDensity;
  state.massKg = state.systemKg + prepared.boilerKg;
  readSaturation(boiler, kelvin);
  readSaturation(system, kelvin);
  state.energyJ =
    prepared.boilerKg * boiler.waterEnthalpy +
    prepared.metalJK * (boiler.temperatureK - METAL_FROM_K);
  state.systemEnergyJ = state.systemKg * system.waterEnthalpy;
  state.circulationKgS = 0;
  showHotWater(state, p);
}

export function prepareHotWater(state: VesselState, p: HotWaterParameters): void {
  const { prepared, ambient } = state;
  const s = state.saturation;
  const kelvin = s.temperatureK;
  readSaturation(s, FILL_K);
  prepared.boilerKg = p.boilerWaterM3 * s.waterDensity;
  prepared.fillVolumeM3 = p.boilerWaterM3 + p.systemWaterM3;
  readSaturation(s, p.ratedFlowC + ZERO_C);
  const leaving = s.waterEnthalpy;
  readSaturation(s, p.ratedReturnC + ZERO_C);
  const apart = Math.max(leaving - s.waterEnthalpy, LEAST_RATED_JKG);
  readSaturation(s, kelvin);
  prepared.circulationKgS = p.ratedHeatW / apart / (1 - p.shuntShare);
  prepared.emitterWK = p.ratedHeatW / (0.5 * (p.ratedFlowC + p.ratedReturnC) - p.roomC);
  prepared.roomK = p.roomC + ZERO_C;
  prepared.metalJK = p.metalKg * p.metalHeatJKgK;
  prepared.lossWK = p.heatLossW / Math.max(p.ratedFlowC + ZERO_C - ambient.temperatureK, 1);
}

/** Temperature at which the system was filled. */
const FILL_K = 283.15;
const ZERO_C = 273.15;
/** Of a rated flow and return less than a kelvin apart. */
const LEAST_RATED_JKG = 4200;

function emitted(state: VesselState, load: number, boilerK: number, systemK: number): number {
  const above = 0.5 * (boilerK + systemK) - state.prepared.roomK;
  return above > 0 ? load * state.prepared.emitterWK * above : 0;
}

function boilerStore(state: VesselState, boiler: Saturation): number {
  const { boilerKg, metalJK } = state.prepared;
  return boilerKg * boiler.waterEnthalpySlope + metalJK;
}

function solveStores(state: VesselState): void {
  const { saturation: boiler, middle: system, prepared } = state;
  for (let round = 0; round < ROUNDS; round++) {
    const held =
      prepared.boilerKg * boiler.waterEnthalpy +
      prepared.metalJK * (boiler.temperatureK - METAL_FROM_K);
    const change = (state.energyJ - held) / boilerStore(state, boiler);
    if (Math.abs(change) < CLOSE_K) break;
    readSaturation(boiler, boiler.temperatureK + change);
  }
  for (let round = 0; round < ROUNDS; round++) {
    const excess = state.systemEnergyJ - state.systemKg * system.waterEnthalpy;
    const change = excess / (state.systemKg * system.waterEnthalpySlope);
    if (Math.abs(change) < CLOSE_K) break;
    readSaturation(system, system.temperatureK + change);
  }
}

/** Water out of the safety valve, kg. */
function blowOff(state: VesselState, p: HotWaterParameters, spanS: number): number {
  if (state.gaugePa > p.safetyValvePa) state.safetyValveOpen = p.safetyValveWorks;
  else if (state.gaugePa < RESEAT_SHARE * p.safetyValvePa) state.safetyValveOpen = false;
  const left = state.systemKg - LEAST_SYSTEM_KG;
  const kg = state.safetyValveOpen && left > 0 ? Math.min(p.safetyValveKgS * spanS, left) : 0;
  state.safetyValveKgS = kg / spanS;
  return kg;
}

/** Steam out of a boiler hotter than it can be at its pressure; the system makes up the water. */
function boilOff(state: VesselState, p: HotWaterParameters, spanS: number): void {
  const { saturation: boiler, middle: system } = state;
  state.steamKgS = 0;
  const absolutePa = pressureOf(state, p) + state.ambient.pressurePa;
  if (boiler.pressurePa <= absolutePa || !p.safetyValveWorks) return;
  const excessJ =
    (boiler.temperatureK - saturationTemperature(absolutePa)) * boilerStore(state, boiler);
  const each = boiler.steamEnthalpy - system.waterEnthalpy;
  const left = state.systemKg - LEAST_SYSTEM_KG;
  const kg = Math.min(excessJ / each, Math.max(left, 0));
  state.systemKg -= kg;
  state.massKg -= kg;
  state.massOutKg += kg;
  state.systemEnergyJ -= kg * system.waterEnthalpy;
  state.energyJ -= kg * each;
  state.energyOutJ += kg * boiler.steamEnthalpy;
  state.steamKgS = kg / spanS;
  solveStores(state);
}

function pressureOf(state: VesselState, p: HotWaterParameters): number {
  const { saturation: boiler, middle: system, prepared, ambient } = state;
  const expanded =
    prepared.boilerKg / boiler.waterDensity +
    state.systemKg / system.waterDensity -
    prepared.fillVolumeM3;
  const gas = Math.max(p.expansionVesselM3 - expanded, LEAST_GAS_SHARE * p.expansionVesselM3);
  const absolutePa = ((p.fillGaugePa + ambient.pressurePa) * p.expansionVesselM3) / gas;
  return absolutePa > ambient.pressurePa ? absolutePa - ambient.pressurePa : 0;
}

const LEAST_GAS_SHARE = 0.02;

function showHotWater(state: VesselState, p: HotWaterParameters): void {
  const { saturation: boiler, middle: system } = state;
  state.gaugePa = pressureOf(state, p);
  state.waterTemperatureK = boiler.temperatureK;
  state.returnTemperatureK =
    system.temperatureK + p.shuntShare * (boiler.temperatureK - system.temperatureK);
}
