import { STANDING } from '../observe/moment.ts';
import type { Reading } from '../observe/reading.ts';
import type { Observation } from '../reasoning/particles.ts';
import type { Atlas } from './atlas.ts';
import { binName, NOT_REACHED } from './band.ts';
import { keyName, type Sample } from './take-sample.ts';

/** Places of the keys of an atlas, by `keyName`. */
export type KeyPlaces = ReadonlyMap<string, number>;

export function keyPlacesOf({ keys }: Atlas): KeyPlaces {
  return new Map(
    keys.map(
      ({ check, moment, aspect }, place) => [keyName(check, moment, aspect), place] as const,
    ),
  );
}

/**
 * What readings mean to an atlas: what it does not tell causes apart by is left out. What hangs on no
 * step counts in every one.
 */
export function observationsOf(
  atlas: Atlas,
  places: KeyPlaces,
  moment: string,
  readings: readonly Reading[],
): readonly Observation[] {
  return readings.flatMap(({ check, aspect, value }): Observation[] => {
    const key =
      places.get(keyName(check, moment, aspect)) ?? places.get(keyName(check, STANDING, aspect));
    const at = key === undefined ? undefined : atlas.keys[key];
    if (key === undefined || at === undefined) return [];
    return [{ key, bin: at.bins.indexOf(binName(at.band, value)) }];
  });
}

/** The bin of each key of a whole sample; -1 for one that no particle has. */
export function binsOf(atlas: Atlas, sample: Sample): Int16Array {
  return Int16Array.from(atlas.keys, ({ check, moment, aspect, bins, band }) => {
    const value = sample.get(keyName(check, moment, aspect));
    return bins.indexOf(value === undefined ? NOT_REACHED : binName(band, value));
  });
}
