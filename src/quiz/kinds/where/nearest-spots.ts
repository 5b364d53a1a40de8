/** Which other things of the drawing the cause may be looked for at, each ruled out by a reading. */
import type { Refuting } from '../../evidence/refuting.ts';
import type { QuizPlant, Rejection } from '../../item/maker.ts';
import { byNearness, IN_DOUBT, refutedBy } from '../cause/neighbours.ts';
import { DISTRACTOR_SHARE, type ProvedStart } from '../cause/proved-start.ts';
import { spotOf } from './spot-of.ts';

export interface OtherSpot {
  readonly spot: string;
  /** Of all causes there. */
  readonly share: number;
  /** The likeliest of them, before the deciding reading. */
  readonly nearest: number;
  /** What rules out all of them. */
  readonly refuting: Refuting;
}
export type Spots =
  | { readonly ok: true; readonly value: readonly OtherSpot[] }
  | { readonly ok: false; readonly why: Rejection };

const LEAST_OTHERS = 3;
const MOST_OTHERS = 5;

/** @param key the right one */
export function nearestSpots(plant: QuizPlant, proved: ProvedStart, key: string): Spots {
  const bySpot = new Map<string, number[]>();
  for (const cause of byNearness(proved.nearness)) {
    const fault = plant.atlas.causes[cause]?.fault ?? null;
    const spot = fault === null ? null : spotOf(plant, fault);
    if (spot === null || spot === key) continue;
    const others = bySpot.get(spot);
    if (others === undefined) bySpot.set(spot, [cause]);
    else others.push(cause);
  }
  const sumOf = (shares: Float64Array, causes: readonly number[]) =>
    causes.reduce((sum, cause) => sum + (shares[cause] as number), 0);
  const near = [...bySpot].map(([spot, causes]) => ({
    spot,
    causes,
    share: sumOf(proved.shares, causes),
    nearness: sumOf(proved.nearness, causes),
  }));
  if (near.some(({ share }) => share > DISTRACTOR_SHARE)) {
    return { ok: false, why: 'distractor not ruled out' };
  }
  if (!near.some(({ nearness }) => nearness >= IN_DOUBT)) {
    return { ok: false, why: 'not worth asking' };
  }
  const chosen: OtherSpot[] = [];
  for (const { spot, causes, share } of near.sort((a, b) => b.nearness - a.nearness)) {
    const refuting = chosen.length < MOST_OTHERS ? refutedBy(plant, proved, causes) : null;
    if (refuting !== null) chosen.push({ spot, share, nearest: causes[0] ?? 0, refuting });
  }
  return chosen.length < LEAST_OTHERS
    ? { ok: false, why: 'no reading rules it out' }
    : { ok: true, value: chosen };
}
