import {
  type Atlas,
  assembleAtlas,
  effectOf,
  type Plan,
  planOf,
  SOUND_PRIOR,
} from '../../diagnosis/index.ts';
import { createRun, type RunSetup } from '../../engine/index.ts';
import { type Fault, faultsOf } from '../../faults/index.ts';
import type { Pool } from '../../server/threads/index.ts';
import { fingerprintOf, type Keep, pack } from './keep.ts';
import type { AtlasTask, TakenSample } from './worker.ts';

/** Goes up when samples are taken in another way that sound plants do not show. */
const SAMPLES_VERSION = '3';
/** What is said of a plant and does nothing to it. */
const WORDS: ReadonlySet<string> = new Set(['title', 'description']);

export interface AtlasWork {
  readonly plant: string;
  readonly setup: RunSetup;
  readonly pool: Pool<AtlasTask, readonly TakenSample[]>;
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
  const { whole, ofFault } = atlasPrints(planOf(setup), sound);
  if (whole === work.standing) return null;
  let done = 0;
  const samples = await Promise.all(
    faults.map(async (fault, i) => {
      const name = ofFault[i] as string;
      const found = keep.find(name) ?? (await take(work, fault, name));
      onProgress(++done, faults.length);
      return found;
    }),
  );
  keep.only(ofFault);
  return assembleAtlas(
    plant,
    whole,
    createRun(setup).channels,
    { fault: null, priorWeight: SOUND_PRIOR, samples: sound },
    faults.map(({ id, priorWeight }, i) => ({ fault: id, priorWeight, samples: samples[i] ?? [] })),
  );
}

/**
 * Fingerprints of an atlas and of each fault in it, in the order of the catalogue: over the plant and
 * its practice profile, what sound plants read, what each fault does, and how often it is met.
 */
export function atlasPrints(
  plan: Plan,
  sound: readonly TakenSample[],
): { readonly whole: string; readonly ofFault: readonly string[] } {
  const faults = faultsOf(plan.setup.plant);
  const bare: Plan = { ...plan, setup: inOrder(plan.setup) as RunSetup };
  const base = fingerprintOf(SAMPLES_VERSION, JSON.stringify(bare.setup), pack(sound));
  const ofFault = faults.map((fault) => fingerprintOf(base, fault.id, effectOf(bare, fault)));
  const priors = faults.map(({ id, priorWeight }) => [id, priorWeight]);
  return { whole: fingerprintOf(base, ...ofFault, JSON.stringify(priors)), ofFault };
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

/** Without words, its names in order, so that how a file is written does not matter. */
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([name]) => !WORDS.has(name));
  entries.sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([name, own]) => [name, inOrder(own)]));
}
