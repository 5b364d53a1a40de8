import { nextUniform } from '../../numeric/index.ts';
import { readBurningVelocity } from './burning-velocity.ts';
import type { FlameState } from './flame-state.ts';
import { stepKernel } from './spark.ts';

/** Less than this is the leak of sound seats, which burns nowhere. */
export const NO_GAS_KGS = 1e-7;
const NO_SPARK_W = 0.01;
/** The chance in a kernel's growth is drawn anew after this time. */
const CHANCE_S = 0.05;
/** Steps do not sum to it to the last bit. */
const ROUNDING_S = 1e-9;
const PILOT_GROWS_S = 0.15;
const MAIN_GROWS_S = 0.25;
/** A flame without gas that could burn is gone within 0.2 s. */
const STARVES_S = 0.05;
const BLOWS_OFF_S = 0.15;
const LIFTS_S = 0.3;
const OUT_BELOW = 0.05;
const JUST_LIT = 0.1;
const MUST_BURN_SHARE = 1e-3;
/** The main flame begins to lift below this stability and is off below 1. */
const LIFTS_BELOW = 1.8;
const FURTHEST_LIFT = 1.5;
/** A lifted flame lets some of its gas escape. */
const LIFTED_ESCAPE = 0.2;
/** The furnace's own air can be drawn into the flame in this time. */
const ENTRAIN_S = 0.5;
/** Tiles this far above wall ignition lights gas as a whole pilot does. */
const GLOW_SPAN_K = 250;
/** A pilot back in its tube, or the spark, still meets a furnace that is full of mixture. */
const LEAST_MEETING = 0.15;
const LEAST_AIR_KGS = 1e-6;
const RICHEST = 9;

/** What a flame is fed with, written by the engine each step. */
export interface FlameFeed {
  /** Power the transformer puts to the electrode. */
  sparkW: number;
  /** Gas that leaves each nozzle. */
  pilotGasKgS: number;
  mainGasKgS: number;
  /** Air through the burner head. */
  airKgS: number;
  /** Air that is in the furnace. */
  furnaceAirKg: number;
  /** Of throat and tiles. */
  refractoryTemperatureK: number;
  /** Temperature from which tiles light fresh gas. */
  wallIgnitionK: number;
  /** Flame crossing the furnace from a mixture that gathered, 0 to 1. */
  flash: number;
}

/**
 * Spark, kernel, pilot and main flame.
 *
 * Equation: equivalence φ = gas·L / air, for the pilot with its own primary air, of the burner air
 *   that flows past what its jet draws in, and what leaks in; a sound jet draws in all of it, a
 *   weaker one in proportion to √(gas/rated); for the main flame where it anchors, headRichness times that of
 *   the whole burner. Stability m = (u_anchor / u) · s(φ)², s the burning velocity over its
 *   highest: the ratio of flow time to chemical time, for which s² stands since the chemical time
 *   is α/S². A pilot that reaches the head adds to the main flame's stability, in proportion.
 *   A flame with m > 1 grows to burn all its gas; with m < 1 it lifts and goes; outside the
 *   flammability limits or without gas it starves. Gas burnt is bounded by the air there is.
 * Valid for: nozzle-mixing and premixed burners as a lumped flame; times are right, shapes are not
 *   there. The draw of the jet holds for a narrowed hole at the same pressure; for less pressure
 *   behind the same hole it would be in proportion to the gas, so that such a pilot is leaner here.
 * Left out: flash-back, flame noise, swirl, vitiated air (a furnace full of burnt gas).
 * Source: blow-off by chemical against flow time after E. E. Zukoski and F. E. Marble; φ² of
 *   burning velocity after A. H. Lefebvre, Gas Turbine Combustion; a jet draws in by the root of its
 *   momentum, F. P. Ricou, D. B. Spalding, J. Fluid Mech. 11 (1961); constants chosen here.
 */
