/** What the stem of an item tells, as observations: the panel as it is kept or shown, and readings. */
import type { Observation } from '../../../src/diagnosis/index.ts';
import { isShown } from '../../../src/quiz/evidence/told.ts';
import type { Item, QuizPlant } from '../../../src/quiz/index.ts';

export function seenByStem(
  plant: QuizPlant,
  { stem }: Item,
  bins: Int16Array,
): readonly Observation[] {
  return plant.atlas.keys.flatMap((one, key): Observation[] => {
    const { check, moment, aspect, bins: names } = one;
    const read = stem.readings.find(
      (told) => told.check === check && told.moment === moment && told.aspect === aspect,
    );
    if (read !== undefined) return [{ key, bin: names.indexOf(read.word) }];
    const isKept = check === 'history|' || (check === 'watch one start|' && aspect === 'ends in');
    const isOnChart = stem.shows.chart && check === 'watch one start|' && isShown(plant, aspect);
    const bin = bins[key] as number;
    const reached = names[bin] !== 'not reached';
    return (isKept || isOnChart) && reached ? [{ key, bin }] : [];
  });
}
