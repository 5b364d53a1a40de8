/** Which other causes are worth offering: near before the deciding reading, and ruled out by one that can be named. */

import { quizTablesOf } from '../../evidence/quiz-tables.ts';
import { type Refuting, refutingReading } from '../../evidence/refuting.ts';
import { toldInWords } from '../../evidence/told.ts';
import type { QuizPlant, Rejection } from '../../item/maker.ts';
import { sharesPart } from './parts.ts';
import { DISTRACTOR_SHARE, type ProvedStart } from './proved-start.ts';

export interface Neighbour {
  readonly cause: number;
  readonly fault: string;
  readonly refuting: Refuting;
}
export type Neighbours =
  | { readonly ok: true; readonly value: readonly Neighbour[] }
  | { readonly ok: false; readonly why: Rejection };

/** What never was as likely as this is no neighbour, and without a nearer one nobody would be in doubt. */
export const LEAST_NEARNESS = 0.01;
export const IN_DOUBT = 0.04;
/** A word much shorter than the others stands out. */
const LONGER_BY = 2;
const LONGER_CHARACTERS = 10;

/** The nearest causes that the key may be mistaken for and that are something else to mend. */
export function nearestNeighbours(
  plant: QuizPlant,
  proved: ProvedStart,
  wanted: number,
): Neighbours {
  const { seeded, nearness, shares } = proved;
  const chosen: Neighbour[] = [];
  let why: Rejection = 'too few neighbours';
  for (const cause of byNearness(nearness)) {
    const fault = plant.atlas.causes[cause]?.fault ?? null;
    if (cause === seeded.cause || fault === null) continue;
    if ((nearness[cause] as number) < LEAST_NEARNESS) break;
    const others = [seeded.fault ?? '', ...chosen.map((one) => one.fault)];
    const causes = [seeded.cause, ...chosen.map((one) => one.cause)];
    if (others.some((other) => !isApart(plant, other, fault))) continue;
    if (causes.some((other) => isAlike(plant, other, cause))) continue;
    if ((shares[cause] as number) > DISTRACTOR_SHARE) {
      why = 'distractor not ruled out';
      continue;
    }
    const refuting = refutedBy(plant, proved, cause);
    if (refuting === null) {
      if (why === 'too few neighbours') why = 'no reading rules it out';
      continue;
    }
    chosen.push({ cause, fault, refuting });
    if (chosen.length < wanted) continue;
    const nearest = nearness[chosen[0]?.cause ?? cause] as number;
    return nearest < IN_DOUBT
      ? { ok: false, why: 'not worth asking' }
      : { ok: true, value: chosen };
  }
  return { ok: false, why };
}

/** The reading that rules causes out together: of those in the stem, else how the start ended. */
export function refutedBy(
  plant: QuizPlant,
  { seeded, readings }: ProvedStart,
  of: number | readonly number[],
): Refuting | null {
  const words = toldInWords(plant, seeded);
  const seen = [...words, ...readings];
  return (
    refutingReading(plant, seeded, seen, of, readings) ??
    refutingReading(plant, seeded, seen, of, words)
  );
}

/** Places of the causes, the nearest first; ties in the order of the atlas. */
export function byNearness(nearness: Float64Array): readonly number[] {
  return [...nearness.keys()].sort((a, b) => (nearness[b] as number) - (nearness[a] as number));
}

/** Another part to mend, and words of much the same length. */
function isApart(plant: QuizPlant, a: string, b: string): boolean {
  const short = Math.min(a.length, b.length);
  const long = Math.max(a.length, b.length);
  return !sharesPart(plant, a, b) && long <= LONGER_BY * short + LONGER_CHARACTERS;
}

function isAlike(plant: QuizPlant, a: number, b: number): boolean {
  return quizTablesOf(plant).alike[a]?.includes(b) ?? false;
}