export function stepFlame(state: FlameState, feed: FlameFeed, stepS: number): void {
  const { sparkW, pilotGasKgS, mainGasKgS, airKgS, furnaceAirKg } = feed;
  const { refractoryTemperatureK, wallIgnitionK, flash } = feed;
  state.sparkW = sparkW * state.jumpShare;
  const pilotGas = pilotGasKgS > NO_GAS_KGS ? pilotGasKgS : 0;
  const mainGas = mainGasKgS > NO_GAS_KGS ? mainGasKgS : 0;
  if (
    pilotGas + mainGas === 0 &&
    !state.pilotLit &&
    !state.mainLit &&
    state.kernel === 0 &&
    state.lightAround === 0
  ) {
    state.igniter = state.sparkW > NO_SPARK_W ? LEAST_MEETING : 0;
    state.atRest = state.sparkW === 0;
    state.pilotEquivalence = 0;
    state.mainEquivalence = 0;
    return;
  }
  state.atRest = false;
  const { parameters: p, fuel } = state;
  const air = Math.max(airKgS, LEAST_AIR_KGS);
  const velocity = air * state.velocityPerFlow;
  const airPerFuel = fuel.airPerFuelKgKg;
  const overGlow = (refractoryTemperatureK - wallIgnitionK) / GLOW_SPAN_K;
  const glow = overGlow <= 0 ? 0 : Math.min(overGlow, 1);

  let pilotSpeed = 0;
  const pilotVelocity = velocity * p.pilotShelter;
  if (pilotGas > 0) {
    const needed = pilotGas * airPerFuel;
    const passing = p.pilotAirShare * air * jetDraws(pilotGas / p.ratedPilotKgS);
    const drawn = p.pilotPrimaryAir * needed + passing + p.pilotLeakInKgS;
    const equivalence = needed / drawn;
    state.pilotEquivalence = Math.min(equivalence, RICHEST);
    pilotSpeed = readBurningVelocity(state.burningVelocity, equivalence);
    state.pilotStability = (state.pilotAnchorMS * pilotSpeed * pilotSpeed) / pilotVelocity;
  } else {
    state.pilotEquivalence = 0;
    state.pilotStability = 0;
  }

  let mainSpeed = 0;
  if (mainGas > 0) {
    const equivalence =
      (p.headRichness * mainGas * airPerFuel) / (air * (p.hasPilot ? 1 - p.pilotAirShare : 1));
    state.mainEquivalence = Math.min(equivalence, RICHEST);
    mainSpeed = readBurningVelocity(state.burningVelocity, equivalence);
    state.mainStability =
      mainSpeed > 0
        ? (state.mainAnchorMS * mainSpeed * mainSpeed) / velocity +
          p.pilotSupport * (p.pilotReach * state.pilotIntensity + glow)
        : 0;
  } else {
    state.mainEquivalence = 0;
    state.mainStability = 0;
  }

  state.pilotSpeed = pilotSpeed;
  state.mainSpeed = mainSpeed;
  state.headVelocityMS = velocity;
  state.glow = glow;
  stepKindling(state, flash, stepS);
  stepBurning(state, stepS);

  const airRate = Math.max(airKgS, 0) + Math.max(furnaceAirKg, 0) / ENTRAIN_S;
  let couldBurn = airRate / airPerFuel;
  let burnt = pilotGas * state.pilotBurning;
  if (burnt > couldBurn) burnt = couldBurn;
  couldBurn -= burnt;
  state.pilotBurntKgS = burnt;
  state.pilotIntensity = visibleSize(state.pilotBurning, burnt, p.ratedPilotKgS);
  burnt = mainGas * state.mainBurning * (1 - LIFTED_ESCAPE * state.mainLift);
  if (burnt > couldBurn) burnt = couldBurn;
  state.mainBurntKgS = burnt;
  state.mainIntensity = visibleSize(state.mainBurning, burnt, p.ratedMainKgS);
  state.burntKgS = state.pilotBurntKgS + burnt;

  const reach = Math.max(p.pilotReach, LEAST_MEETING);
  let igniter = state.sparkW > NO_SPARK_W ? LEAST_MEETING : 0;
  if (state.pilotBurning * reach > igniter) igniter = state.pilotBurning * reach;
  if (state.mainBurning > igniter) igniter = state.mainBurning;
  state.igniter = igniter;
}

