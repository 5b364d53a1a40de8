import type { QuantityKind } from '../../quantity/index.ts';
import { AT_REST } from '../observe/moment.ts';
import { type ReadingValue, STEADY, UNSTEADY } from '../observe/reading.ts';
import { resolutionOf } from '../observe/resolution.ts';
import type { AtlasKey } from './atlas.ts';
import { type Band, bandOf, binName, NOT_REACHED } from './band.ts';
import { keyName, partsOfKey, type Sample } from './take-sample.ts';

/** More words than this in one place tell one plant from another, not one cause from another. */
const MOST_BINS = 60;
/** Sound plants that disagree by more than this in a bin are too unlike for it to mean anything. */
const SOUND_AGREE = 0.9;

/**
 * Sorts samples into bins. Keys that tell nothing are left out: the same for all particles, different
 * among sound plants, or a double of another number of the same check.
 *
 * @param causeOf of each sample; 0: a sound plant
 */
export function sortSamples(
  samples: readonly Sample[],
  causeOf: Uint16Array,
  kindOf: (channel: string) => QuantityKind | null,
): readonly AtlasKey[] {
  const sound = causeOf.filter((cause) => cause === 0).length;
  const names = new Set<string>();
  for (const sample of samples) for (const name of sample.keys()) names.add(name);
  const taken = new Set<string>();
  return [...names].flatMap((name): AtlasKey[] => {
    const { check, moment, aspect } = partsOfKey(name);
    const found = samples.map((sample) => sample.get(name));
    const values = aspect === STEADY ? asARule(found, causeOf) : found;
    const band = bandFor(name, values, samples.slice(0, sound), kindOf(aspect));
    if (band === undefined) return [];
    const bins: string[] = [];
    const column = new Uint8Array(samples.length);
    values.forEach((value, p) => {
      const bin = value === undefined ? NOT_REACHED : binName(band, value);
      const known = bins.indexOf(bin);
      column[p] = known < 0 ? bins.push(bin) - 1 : known;
    });
    const double = `${check}@${moment} ${column.join()}`;
    if (bins.length < 2 || bins.length > MOST_BINS || taken.has(double)) return [];
    if (!isAgreed(column.subarray(0, sound))) return [];
    taken.add(double);
    return [{ check, moment, aspect, bins, column, band }];
  });
}

/**
 * Any column may move at the moment at which it is read. It tells something where that of a sound plant
 * never does and that of a cause always: a few that happened to move would speak for their cause.
 */
function asARule(
  values: readonly (ReadingValue | undefined)[],
  causeOf: Uint16Array,
): readonly (ReadingValue | undefined)[] {
  const rests = new Set<number>();
  let alwaysRests = true;
  values.forEach((value, p) => {
    const cause = causeOf[p] as number;
    if (value === UNSTEADY && cause === 0) alwaysRests = false;
    if (value !== undefined && value !== UNSTEADY) rests.add(cause);
  });
  return values.map((value, p) =>
    value === UNSTEADY && (!alwaysRests || rests.has(causeOf[p] as number)) ? 'in band' : value,
  );
}

/** Undefined where sound plants give no number to hold others against. */
function bandFor(
  name: string,
  values: readonly (ReadingValue | undefined)[],
  sound: readonly Sample[],
  kind: QuantityKind | null,
): Band | null | undefined {
  if (!values.some((value) => typeof value === 'number')) return null;
  const { check, moment, aspect } = partsOfKey(name);
  const numbersIn = (at: string) =>
    sound.flatMap((sample) => {
      const value = sample.get(keyName(check, at, aspect));
      return typeof value === 'number' ? [value] : [];
    });
  const own = numbersIn(moment);
  // A sound plant never locks out: what stands still then is held against a plant at rest.
  const numbers = own.length > 0 ? own : numbersIn(AT_REST);
  return numbers.length === 0 ? undefined : bandOf(numbers, resolutionOf(check, aspect, kind));
}

function isAgreed(bins: Uint8Array): boolean {
  const counts = new Map<number, number>();
  for (const bin of bins) counts.set(bin, (counts.get(bin) ?? 0) + 1);
  return Math.max(0, ...counts.values()) >= SOUND_AGREE * bins.length;
}
