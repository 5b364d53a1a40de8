import type { FaultOnset, RunSetup } from '../../engine/index.ts';
import type { Fault } from '../../faults/index.ts';
import { createRandom, nextNormal, nextUniform, type RandomState } from '../../numeric/index.ts';

/** Weather that particles have, K from the plant's own; few, since each builds its own fuel tables. */
const WARMER_K = [0, -7, 6];
/** One deviation each, own training values: makers' tolerances, a main's pressure, a water level. */
const SUPPLY = 0.01;
const SPRING = 0.005;
const SWITCH = 0.005;
const LEVEL_M = 0.008;
/** Whoever calls for help has a boiler that has cooled since, and how far is no sign of the fault. */
const LEAST_PRESSURE = 0.72;
const MOST_PRESSURE = 1.2;
const MOST_COOLER_K = 22;
const MOST_WARMER_K = 1;
const LEAST_LOAD = 0.2;
const MOST_LOAD = 0.6;
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
  const between = (low: number, high: number) => low + (high - low) * nextUniform(chance);
  initial.vesselGaugePa *= between(LEAST_PRESSURE, MOST_PRESSURE);
  initial.levelM += LEVEL_M * bounded(chance);
  if (typeof initial.waterTemperatureK === 'number') {
    initial.waterTemperatureK += between(-MOST_COOLER_K, MOST_WARMER_K);
  }
  initial.load = between(LEAST_LOAD, MOST_LOAD);
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

/**
 * When the fault comes, of each particle of it. One that comes and goes may be away while the plant is
 * looked at: the last two of those have it come on the way into service, and in service.
 *
 * @param count particles that have it from the beginning
 */
export function onsetsOf(
  { id, onsets }: Fault,
  count: number,
  callS: number,
  serviceS: number,
): readonly FaultOnset[] {
  const standing = Array<FaultOnset>(count).fill({ kind: 'start' });
  if (!onsets.includes('intermittent')) return standing;
  const chance = createRandom(count, `onset of ${id}`);
  const onTheWayS = callS + (serviceS - callS) * nextUniform(chance);
  return [
    ...standing,
    { kind: 'time', atS: Math.round(onTheWayS) },
    { kind: 'time', atS: Math.round(serviceS + INTO_SERVICE_S) },
  ];
}
const INTO_SERVICE_S = 20;

function bounded(chance: RandomState): number {
  return Math.max(-MOST_DEVIATIONS, Math.min(MOST_DEVIATIONS, nextNormal(chance)));
}

type Mutable<T> = T extends object ? { -readonly [K in keyof T]: Mutable<T[K]> } : T;
