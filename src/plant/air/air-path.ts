import { AIR_MOLAR_MASS, type AmbientState, gasDensity } from './ambient.ts';
import { type DamperParameters, damperFlowTable, readDamperFlow } from './damper.ts';
import {
  type FanParameters,
  fanPressureShare,
  fanTorqueShare,
  RATED_AIR_DENSITY,
  ratedFanPower,
} from './fan.ts';
import { type PassageParameters, passageResistance } from './passages.ts';
import { type StackParameters, stackDraught } from './stack.ts';

export interface AirPathParameters {
  fan: FanParameters;
  damper: DamperParameters;
  passages: PassageParameters;
  stack: StackParameters;
}

/**
 * The way of the air: room, inlet screen, fan, damper, windbox, burner head, furnace, passes,
 * flue, stack. Gauge pressures are against the room, since that is where a manometer stands.
 */
export interface AirPathState {
  parameters: AirPathParameters;
  ambient: AmbientState;

  /** Through the burner head; negative when the furnace pushes air back. */
  airFlowKgS: number;
  /** Through the passes and the stack. */
  flueFlowKgS: number;
  /** Room against outdoors; below zero where the room is starved of air. */
  roomPa: number;
  fanRisePa: number;
  windboxGaugePa: number;
  headDifferentialPa: number;
  furnaceGaugePa: number;
  /** Suction at the boiler outlet, positive when the stack pulls. */
  draughtPa: number;
  /** Torque the fan asks of its shaft, positive against the turning. */
  shaftTorqueNm: number;
  shaftPowerW: number;

  damperFlow: Float64Array;
  damperResistance: number;
  damperScale: number;
  roomResistance: number;
  inletResistance: number;
  headResistance: number;
  coldResistance: number;
  passScale: number;
  flueScale: number;
  hotResistance: number;
  flueResistance: number;
  buoyancyPa: number;
  fanScalePa: number;
  flowPerShare: number;
  ratedTorqueNm: number;
  inertance: number;

  lastBladeDeg: number;
  lastSpeedRpm: number;
  lastFuelKgS: number;
  lastPulsePa: number;
  hotTemperatureK: number;
  flueTemperatureK: number;
  productShare: number;
  settled: boolean;
}

/** What drives the air, written by the engine each step: kept and refilled, so nothing is made anew. */
export interface AirSurroundings {
  /** Of the fan; negative when it turns the wrong way round. */
  shaftSpeedRpm: number;
  /** Damper blade, 0 shut to 90 open. */
  bladeDeg: number;
  /** Gas that joins the air in the furnace. */
  fuelKgS: number;
  /** Gas leaving the furnace. */
  furnaceTemperatureK: number;
  /** Gas in the stack. */
  flueTemperatureK: number;
  /** Share by mass of burnt gas (products of just enough air) in the flue. */
  productShare: number;
  /** Furnace pressure made by gas that is expanding or shrinking just now. */
  pulsePa: number;
}

const RPM_TO_RAD_S = Math.PI / 30;
/** A change of gas temperature that moves no recorded quantity by 1e-3 of itself. */
const TEMPERATURE_NOTICED_K = 0.25;
const PRODUCT_SHARE_NOTICED = 1e-3;
const FUEL_NOTICED_SHARE = 1e-6;
const PULSE_NOTICED_PA = 0.01;
/** A change of flow in a step below which it has settled, over rated flow. */
const FLOW_SETTLED_SHARE = 1e-8;
const STANDARD_PA = 101325;
/** Products of methane-like gas burnt with just enough air, wet. */
const PRODUCTS_MOLAR_MASS = 0.02774;

