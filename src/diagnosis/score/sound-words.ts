import type { Atlas, AtlasKey } from '../atlas/atlas.ts';
import { NOT_REACHED } from '../atlas/band.ts';
import { AT_REST } from '../observe/moment.ts';
import { checkName } from '../observe/reading.ts';

const HISTORY = checkName('history');
/** Of a number, whatever the plant. */
const IN_BAND = 'in band';

/**
 * Of each key, the words that are no sign of anything: what a sound plant has there. Where no sound plant
 * comes to it, what it has at rest, and what most plants have that do come to it.
 */
export function soundWordsOf(sound: Atlas): readonly (readonly string[])[] {
  const { causes, causeOf, keys } = sound;
  const plant = Math.max(
    0,
    causeOf.findIndex((cause) => causes[cause]?.fault === null),
  );
  const wordOf = ({ bins, column }: AtlasKey) => bins[column[plant] ?? 0] ?? '';
  const atRest = new Map(
    keys.flatMap((key) =>
      key.moment === AT_REST ? [[`${key.check}#${key.aspect}`, wordOf(key)] as const] : [],
    ),
  );
  return keys.map((key) => {
    const word = wordOf(key);
    if (word !== NOT_REACHED) return [word];
    if (key.check === HISTORY) return [];
    const then = atRest.get(`${key.check}#${key.aspect}`);
    return then === undefined ? [commonest(key)] : [then, commonest(key)];
  });
}

/** Whether a word is a sign of something. */
export function isSign(soundWords: readonly string[], word: string): boolean {
  return word !== IN_BAND && word !== NOT_REACHED && !soundWords.includes(word);
}

function commonest({ bins, column }: AtlasKey): string {
  const counts = bins.map(() => 0);
  for (const bin of column) counts[bin] = (counts[bin] ?? 0) + 1;
  let most = -1;
  bins.forEach((word, bin) => {
    if (word === NOT_REACHED) return;
    if (most < 0 || (counts[bin] ?? 0) > (counts[most] ?? 0)) most = bin;
  });
  return bins[most] ?? '';
}
