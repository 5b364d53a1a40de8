import type { Atlas, AtlasKey } from './atlas.ts';
import { binName, NOT_REACHED } from './band.ts';
import { keyName, type Sample } from './take-sample.ts';

/**
 * The atlas with one more particle, ahead of the others of its cause: a plant whose severity or whose
 * second fault no other particle has, so that what it reads is not held to be impossible.
 *
 * The first one added is the plant of the case; further ones are what is left of it later.
 *
 * @param fault its cause; null: nothing is wrong with it
 */
export function withPlant(atlas: Atlas, fault: string | null, sample: Sample): Atlas {
  const cause = atlas.causes.findIndex((one) => one.fault === fault);
  if (cause < 0) return atlas;
  const at = atlas.causeOf.findIndex((one) => one >= cause);
  const place = at < 0 ? atlas.causeOf.length : at;
  return {
    ...atlas,
    ...ownOf(atlas, place),
    causeOf: Uint16Array.from([
      ...atlas.causeOf.subarray(0, place),
      cause,
      ...atlas.causeOf.subarray(place),
    ]),
    severities: [...atlas.severities.slice(0, place), 0, ...atlas.severities.slice(place)],
    keys: atlas.keys.map((key) => withBin(key, sample, place)),
  };
}

function ownOf({ own, ownLater = [] }: Atlas, place: number): Pick<Atlas, 'own' | 'ownLater'> {
  if (own === undefined) return { own: place };
  const moved = (one: number) => (one >= place ? one + 1 : one);
  return { own: moved(own), ownLater: [...ownLater.map(moved), place] };
}

function withBin(key: AtlasKey, sample: Sample, place: number): AtlasKey {
  const value = sample.get(keyName(key.check, key.moment, key.aspect));
  const name = value === undefined ? NOT_REACHED : binName(key.band, value);
  const known = key.bins.indexOf(name);
  const column = new Uint8Array(key.column.length + 1);
  column.set(key.column.subarray(0, place));
  column[place] = known < 0 ? key.bins.length : known;
  column.set(key.column.subarray(place), place + 1);
  return { ...key, column, bins: known < 0 ? [...key.bins, name] : key.bins };
}
