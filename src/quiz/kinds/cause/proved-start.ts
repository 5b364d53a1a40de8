/** A start whose cause is proved by named readings: what questions about the cause are made from. */

import type { Observation } from '../../../diagnosis/index.ts';
import { causeSharesOf } from '../../evidence/belief-of.ts';
import { saysIt } from '../../evidence/odds.ts';
import { type Proofs, proofsOf, provingReadings } from '../../evidence/readings.ts';
import { type SeededPlant, seededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant, Rejection } from '../../item/maker.ts';

export interface ProvedStart {
  readonly seeded: SeededPlant;
  /** In the order in which they were taken; the last one decides. */
  readonly readings: readonly Observation[];
  readonly proofs: Proofs;
  /** Of each cause, what it has by the words of the stem and by the chart, the larger of the two. */
  readonly shares: Float64Array;
  /** Of each cause, its largest share while any one of the readings was missing. */
  readonly nearness: Float64Array;
  /** Of each cause, the number of readings after which it never was more than a distractor may be. */
  readonly goneAfter: readonly number[];
}

export type ProvedOrNot =
  | { readonly ok: true; readonly value: ProvedStart }
  | { readonly ok: false; readonly why: Rejection };

export const DISTRACTOR_SHARE = 0.05;
const MOST_READINGS = 4;
const SERVICE = 'modulation';

/** @param of faults to pick from; all of the atlas if left out */
export function provedStart(plant: QuizPlant, seed: number, of?: readonly string[]): ProvedOrNot {
  const seeded = seededPlant(plant, seed, of);
  const proofs = proofsOf(plant, seeded);
  const readings = provingReadings(plant, seeded, proofs);
  if (readings === null) {
    const goesWell = seeded.lockout === null && seeded.endsIn === SERVICE;
    return {
      ok: false,
      why: goesWell && isAsSound(plant, seeded) ? 'nothing goes wrong' : 'key not proved',
    };
  }
  if (readings.length > MOST_READINGS) return { ok: false, why: 'too long to answer' };
  if (readings.every((one) => saysIt(plant, seeded, one))) {
    return { ok: false, why: 'not worth asking' };
  }
  const byWords = (some: readonly Observation[]) => causeSharesOf(plant, proofs.byWords(some));
  const whole = byWords(readings);
  const chart = causeSharesOf(plant, proofs.byChart(readings));
  const without = readings.map((one) => byWords(readings.filter((other) => other !== one)));
  const onTheWay = readings.map((_, i) => byWords(readings.slice(0, i)));
  return {
    ok: true,
    value: {
      seeded,
      readings,
      proofs,
      shares: whole.map((share, cause) => Math.max(share, chart[cause] as number)),
      nearness: whole.map((_, cause) =>
        Math.max(...without.map((shares) => shares[cause] as number)),
      ),
      goneAfter: plant.atlas.causes.map(
        (_, cause) =>
          1 + lastPlace(onTheWay.map((shares) => (shares[cause] as number) > DISTRACTOR_SHARE)),
      ),
    },
  };
}

/** Nothing of the panel is other than on some sound plant. */
function isAsSound({ atlas }: QuizPlant, { bins }: SeededPlant): boolean {
  const sound = atlas.causes.findIndex(({ fault }) => fault === null);
  return atlas.keys.every(({ column }, key) => {
    const bin = bins[key];
    return atlas.causeOf.some((cause, p) => cause === sound && column[p] === bin);
  });
}

function lastPlace(flags: readonly boolean[]): number {
  return flags.lastIndexOf(true);
}
