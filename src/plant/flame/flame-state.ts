import type { RandomState } from '../../numeric/index.ts';
import { flag, number, type ParameterTable, type Values } from '../../quantity/index.ts';
import type { AmbientState } from '../air/index.ts';
import { type FuelProperties, METHANE } from '../furnace/index.ts';
import { burningVelocityTable } from './burning-velocity.ts';
import { gapTransfer, type IgnitionParameters, jumpShare } from './spark.ts';

export const flameParameters = {
  hasPilot: flag('the burner has a pilot of its own', true),
  ratedPilotKgS: number('kg/s', 1e-5, 0.1, 'gas of a sound pilot'),
  pilotPrimaryAir: number(
    '1',
    0,
    1.2,
    'air the pilot draws in by its jet, over what it needs',
    0.5,
  ),
  pilotAirShare: number('1', 0, 0.3, 'share of the burner air that flows past the pilot', 0.045),
  pilotLeakInKgS: number('kg/s', 0, 0.5, 'air that leaks into the pilot and leans it', 0),
  pilotShelter: number('1', 0.02, 1, 'gas velocity at the pilot over that in the head', 0.3),
  pilotAnchorMS: number(
    'm/s',
    0.2,
    60,
    'velocity at which the best pilot mixture of methane blows off',
    12,
  ),
  pilotReach: number('1', 0, 1, 'share of the pilot flame that meets the main gas', 1),
  ratedMainKgS: number('kg/s', 1e-4, 5, 'main gas at full fire'),
  headAreaM2: number('m²', 0.001, 5, 'free area of the burner head'),
  headRichness: number(
    '1',
    0.5,
    2,
    'mixture where the main flame anchors over that of the whole burner',
    1.2,
  ),
  anchorMS: number(
    'm/s',
    1,
    300,
    'velocity at which the best main mixture of methane blows off',
    90,
  ),
  diffuserShift: number('1', 0, 1, 'how far the diffuser has slipped from its place', 0),
  pilotSupport: number('1', 0, 5, 'stability that a whole pilot adds to the main flame', 1.5),
  lightAroundS: number('s', 0.05, 5, 'time of the flame to cross and circle the head', 0.45),
} as const satisfies ParameterTable;
export type FlameParameters = Values<typeof flameParameters>;

/** Spark, pilot and main flame. */
export interface FlameState {
  ignition: IgnitionParameters;
  parameters: FlameParameters;
  fuel: FuelProperties;
  ambient: AmbientState;
  random: RandomState;

  /** Power of the spark that jumps the gap. */
  sparkW: number;
  /** Visible size of each flame, 0 to 1: burning times the root of gas burnt over rated. */
  pilotIntensity: number;
  mainIntensity: number;
  /** 0 seated, 1 lifted off. */
  mainLift: number;
  pilotBurntKgS: number;
  mainBurntKgS: number;
  burntKgS: number;
  /** Strength of all that could light a mixture in the furnace. */
  igniter: number;

  /** Dark, without gas and without spark: nothing would change by stepping. */
  atRest: boolean;
  pilotLit: boolean;
  mainLit: boolean;
  /** How far each flame burns all of its gas, 0 to 1. */
  pilotBurning: number;
  mainBurning: number;
  kernel: number;
  /** How far the main gas has been lit all round, 0 to 1. */
  lightAround: number;
  pilotEquivalence: number;
  mainEquivalence: number;
  /** Anchoring over blow-off, above 1 holds. */
  pilotStability: number;
  mainStability: number;

  /** Burning velocity over its highest at each flame, gas velocity in the head, glow of tiles. */
  pilotSpeed: number;
  mainSpeed: number;
  headVelocityMS: number;
  glow: number;
  chance: number;
  /** Until it is drawn anew. */
  chanceLeftS: number;
  burningVelocity: Float64Array;
  gapTransfer: number;
  jumpShare: number;
  electrodeCapture: number;
  velocityPerFlow: number;
  /** For this fuel: chemical time goes with the square of its burning velocity. */
  mainAnchorMS: number;
  pilotAnchorMS: number;
}

export function createFlame(
  ignition: IgnitionParameters,
  parameters: FlameParameters,
  fuel: FuelProperties,
  ambient: AmbientState,
  random: RandomState,
): FlameState {
  const state: FlameState = {
    ignition,
    parameters,
    fuel,
    ambient,
    random,
    sparkW: 0,
    pilotIntensity: 0,
    mainIntensity: 0,
    mainLift: 0,
    pilotBurntKgS: 0,
    mainBurntKgS: 0,
    burntKgS: 0,
    igniter: 0,
    atRest: false,
    pilotLit: false,
    mainLit: false,
    pilotBurning: 0,
    mainBurning: 0,
    kernel: 0,
    lightAround: 0,
    pilotEquivalence: 0,
    mainEquivalence: 0,
    pilotStability: 0,
    mainStability: 0,
    pilotSpeed: 0,
    mainSpeed: 0,
    headVelocityMS: 0,
    glow: 0,
    chance: 1,
    chanceLeftS: 0,
    burningVelocity: new Float64Array(0),
    gapTransfer: 0,
    jumpShare: 0,
    electrodeCapture: 0,
    velocityPerFlow: 0,
    mainAnchorMS: 0,
    pilotAnchorMS: 0,
  };
  prepareFlame(state);
  return state;
}

/** Derived constants, after a change of a parameter, of the fuel or of the ambient air. */
export function prepareFlame(state: FlameState): void {
  const { ignition, parameters: p } = state;
  state.burningVelocity = burningVelocityTable(state.fuel);
  state.gapTransfer = gapTransfer(ignition);
  state.jumpShare = jumpShare(ignition);
  const near = 1 - ignition.electrodeOffset;
  state.electrodeCapture = near * near;
  state.velocityPerFlow = 1 / (state.ambient.densityKgM3 * p.headAreaM2);
  const seated = 1 - p.diffuserShift;
  const speed = state.fuel.burningVelocityMS / METHANE.burningVelocityMS;
  state.mainAnchorMS = p.anchorMS * seated * seated * speed * speed;
  state.pilotAnchorMS = p.pilotAnchorMS * speed * speed;
}
