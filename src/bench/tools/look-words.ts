import type { Heard, LookReading, LookWhat } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { lookValues } from './look-values.ts';

/** What eyes found, as sentences: the words first, then what an eye could put a number to. */
export function lookWords(reading: LookReading): readonly Message[] {
  return [...reading.words.map((code): Message => ({ code })), ...lookValues(reading)];
}

/** The name of a place to look at. */
export function lookPlaceName(what: LookWhat): Message {
  return { code: `bench.place.${what.replace(/\s+/g, '-')}` };
}

/** What ears found, the loudest first, as sentences. */
export function heardWords(heard: readonly Heard[]): readonly Message[] {
  if (heard.length === 0) return [{ code: 'bench.heard.nothing' }];
  return heard.map(({ what, loudness }) => ({
    code: `bench.heard.${what.replace(/\s+/g, '-')}`,
    params: { loud: { code: `bench.loud.${loudnessWord(loudness)}` } },
  }));
}

function loudnessWord(loudness: number): string {
  if (loudness < 0.2) return 'faint';
  return loudness < 0.6 ? 'clear' : 'loud';
}
