import type { RunSetup } from '../../engine/index.ts';
import type { Fault } from '../../faults/index.ts';
import { createRandom, nextNormal, nextUniform, type RandomState } from '../../numeric/index.ts';

/** Weather that particles have, K from the plant's own; few, since each builds its own fuel tables. */
const WARMER_K = [0, -7, 6];
/** One deviation each, own training values: makers' tolerances, a main's pressure, a morning's state. */
const SUPPLY = 0.01;
const SPRING = 0.005;
const SWITCH = 0.005;
const VESSEL = 0.02;
const LEVEL_M = 0.008;
const WATER_K = 0.8;
const LEAST_LOAD = 0.25;
const MOST_LOAD = 0.5;
const MOST_DEVIATIONS = 2;

/**
 * One plant of the same kind as the given one: within the tolerances of its parts, in other weather and
 * as one more morning finds it. Number 0 is the plant itself.
 */
export function withTolerances(setup: RunSetup, seed: number): RunSetup {
  const own = JSON.parse(JSON.stringify(setup)) as Mutable<RunSetup>;
  own.seed = seed + 1;
  if (seed === 0) return own;
  const chance = createRandom(seed, 'tolerances of a particle');
  const { plant, initial } = own;
  plant.ambient.temperatureC += WARMER_K[seed % WARMER_K.length] as number;
  plant.gasTrain.supply.pressureGaugePa *= 1 + SUPPLY * bounded(chance);
  for (const edge of plant.gasTrain.edges) {
    if (edge.kind === 'regulator') edge.setpointPa *= 1 + SPRING * bounded(chance);
  }
  for (const one of plant.field.switches) {
    const factor = 1 + SWITCH * bounded(chance);
    one.makePa *= factor;
    one.breakPa *= factor;
  }
  initial.vesselGaugePa *= 1 + VESSEL * bounded(chance);
  initial.levelM += LEVEL_M * bounded(chance);
  if (typeof initial.waterTemperatureK === 'number') {
    initial.waterTemperatureK += WATER_K * bounded(chance);
  }
  initial.load = LEAST_LOAD + (MOST_LOAD - LEAST_LOAD) * nextUniform(chance);
  return own;
}

/** How many particles a fault gets: one that is there or not needs fewer. */
export function particlesFor({ severity }: Fault, most: number): number {
  return severity.low === severity.high ? Math.ceil(most / 2) : most;
}

/** Typical, worst and least first; then the range in even strides, each with its own place in its stride. */
export function severityOf({ severity }: Fault, seed: number, count: number): number {
  const { low, typical, high } = severity;
  const first = [typical, high, low][seed];
  if (first !== undefined || low === high) return first ?? typical;
  const chance = createRandom(seed, 'severity of a particle');
  const share = (seed - FIRST_SEVERITIES + nextUniform(chance)) / (count - FIRST_SEVERITIES);
  return low + (high - low) * share;
}
const FIRST_SEVERITIES = 3;

function bounded(chance: RandomState): number {
  return Math.max(-MOST_DEVIATIONS, Math.min(MOST_DEVIATIONS, nextNormal(chance)));
}

type Mutable<T> = T extends object ? { -readonly [K in keyof T]: Mutable<T[K]> } : T;
