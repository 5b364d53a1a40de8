import type { Heard, LookReading } from '../../engine/index.ts';
import { checkName, type Reading } from './reading.ts';

/** Looks that take in several of a kind, by their ids: something or nothing each. */
const BY_ID: ReadonlySet<string> = new Set([
  'fuses',
  'limit buttons',
  'control relays',
  'terminal strip',
]);
const FAINT = 0.2;
const LOUD = 0.6;
const NOSE_SHARES = [0.001, 0.02, 0.2];
const SMELLS = ['none', 'trace', 'clear', 'strong'];

/** What eyes found: the words together, and each number that an eye could give. */
export function lookReadings({ what, words, values }: LookReading): readonly Reading[] {
  const check = checkName('look', what);
  const numbers = Object.entries(values).map(([aspect, value]): Reading => {
    if (!BY_ID.has(what)) return { check, aspect, value };
    return { check, aspect, value: value > 0 ? 'yes' : 'no' };
  });
  return [{ check, aspect: 'words', value: words.join('+') }, ...numbers];
}

/** How loud each sound is that was heard. */
export function heardReadings(heard: readonly Heard[], all: readonly string[]): readonly Reading[] {
  return all.map((what) => {
    const loudness = heard.find((one) => one.what === what)?.loudness ?? 0;
    const value =
      loudness === 0 ? 'none' : loudness < FAINT ? 'faint' : loudness < LOUD ? 'clear' : 'loud';
    return { check: checkName('listen'), aspect: what, value };
  });
}

/** @param share of the lower explosive limit, as a nose has it */
export function smellReading(share: number): Reading {
  const at = NOSE_SHARES.filter((from) => share >= from).length;
  return { check: checkName('smell'), aspect: 'gas', value: SMELLS[at] as string };
}
