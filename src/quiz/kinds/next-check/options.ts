import type { Told } from '../../../diagnosis/index.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import { toldOf } from '../../evidence/told.ts';
import type { Option } from '../../item/item.ts';
import type { QuizPlant } from '../../item/maker.ts';
import type { Statement } from '../../item/statement.ts';
import type { Parting } from './parting.ts';
import { readableKeys } from './readable.ts';
import type { SoFar } from './so-far.ts';
import { causesTerm } from './tells.ts';
import type { CheckWorth } from './worth.ts';

/** The right one: what it parts, and what each would read. */
export function partingOption(
  plant: QuizPlant,
  seeded: SeededPlant,
  { standing }: SoFar,
  one: CheckWorth,
  parting: Parting,
): Option {
  const [told] = toldOf(plant, seeded, [parting.key]);
  const each = parting.groups.map(({ word, causes }): Statement => {
    const named = causesTerm(plant, causes);
    if (word === null || told === undefined) {
      return { code: 'quiz.next.would-read-either', with: { causes: named } };
    }
    const would: Told = { ...told, value: word, word };
    return {
      code: 'quiz.next.would-read',
      with: { causes: named, said: { is: 'said', told: would } },
    };
  });
  const parts: Statement = { code: 'quiz.next.parts', with: { causes: standing.length } };
  return {
    says: saysCheck(one),
    why: [parts, ...each],
    share: null,
    decidedBy: told ?? null,
    atS: seeded.momentsS[one.moment] ?? null,
  };
}

/** One that tells nothing: what everything that is left would let it read. */
export function idleOption(plant: QuizPlant, seeded: SeededPlant, one: CheckWorth): Option {
  const told = mostStriking(plant, seeded, one);
  const why: Statement = {
    code: 'quiz.next.idle',
    with: { said: told === null ? '' : { is: 'said', told } },
  };
  return {
    says: saysCheck(one),
    why: [why],
    share: null,
    decidedBy: told,
    atS: seeded.momentsS[one.moment] ?? null,
  };
}

function saysCheck({ check, moment }: CheckWorth): Statement {
  return { code: 'quiz.next.option', with: { check: { is: 'check', check, moment } } };
}

/** What is not as on a sound plant, of what it tells; else the first thing. */
function mostStriking(plant: QuizPlant, seeded: SeededPlant, one: CheckWorth): Told | null {
  const { atlas } = plant;
  const readable = readableKeys(plant, one);
  const strange = readable.find((key) => seeded.bins[key] !== atlas.keys[key]?.column[0]);
  return toldOf(plant, seeded, [strange ?? readable[0] ?? -1])[0] ?? null;
}