export function createAirPath(parameters: AirPathParameters, ambient: AmbientState): AirPathState {
  const state: AirPathState = {
    parameters,
    ambient,
    airFlowKgS: 0,
    flueFlowKgS: 0,
    roomPa: 0,
    fanRisePa: 0,
    windboxGaugePa: 0,
    headDifferentialPa: 0,
    furnaceGaugePa: 0,
    draughtPa: 0,
    shaftTorqueNm: 0,
    shaftPowerW: 0,
    damperFlow: new Float64Array(0),
    damperResistance: 0,
    damperScale: 0,
    roomResistance: 0,
    inletResistance: 0,
    headResistance: 0,
    coldResistance: 0,
    passScale: 0,
    flueScale: 0,
    hotResistance: 0,
    flueResistance: 0,
    buoyancyPa: 0,
    fanScalePa: 0,
    flowPerShare: 1,
    ratedTorqueNm: 0,
    inertance: 1,
    lastBladeDeg: 0,
    lastSpeedRpm: 0,
    lastFuelKgS: 0,
    lastPulsePa: 0,
    hotTemperatureK: ambient.temperatureK,
    flueTemperatureK: ambient.temperatureK,
    productShare: 0,
    settled: false,
  };
  prepareAirPath(state);
  return state;
}

/** Derived constants, after a change of a parameter or of the ambient air. */
export function prepareAirPath(state: AirPathState): void {
  const { fan, damper, passages: p, stack } = state.parameters;
  const { densityKgM3, pressurePa } = state.ambient;
  const thin = RATED_AIR_DENSITY / densityKgM3;
  const cold = (lossPa: number, blockage: number) =>
    passageResistance(lossPa, p.ratedFlowKgS, blockage) * thin;
  state.roomResistance = cold(p.roomOpeningPa, p.roomBlockage);
  state.headResistance = cold(p.headPa, p.headBlockage);
  state.inletResistance = cold(p.screenPa, p.screenBlockage) + cold(p.ductPa, 0);
  const perKelvin = (lossPa: number, blockage: number, ratedC: number) =>
    (passageResistance(lossPa, p.ratedFlowKgS, blockage) * STANDARD_PA) /
    (pressurePa * (ratedC + 273.15));
  state.passScale = perKelvin(p.passPa, p.passBlockage, p.ratedPassTemperatureC);
  const closed = 1 - (1 - stack.blockage) * (1 - stack.damperShut);
  state.flueScale = perKelvin(stack.lossPa, closed, stack.ratedTemperatureC);
  state.damperFlow = damperFlowTable(damper);
  state.damperScale = 1 / (2 * densityKgM3 * damper.faceAreaM2 * damper.faceAreaM2);
  state.fanScalePa = (fan.ratedPressurePa * densityKgM3) / RATED_AIR_DENSITY;
  state.flowPerShare = fan.ratedFlowM3S * densityKgM3;
  state.ratedTorqueNm =
    ((ratedFanPower(fan) / (fan.ratedSpeedRpm * RPM_TO_RAD_S)) * densityKgM3) / RATED_AIR_DENSITY;
  state.inertance = p.ductLengthM / p.ductAreaM2;
  setDamper(state, state.lastBladeDeg);
  setHotGas(state, state.hotTemperatureK, state.flueTemperatureK, state.productShare);
  state.settled = false;
}

/**
 * Air flow and pressures along the path.
 *
 * Equation: (ℓ/A) dṁ/dt = Δp_fan(ṁ, n) − R_cold·ṁ|ṁ| − p_f, with the furnace pressure
 *   p_f = R_hot·ṁ_g|ṁ_g| − g·H·(ρ_air − ρ_flue) + pulse and ṁ_g = ṁ + fuel; one linearly
 *   implicit Euler step, so the flow is smooth and stiff resistances need no shorter step.
 *   R_hot of passes and flue goes with gas temperature; the damper adds K(angle) / (2 ρ A²).
 * Valid for: incompressible air, all flows of either sign; a fan at rest or turning backwards.
 * Left out: heating of the air by the fan, leaks of casings, wind.
 * Source: one-dimensional unsteady Bernoulli equation along a line of lumped losses.
 */
