import { createRandom } from '../../../src/numeric/index.ts';
import { createAmbient } from '../../../src/plant/air/index.ts';
import {
  createFlame,
  type FlameParameters,
  type FlameState,
  type IgnitionParameters,
  stepFlame,
} from '../../../src/plant/flame/index.ts';
import { METHANE } from '../../../src/plant/furnace/index.ts';

/** Flows of a sound light-off, as the dairy plant makes them. */
export const LIGHT_OFF = { air: 0.498, pilot: 0.0024, main: 0.021, spark: 40 } as const;
export const STEP_S = 0.01;

export interface Feed {
  spark?: number;
  pilot?: number;
  main?: number;
  air?: number;
  furnaceAir?: number;
  tilesK?: number;
  flash?: number;
}

export function dairyFlame(
  change: { ignition?: Partial<IgnitionParameters>; flame?: Partial<FlameParameters> } = {},
  seed = 1,
): FlameState {
  const ignition: IgnitionParameters = {
    sparkAt: 'pilot',
    ratedSparkW: 40,
    electrodeGapMm: 3,
    jumpGapMm: 7,
    electrodeOffset: 0,
    kernelGain: 4,
    kernelTimeS: 0.35,
    kernelVelocityMS: 5,
    scatter: 0.4,
    ...change.ignition,
  };
  const flame: FlameParameters = {
    hasPilot: true,
    ratedPilotKgS: 0.0024,
    pilotPrimaryAir: 0.5,
    pilotAirShare: 0.045,
    pilotLeakInKgS: 0,
    pilotShelter: 0.3,
    pilotAnchorMS: 12,
    pilotReach: 1,
    ratedMainKgS: 0.12,
    headAreaM2: 0.045,
    headRichness: 1.25,
    anchorMS: 100,
    diffuserShift: 0,
    pilotSupport: 1.5,
    lightAroundS: 0.45,
    ...change.flame,
  };
  const ambient = createAmbient({ altitudeM: 0, temperatureC: 20 });
  return createFlame(ignition, flame, { ...METHANE }, ambient, createRandom(seed, 'flame'));
}

/** Steps for some seconds, or until `done` says so; returns the seconds it took. */
export function feed(
  state: FlameState,
  seconds: number,
  flows: Feed,
  done: (state: FlameState) => boolean = () => false,
): number {
  const { spark = 0, pilot = 0, main = 0, air = LIGHT_OFF.air } = flows;
  const { furnaceAir = 10, tilesK = 300, flash = 0 } = flows;
  const steps = Math.round(seconds / STEP_S);
  for (let i = 0; i < steps; i++) {
    stepFlame(
      state,
      {
        sparkW: spark,
        pilotGasKgS: pilot,
        mainGasKgS: main,
        airKgS: air,
        furnaceAirKg: furnaceAir,
        refractoryTemperatureK: tilesK,
        wallIgnitionK: 1033,
        flash,
      },
      STEP_S,
    );
    if (done(state)) return (i + 1) * STEP_S;
  }
  return seconds;
}

export function lightPilot(state: FlameState): FlameState {
  feed(state, 5, { spark: LIGHT_OFF.spark, pilot: LIGHT_OFF.pilot });
  return state;
}

export function lightMain(state: FlameState, main: number = LIGHT_OFF.main): FlameState {
  lightPilot(state);
  feed(state, 5, { pilot: LIGHT_OFF.pilot, main });
  feed(state, 2, { main });
  return state;
}
