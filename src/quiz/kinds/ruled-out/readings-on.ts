/** How each thing that could be read of a plant bears on one cause that still stands. */
import {
  afterSeeing,
  type Belief,
  keyName,
  partsOfCheck,
  SURPRISE,
  sharesOf,
  WATCH_A_START,
} from '../../../diagnosis/index.ts';
import { causeSharesOf } from '../../evidence/belief-of.ts';
import { saysIt } from '../../evidence/odds.ts';
import { quizTablesOf } from '../../evidence/quiz-tables.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { isClear } from '../next-check/is-clear.ts';
import { ofFamilies } from '../next-check/of-families.ts';

export interface ReadingOn {
  readonly check: string;
  readonly moment: string;
  /** Of the atlas: the one thing that is told. */
  readonly key: number;
  /** Share of the cause once this is known. */
  readonly after: number;
  /** Share of the plants of the cause, as they stand, that read so. */
  readonly alike: number;
  /** What most of those plants read. */
  readonly would: string;
  /** Share of the plants with a fault of that kind that read otherwise. */
  readonly telling: number;
  /** It is what one finds with the faulty part in hand. */
  readonly saysIt: boolean;
  /** Not what a sound plant reads. */
  readonly strange: boolean;
}

/** Aspect and word of a column that does not come to rest. */
const STEADY = 'steady';
const UNSTEADY = 'unsteady';
const HISTORY = 'history|';
/** A meter on wires is one thing, whatever it is set to. */
const METER: readonly string[] = ['volts', 'continuity', 'multimeter'];

/** What is done to read it; readings of one kind can be options of one item. */
export function kindOfReading({ check }: Pick<ReadingOn, 'check'>): string {
  const { what } = partsOfCheck(check);
  return METER.includes(what) ? 'meter' : what;
}

/** In the order of the atlas; nothing that the start shows by itself. */
export function readingsOn(
  plant: QuizPlant,
  seeded: SeededPlant,
  belief: Belief,
  cause: number,
): readonly ReadingOn[] {
  const { atlas } = plant;
  const { bins, sample } = seeded;
  const shares = sharesOf(belief);
  const ofKind = sharesOf(ofFamilies(plant, [cause]));
  const { isTelling, spans } = quizTablesOf(plant);
  const from = spans[cause] as number;
  const to = spans[cause + 1] as number;
  const own = sum(shares.subarray(from, to));
  return atlas.keys.flatMap(({ check, moment, aspect, bins: names, column }, key): ReadingOn[] => {
    const bin = bins[key] as number;
    if (check === WATCH_A_START || check === HISTORY || bin < 0) return [];
    if (!sample.has(keyName(check, moment, aspect)) || !isTelling[key]) return [];
    if (!isClear(plant, seeded, key)) return [];
    // A column at rest looks the same as the number beside it.
    if (aspect === STEADY && names[bin] !== UNSTEADY) return [];
    let all = 0;
    let theirs = 0;
    let kindAlike = 0;
    const ofBin = names.map(() => 0);
    for (let p = 0; p < column.length; p++) {
      const share = shares[p] as number;
      const at = column[p] as number;
      if (at === bin) {
        all += share;
        kindAlike += ofKind[p] as number;
      }
      if (p < from || p >= to) continue;
      if (at === bin) theirs += share;
      ofBin[at] = (ofBin[at] as number) + share;
    }
    const other = SURPRISE / (names.length - 1);
    const left = (agreeing: number, of: number) =>
      (1 - SURPRISE) * agreeing + other * (of - agreeing);
    const most = ofBin.indexOf(Math.max(...ofBin));
    return [
      {
        check,
        moment,
        key,
        after: left(theirs, own) / left(all, 1),
        alike: theirs / own,
        would: names[most] as string,
        telling: 1 - kindAlike,
        saysIt: saysIt(plant, seeded, { key, bin }),
        strange: bin !== column[0],
      },
    ];
  });
}

/** Share of a cause once all that this check tells at that moment is known. */
export function shareAfterAll(
  plant: QuizPlant,
  { bins, sample }: SeededPlant,
  belief: Belief,
  cause: number,
  { check, moment }: Pick<ReadingOn, 'check' | 'moment'>,
): number {
  const seen = plant.atlas.keys.flatMap((one, key) =>
    one.check === check && one.moment === moment && sample.has(keyName(check, moment, one.aspect))
      ? [{ key, bin: bins[key] as number }]
      : [],
  );
  return causeSharesOf(plant, afterSeeing(belief, plant.atlas, seen))[cause] as number;
}

function sum(all: Float64Array): number {
  let total = 0;
  for (const one of all) total += one;
  return total;
}