/** Kernel of the spark, and the light that goes round the head. */
function stepKindling(state: FlameState, flash: number, stepS: number): void {
  const { ignition, parameters: p, pilotSpeed, mainSpeed, glow } = state;
  const atMain = ignition.sparkAt === 'main';
  const speed = atMain ? mainSpeed : pilotSpeed;
  const holds = (atMain ? state.mainStability : state.pilotStability) > 1;
  const lit = atMain ? state.mainLit : state.pilotLit;
  const power = state.sparkW > NO_SPARK_W ? (sparkShare(state) * speed) / ignition.ratedSparkW : 0;
  const spark = lit ? 0 : power;
  const mainCatches = !state.mainLit && state.mainStability > 1;
  const pilotCatches = !state.pilotLit && state.pilotStability > 1;
  const torch = mainCatches ? p.pilotReach * state.pilotIntensity * mainSpeed : 0;
  if (spark === 0 && torch === 0 && glow === 0 && flash === 0) {
    state.kernel = 0 < state.kernel ? fade(state.kernel, ignition.kernelTimeS, stepS) : 0;
    state.lightAround = 0 < state.lightAround ? fade(state.lightAround, p.lightAroundS, stepS) : 0;
    return;
  }

  state.chanceLeftS -= stepS;
  if (state.chanceLeftS < ROUNDING_S) {
    state.chanceLeftS = CHANCE_S;
    state.chance = 1 + ignition.scatter * (2 * nextUniform(state.random) - 1);
  }
  const chance = state.chance;
  const drive = ignition.kernelGain * spark * chance;
  state.kernel = stepKernel(
    state.kernel,
    drive,
    atMain ? state.headVelocityMS : state.headVelocityMS * p.pilotShelter,
    ignition,
    stepS,
  );
  const kindled = state.kernel >= 1 && holds;
  if (state.kernel > 1) state.kernel = 1;
  if (pilotCatches && ((kindled && !atMain) || glow > 0.5 || flash > 0.5)) lightPilot(state);
  if (!mainCatches) {
    state.lightAround = fade(state.lightAround, p.lightAroundS, stepS);
    return;
  }
  if (kindled && atMain) {
    lightMain(state);
    return;
  }
  const spread = torch + (glow + flash) * mainSpeed;
  state.lightAround += (stepS * spread * chance) / p.lightAroundS;
  if (state.lightAround >= 1) lightMain(state);
}

/** Burning towards what stability and mixture allow. */
function stepBurning(state: FlameState, stepS: number): void {
  const { pilotSpeed, mainSpeed } = state;
  if (state.pilotLit) {
    if (pilotSpeed <= MUST_BURN_SHARE) {
      state.pilotBurning = fade(state.pilotBurning, STARVES_S, stepS);
    } else if (state.pilotStability < 1) {
      state.pilotBurning = fade(state.pilotBurning, BLOWS_OFF_S, stepS);
    } else {
      state.pilotBurning += ((1 - state.pilotBurning) * stepS) / (PILOT_GROWS_S + 0.5 * stepS);
    }
    if (state.pilotBurning < OUT_BELOW) {
      state.pilotLit = false;
      state.pilotBurning = 0;
    }
  }
  if (!state.mainLit) return;
  const lift = (LIFTS_BELOW - state.mainStability) / (LIFTS_BELOW - 1);
  const towards = lift <= 0 ? 0 : Math.min(lift, FURTHEST_LIFT);
  state.mainLift += ((towards - state.mainLift) * stepS) / (LIFTS_S + 0.5 * stepS);
  const off = state.mainLift >= 1;
  if (off) state.mainLift = 1;
  if (mainSpeed <= MUST_BURN_SHARE) {
    state.mainBurning = fade(state.mainBurning, STARVES_S, stepS);
  } else if (off && towards > 1) {
    state.mainBurning = fade(state.mainBurning, BLOWS_OFF_S, stepS);
  } else {
    state.mainBurning += ((1 - state.mainBurning) * stepS) / (MAIN_GROWS_S + 0.5 * stepS);
  }
  if (state.mainBurning < OUT_BELOW) {
    state.mainLit = false;
    state.mainBurning = 0;
    state.mainLift = 0;
  }
}

/** Of the air that flows past, by gas over rated: momentum goes with gas while the speed of the jet stays. */
function jetDraws(gasShare: number): number {
  return gasShare < 1 ? Math.sqrt(gasShare) : 1;
}

function sparkShare(state: FlameState): number {
  const jumped = state.jumpShare > 0 ? state.gapTransfer / state.jumpShare : 0;
  return state.sparkW * jumped * state.electrodeCapture;
}

function lightPilot(state: FlameState): void {
  state.pilotLit = true;
  state.pilotBurning = JUST_LIT;
  state.kernel = 0;
}

function lightMain(state: FlameState): void {
  state.mainLit = true;
  state.mainBurning = JUST_LIT;
  state.mainLift = 0;
  state.lightAround = 0;
  state.kernel = 0;
}

function visibleSize(burning: number, burntKgS: number, ratedKgS: number): number {
  if (burning === 0) return 0;
  const share = burntKgS / ratedKgS;
  return burning * (share < 1 ? Math.sqrt(share) : 1);
}

/** Exponential decay by the trapezoidal rule; what is left of it in the end is nothing. */
function fade(value: number, timeS: number, stepS: number): number {
  const left = (value * (timeS - 0.5 * stepS)) / (timeS + 0.5 * stepS);
  return left < 1e-4 ? 0 : left;
}
