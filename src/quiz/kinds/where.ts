/** Where the cause of a start lies, answered on the drawing of the plant. */
import { type Observation, partsOfCheck } from '../../diagnosis/index.ts';
import { scramble } from '../../numeric/index.ts';
import { saysIt } from '../evidence/odds.ts';
import { toldOf } from '../evidence/told.ts';
import type { Option, SpotItem } from '../item/item.ts';
import { itemId } from '../item/item-id.ts';
import type { ItemMaker, Made, QuizPlant } from '../item/maker.ts';
import { difficultyOf } from './cause/difficulty.ts';
import { keysOf, shownAtS } from './cause/on-record.ts';
import { partsOf, skillOf } from './cause/parts.ts';
import { type ProvedStart, provedStart } from './cause/proved-start.ts';
import { whyItIs } from './cause/reasons.ts';
import { cautionOf, stemOf } from './cause/stem-of.ts';
import { nearestSpots, type OtherSpot } from './where/nearest-spots.ts';
import { spotWords, whyNotThere } from './where/reasons.ts';
import { faultsAtSpots, spotOf } from './where/spot-of.ts';

/** Another start than that of the question in words with the same seed. */
const OTHER_START = 0x2545f491;
const MOST_SEED = 0x7fffffff;

export const whereMaker: ItemMaker = { kind: 'where', make };

function make(plant: QuizPlant, seed: number): Made {
  const found = provedStart(plant, (seed ^ OTHER_START) & MOST_SEED, faultsAtSpots(plant));
  if (!found.ok) return found;
  const proved = found.value;
  const { seeded, readings } = proved;
  // Whoever reads that a thing is broken has only to point at it.
  if (readings.some((one) => saysIt(plant, seeded, one) || isByTerminals(plant, one))) {
    return { ok: false, why: 'not worth asking' };
  }
  const fault = seeded.fault ?? '';
  const spot = spotOf(plant, fault) ?? '';
  const near = nearestSpots(plant, proved, spot);
  if (!near.ok) return near;
  const others = near.value.map((one) => otherOption(plant, proved, one));
  const key = scramble(seed) % (others.length + 1);
  const item: SpotItem = {
    id: itemId({ kind: 'where', plant: plant.id, seed }),
    kind: 'where',
    plant: plant.id,
    topic: `cause/${partsOf(plant, fault)[0]}`,
    skills: [skillOf(plant, fault)],
    difficulty: difficultyOf(plant, proved, near.value[0]?.nearest ?? 0),
    stem: stemOf(plant, proved, { code: 'quiz.where.asks' }),
    run: seeded.run,
    caution: cautionOf(plant, proved),
    answer: 'spot',
    options: [...others.slice(0, key), keyOption(plant, proved, spot), ...others.slice(key)],
    key,
  };
  return { ok: true, item };
}

/** Ohms of one thing name it. */
function isByTerminals({ atlas }: QuizPlant, { key }: Observation): boolean {
  return partsOfCheck(atlas.keys[key]?.check ?? '').what === 'continuity';
}

type Spot = Option & { readonly spot: string };

function keyOption(plant: QuizPlant, proved: ProvedStart, spot: string): Spot {
  const { seeded, readings, shares } = proved;
  const told = toldOf(plant, seeded, keysOf(readings));
  const last = told.at(-1) ?? null;
  const cause = { is: 'cause', fault: seeded.fault } as const;
  return {
    spot,
    says: spotWords(plant, spot),
    why: [{ code: 'quiz.where.key', with: { cause } }, ...whyItIs(plant, seeded, readings)],
    share: shares[seeded.cause] ?? null,
    decidedBy: last,
    atS: last === null ? null : shownAtS(seeded, last),
  };
}

function otherOption(
  plant: QuizPlant,
  { seeded }: ProvedStart,
  { spot, share, refuting }: OtherSpot,
): Spot {
  return {
    spot,
    says: spotWords(plant, spot),
    why: [whyNotThere(refuting, spotWords(plant, spot))],
    share,
    decidedBy: refuting.told,
    atS: shownAtS(seeded, refuting.told),
  };
}
