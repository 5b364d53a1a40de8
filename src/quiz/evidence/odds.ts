/** What one reading by itself does for a cause. */
import { type Observation, partsOfCheck, SURPRISE } from '../../diagnosis/index.ts';
import type { QuizPlant } from '../item/maker.ts';
import { quizTablesOf } from './quiz-tables.ts';
import type { SeededPlant } from './seeded-plant.ts';

/** A look or a sheet by which alone the cause has so much says the answer itself. */
const SAYS_IT = 0.4;

/** Whether it is what one finds with the very part in hand, or at its dial. */
export function saysIt(
  plant: QuizPlant,
  { cause }: Pick<SeededPlant, 'cause'>,
  { key, bin }: Observation,
): boolean {
  const at = plant.atlas.keys[key];
  if (at === undefined || !BY_HAND.has(partsOfCheck(at.check).what)) return false;
  const { prior, spans } = quizTablesOf(plant);
  let own = 0;
  let all = 0;
  for (let p = 0; p < prior.length; p++) {
    if (at.column[p] !== bin) continue;
    all += prior[p] as number;
    if (p >= (spans[cause] as number) && p < (spans[cause + 1] as number))
      own += prior[p] as number;
  }
  return all > 0 && own / all >= SAYS_IT;
}
const BY_HAND: ReadonlySet<string> = new Set(['look', 'commissioning sheet']);

/** By how much a reading betters the odds of a cause against all others. */
export function oddsFactor(
  plant: QuizPlant,
  shares: Float64Array,
  cause: number,
  { key, bin }: Observation,
): number {
  const at = plant.atlas.keys[key];
  if (at === undefined) return 1;
  const { spans } = quizTablesOf(plant);
  const from = spans[cause] as number;
  const to = spans[cause + 1] as number;
  const differs = SURPRISE / (at.bins.length - 1);
  const sums = [0, 0, 0, 0] as [number, number, number, number];
  for (let p = 0; p < shares.length; p++) {
    const share = shares[p] as number;
    const after = share * (at.column[p] === bin ? 1 - SURPRISE : differs);
    const side = p >= from && p < to ? 0 : 2;
    sums[side] += share;
    sums[side + 1] = (sums[side + 1] as number) + after;
  }
  const [own, ownAfter, others, othersAfter] = sums;
  return own > 0 && othersAfter > 0 ? (ownAfter / own) * (others / othersAfter) : 1;
}
