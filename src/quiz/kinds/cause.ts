/** What is the cause, by the start and a few readings: the cause and its two nearest neighbours. */
import { scramble } from '../../numeric/index.ts';
import { toldOf } from '../evidence/told.ts';
import type { ChoiceItem, Option } from '../item/item.ts';
import { itemId } from '../item/item-id.ts';
import type { ItemMaker, Made, QuizPlant } from '../item/maker.ts';
import type { Term } from '../item/statement.ts';
import { difficultyOf } from './cause/difficulty.ts';
import { type Neighbour, nearestNeighbours } from './cause/neighbours.ts';
import { keysOf, shownAtS } from './cause/on-record.ts';
import { partsOf, skillOf } from './cause/parts.ts';
import { type ProvedStart, provedStart } from './cause/proved-start.ts';
import { whyItIs, whyNot } from './cause/reasons.ts';
import { cautionOf, stemOf } from './cause/stem-of.ts';

const NEIGHBOURS = 2;

export const causeMaker: ItemMaker = { kind: 'cause', make };

function make(plant: QuizPlant, seed: number): Made {
  const found = provedStart(plant, seed);
  if (!found.ok) return found;
  const proved = found.value;
  const near = nearestNeighbours(plant, proved, NEIGHBOURS);
  if (!near.ok) return near;
  const { seeded, readings } = proved;
  const fault = seeded.fault ?? '';
  const others = near.value.map((one) => neighbourOption(proved, one));
  const key = scramble(seed) % (others.length + 1);
  const item: ChoiceItem = {
    id: itemId({ kind: 'cause', plant: plant.id, seed }),
    kind: 'cause',
    plant: plant.id,
    topic: `cause/${partsOf(plant, fault)[0]}`,
    skills: [skillOf(plant, fault)],
    difficulty: difficultyOf(plant, proved, near.value[0]?.cause ?? 0),
    stem: stemOf(plant, proved, { code: 'quiz.cause.asks' }),
    run: seeded.run,
    caution: cautionOf(plant, proved),
    answer: 'choice',
    options: [...others.slice(0, key), keyOption(), ...others.slice(key)],
    key,
  };
  return { ok: true, item };

  function keyOption(): Option {
    const told = toldOf(plant, seeded, keysOf(readings));
    const last = told.at(-1) ?? null;
    return {
      says: { code: 'quiz.cause.says', with: { cause: nameOf(fault) } },
      why: whyItIs(plant, seeded, readings),
      share: proved.shares[seeded.cause] ?? null,
      decidedBy: last,
      atS: last === null ? null : shownAtS(seeded, last),
    };
  }
}

function neighbourOption(
  { seeded, shares }: ProvedStart,
  { cause, fault, refuting }: Neighbour,
): Option {
  return {
    says: { code: 'quiz.cause.says', with: { cause: nameOf(fault) } },
    why: [whyNot(refuting, nameOf(fault))],
    share: shares[cause] ?? null,
    decidedBy: refuting.told,
    atS: shownAtS(seeded, refuting.told),
  };
}

function nameOf(fault: string): Term {
  return { is: 'cause', fault };
}
