/** One core of `flamewright atlas`: takes the samples of one cause after the other. */
import { parentPort, workerData } from 'node:worker_threads';
import { type Plan, planOf, type Sample, samplesOf } from '../../diagnosis/index.ts';
import type { RunSetup } from '../../engine/index.ts';
import { findFault } from '../../faults/index.ts';

export interface AtlasTask {
  readonly plant: string;
  /** Null: sound plants. */
  readonly fault: string | null;
}
export interface AtlasData {
  readonly setups: Readonly<Record<string, RunSetup>>;
}
export interface TakenSample {
  readonly severity: number;
  readonly readings: Sample;
}

const { setups } = workerData as AtlasData;
const plans = new Map<string, Plan>();

parentPort?.on('message', ({ plant, fault: id }: AtlasTask) => {
  const fault = id === null ? null : (findFault(id) ?? null);
  parentPort?.postMessage(samplesOf(planFor(plant), fault) satisfies readonly TakenSample[]);
});

function planFor(plant: string): Plan {
  const known = plans.get(plant);
  if (known !== undefined) return known;
  const setup = setups[plant];
  if (setup === undefined) throw new Error(`no plant ${plant}`);
  const plan = planOf(setup);
  plans.set(plant, plan);
  return plan;
}
