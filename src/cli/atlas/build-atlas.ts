import {
  type Atlas,
  assembleAtlas,
  effectOf,
  SOUND_PRIOR,
  scripted,
} from '../../diagnosis/index.ts';
import { createRun, type RunSetup } from '../../engine/index.ts';
import { type Fault, faultsOf } from '../../faults/index.ts';
import { fingerprintOf, type Keep, pack } from './keep.ts';
import type { Pool } from './pool.ts';
import type { TakenSample } from './worker.ts';

/** Goes up when samples are taken in another way that sound plants do not show. */
const SAMPLES_VERSION = '1';

export interface AtlasWork {
  readonly plant: string;
  readonly setup: RunSetup;
  readonly pool: Pool;
  readonly keep: Keep;
  /** Fingerprint of the atlas that is there already. */
  readonly standing: string | null;
  /** Called as faults come in, with how many are done of how many. */
  readonly onProgress: (done: number, of: number) => void;
}

/**
 * The atlas of one plant. Sound plants are started every time: what they read stands for the simulator,
 * the plant and the checks; a fault stands for itself by what it does to the plant.
 *
 * @returns null where the atlas that is there is still right
 */
export async function buildAtlas(work: AtlasWork): Promise<Atlas | null> {
  const { plant, setup, pool, keep, onProgress } = work;
  const faults = faultsOf(setup.plant);
  const sound = await pool.run({ plant, fault: null });
  const base = fingerprintOf(SAMPLES_VERSION, JSON.stringify(setup), pack(sound));
  const names = faults.map((fault) => nameOf(base, setup, fault));
  const fingerprint = fingerprintOf(base, ...names, JSON.stringify(priorsOf(faults)));
  if (fingerprint === work.standing) return null;
  let done = 0;
  const samples = await Promise.all(
    faults.map(async (fault, i) => {
      const name = names[i] as string;
      const found = keep.find(name) ?? (await take(work, fault, name));
      onProgress(++done, faults.length);
      return found;
    }),
  );
  keep.only(names);
  return assembleAtlas(
    plant,
    fingerprint,
    createRun(setup).channels,
    { fault: null, priorWeight: SOUND_PRIOR, samples: sound },
    faults.map(({ id, priorWeight }, i) => ({ fault: id, priorWeight, samples: samples[i] ?? [] })),
  );
}

async function take(
  { plant, pool, keep }: AtlasWork,
  fault: Fault,
  name: string,
): Promise<readonly TakenSample[]> {
  const samples = await pool.run({ plant, fault: fault.id });
  keep.put(name, samples);
  return samples;
}

function nameOf(base: string, setup: RunSetup, fault: Fault): string {
  return fingerprintOf(base, fault.id, effectOf(scripted(setup), fault));
}

function priorsOf(faults: readonly Fault[]) {
  return faults.map(({ id, priorWeight }) => [id, priorWeight]);
}
