import type { ObservationKey, Particles } from '../reasoning/particles.ts';
import type { Band } from './band.ts';

/** A key with what its bins mean. */
export interface AtlasKey extends ObservationKey {
  /** Where the bins of a number end; null where the bins are words. */
  readonly band: Band | null;
}

/** All that the checks of one plant can tell, for every cause. */
export interface Atlas extends Particles {
  readonly plant: string;
  /** Over the plant, its faults and the readings taken: another one means another atlas. */
  readonly fingerprint: string;
  readonly keys: readonly AtlasKey[];
  /** Of each particle; 0 where nothing is wrong. */
  readonly severities: readonly number[];
  /** How long a sound start takes to the end of each of its steps, s after the call. */
  readonly reachedS: Readonly<Record<string, number>>;
}
