import { difficultyOfLevel } from './difficulty.ts';
import { expectedScore, type Rating, spreadOf } from './rating.ts';

export const MASTERY_WORDS = [
  'not yet tried',
  'beginning',
  'getting there',
  'steady',
  'sure',
] as const;
export type MasteryWord = (typeof MASTERY_WORDS)[number];

/** Mostly, and with room for a bad day. */
const WELL_DONE = 0.65;
/** The jobs that one must be expected to do well for a word; the words before it need none. */
const LEVELS = [
  { word: 'sure', level: 3 },
  { word: 'steady', level: 2 },
  { word: 'getting there', level: 1 },
] as const;

/**
 * How far someone is with a skill. It is said of the lower end of what the rating may well be, so
 * that one lucky job makes nobody sure.
 *
 * @param rating undefined where there is no result
 */
export function masteryWord(rating: Rating | undefined): MasteryWord {
  if (rating === undefined || rating.count === 0) return 'not yet tried';
  const lowEnd = rating.value - spreadOf(rating);
  const reached = LEVELS.find(
    ({ level }) => expectedScore(lowEnd, difficultyOfLevel(level)) >= WELL_DONE,
  );
  return reached?.word ?? 'beginning';
}
