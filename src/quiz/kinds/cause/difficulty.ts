/** How hard a question about a cause is at first, on the log-odds scale of ratings. */
import { saysIt } from '../../evidence/odds.ts';
import type { QuizPlant } from '../../item/maker.ts';
import type { ProvedStart } from './proved-start.ts';

/** Own training values. */
const EASIEST = -2.5;
const HARDEST = 2;
const AT_LEAST = -2.2;
const A_READING = 0.7;
const A_LATE_NEIGHBOUR = 0.9;
const A_NEAR_NEIGHBOUR = 1.1;
/** A neighbour that was as likely as this is as near as can be. */
const NEAR_SHARE = 0.5;
const SAID = -0.6;

/**
 * More to combine, a neighbour that stays long, one that is near: harder. What says the answer itself:
 * easier.
 *
 * @param nearest the cause that the key is most easily mistaken for
 */
export function difficultyOf(plant: QuizPlant, proved: ProvedStart, nearest: number): number {
  const { readings, nearness, goneAfter, seeded } = proved;
  const late = (goneAfter[nearest] ?? 0) / readings.length;
  const near = Math.min(1, (nearness[nearest] ?? 0) / NEAR_SHARE);
  const said = readings.some((one) => saysIt(plant, seeded, one)) ? SAID : 0;
  const all =
    AT_LEAST +
    A_READING * (readings.length - 1) +
    A_LATE_NEIGHBOUR * late +
    A_NEAR_NEIGHBOUR * near +
    said;
  return Math.round(100 * Math.max(EASIEST, Math.min(HARDEST, all))) / 100;
}
