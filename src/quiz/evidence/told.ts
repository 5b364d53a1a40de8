/** What was read of a seeded plant, as observations and as what they told. */
import {
  keyName,
  LOCKED_OUT,
  NOT_REACHED,
  type Observation,
  STANDING,
  type Told,
  WATCH_A_START,
} from '../../diagnosis/index.ts';
import type { QuizPlant } from '../item/maker.ts';
import type { SeededPlant } from './seeded-plant.ts';

const HISTORY = 'history|';

/** What these keys read, of those that the start came to. */
export function observationsAt(
  { atlas }: QuizPlant,
  { bins, sample }: SeededPlant,
  keys: readonly number[],
): readonly Observation[] {
  return keys.flatMap((key): Observation[] => {
    const at = atlas.keys[key];
    if (at === undefined || !sample.has(keyName(at.check, at.moment, at.aspect))) return [];
    return [{ key, bin: bins[key] as number }];
  });
}

/** Places of the keys that say what the words of a stem say: how the start ended, what it locked out for. */
export function keysOfWords({ atlas }: QuizPlant): readonly number[] {
  return atlas.keys.flatMap(({ check, moment, aspect }, key) => {
    const isWord =
      (check === HISTORY && moment === LOCKED_OUT) ||
      (check === WATCH_A_START && moment === STANDING && aspect === 'ends in');
    return isWord ? [key] : [];
  });
}

/** Places of the keys that the record of the start shows: the panel in every step, and those words. */
export function keysOfChart(plant: QuizPlant): readonly number[] {
  const words = new Set(keysOfWords(plant));
  return plant.atlas.keys.flatMap((at, key) =>
    (at.check === WATCH_A_START && isShown(plant, at.aspect)) || words.has(key) ? [key] : [],
  );
}

/** The engine keeps the same channels for every plant; of what a plant has not, nothing is shown. */
export function isShown({ sound: { plant } }: QuizPlant, channel: string): boolean {
  if (OF_A_DRIVE.has(channel)) return plant.variant.fan === 'variable speed';
  if (OF_A_SECOND_SERVO.has(channel)) {
    return plant.field.servos.every(({ moves }) => moves !== 'damper and fuel valve');
  }
  return channel !== 'pilot.intensity' || plant.variant.ignition !== 'direct spark';
}
const OF_A_DRIVE: ReadonlySet<string> = new Set(['fan.target', 'fan.feedback', 'fan.frequency']);
const OF_A_SECOND_SERVO: ReadonlySet<string> = new Set([
  'fuel-valve.target',
  'fuel-valve.feedback',
]);

/** How the start ended, in words, and nothing of the chart. */
export function toldInWords(plant: QuizPlant, seeded: SeededPlant): readonly Observation[] {
  return observationsAt(plant, seeded, keysOfWords(plant));
}

/** All that the start told: how it ended, what it locked out for, the panel in every step reached. */
export function toldOnArrival(plant: QuizPlant, seeded: SeededPlant): readonly Observation[] {
  return observationsAt(plant, seeded, keysOfChart(plant));
}

/** Value and word of each key that the start came to. */
export function toldOf(
  { atlas }: QuizPlant,
  { bins, sample }: SeededPlant,
  keys: readonly number[],
): readonly Told[] {
  return keys.flatMap((key): Told[] => {
    const at = atlas.keys[key];
    if (at === undefined) return [];
    const { check, moment, aspect } = at;
    const value = sample.get(keyName(check, moment, aspect));
    if (value === undefined) return [];
    return [{ check, moment, aspect, value, word: at.bins[bins[key] as number] ?? NOT_REACHED }];
  });
}