export function stepAirPath(state: AirPathState, around: AirSurroundings, stepS: number): void {
  const { shaftSpeedRpm, bladeDeg, fuelKgS, flueTemperatureK, productShare, pulsePa } = around;
  const { furnaceTemperatureK } = around;
  const passK = 0.5 * (furnaceTemperatureK + flueTemperatureK);
  if (
    Math.abs(passK - state.hotTemperatureK) > TEMPERATURE_NOTICED_K ||
    Math.abs(flueTemperatureK - state.flueTemperatureK) > TEMPERATURE_NOTICED_K ||
    Math.abs(productShare - state.productShare) > PRODUCT_SHARE_NOTICED
  ) {
    setHotGas(state, passK, flueTemperatureK, productShare);
    state.settled = false;
  }
  if (bladeDeg !== state.lastBladeDeg) {
    setDamper(state, bladeDeg);
    state.settled = false;
  }
  if (
    state.settled &&
    shaftSpeedRpm === state.lastSpeedRpm &&
    Math.abs(fuelKgS - state.lastFuelKgS) < FUEL_NOTICED_SHARE * state.flowPerShare &&
    Math.abs(pulsePa - state.lastPulsePa) < PULSE_NOTICED_PA
  ) {
    return;
  }
  state.lastSpeedRpm = shaftSpeedRpm;
  state.lastFuelKgS = fuelKgS;
  state.lastPulsePa = pulsePa;

  const fan = state.parameters.fan;
  const speedShare = Math.abs(shaftSpeedRpm) / fan.ratedSpeedRpm;
  const driveShare = shaftSpeedRpm < 0 ? fan.backwardsShare : 1;
  const before = state.airFlowKgS;
  const shareBefore = before / state.flowPerShare;
  const flueBefore = before + fuelKgS;
  const resistance = state.coldResistance + state.damperResistance;
  const drive =
    state.fanScalePa * fanPressureShare(shareBefore, speedShare, driveShare) -
    resistance * before * Math.abs(before) -
    state.hotResistance * flueBefore * Math.abs(flueBefore) +
    state.buoyancyPa -
    pulsePa;
  const fanSlope =
    (state.fanScalePa / state.flowPerShare) *
    ((before > 0 ? 0.25 * driveShare * speedShare : 0) - Math.abs(shareBefore));
  const slope =
    fanSlope - 2 * resistance * Math.abs(before) - 2 * state.hotResistance * Math.abs(flueBefore);
  const change = drive / (state.inertance / stepS - Math.min(slope, 0));
  const air = before + change;
  state.settled = Math.abs(change) < FLOW_SETTLED_SHARE * state.flowPerShare;
  state.airFlowKgS = air;

  const flowShare = air / state.flowPerShare;
  const square = air * Math.abs(air);
  const flue = air + fuelKgS;
  const flueSquare = flue * Math.abs(flue);
  state.flueFlowKgS = flue;
  state.fanRisePa = state.fanScalePa * fanPressureShare(flowShare, speedShare, driveShare);
  state.roomPa = -state.roomResistance * square;
  state.headDifferentialPa = state.headResistance * square;
  const furnacePa = state.hotResistance * flueSquare - state.buoyancyPa + pulsePa;
  state.furnaceGaugePa = furnacePa - state.roomPa;
  state.windboxGaugePa = state.furnaceGaugePa + state.headDifferentialPa;
  state.draughtPa = state.buoyancyPa - state.flueResistance * flueSquare + state.roomPa;
  state.shaftTorqueNm = state.ratedTorqueNm * fanTorqueShare(flowShare, speedShare);
  state.shaftPowerW = state.shaftTorqueNm * Math.abs(shaftSpeedRpm) * RPM_TO_RAD_S;
}

function setDamper(state: AirPathState, bladeDeg: number): void {
  const flow = readDamperFlow(state.damperFlow, bladeDeg);
  state.lastBladeDeg = bladeDeg;
  state.damperResistance = state.damperScale / (flow * flow);
  state.coldResistance = state.roomResistance + state.inletResistance + state.headResistance;
}

function setHotGas(state: AirPathState, passK: number, flueK: number, productShare: number): void {
  const { ambient } = state;
  const molarMass = 1 / (productShare / PRODUCTS_MOLAR_MASS + (1 - productShare) / AIR_MOLAR_MASS);
  state.hotTemperatureK = passK;
  state.flueTemperatureK = flueK;
  state.productShare = productShare;
  state.flueResistance = state.flueScale * flueK;
  state.hotResistance = state.passScale * passK + state.flueResistance;
  state.buoyancyPa = stackDraught(
    state.parameters.stack.heightM,
    ambient.densityKgM3,
    gasDensity(ambient.pressurePa, flueK, molarMass),
  );
}
