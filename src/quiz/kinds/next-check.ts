/**
 * What is worth reading next. Proved by the expected gain over what the evidence in the stem leaves: the
 * key is worth half a bit at least, the others nothing, since all that is left would let them read the same.
 */

import { partsOfCheck } from '../../diagnosis/index.ts';
import { createRandom, nextUniform, type RandomState, shuffled } from '../../numeric/index.ts';
import { type SeededPlant, seededPlant } from '../evidence/seeded-plant.ts';
import type { Item } from '../item/item.ts';
import { itemId } from '../item/item-id.ts';
import type { ItemMaker, Made, QuizPlant, Rejection } from '../item/maker.ts';
import { cautionOfCheck } from './next-check/caution-of-check.ts';
import { type IdleCheck, idleChecks } from './next-check/idle-checks.ts';
import { idleOption, partingOption } from './next-check/options.ts';
import { type Parting, partingBy } from './next-check/parting.ts';
import { skillsOfCause } from './next-check/skills-of-cause.ts';
import { type SoFar, waysSoFar } from './next-check/so-far.ts';
import { stoppingFaults } from './next-check/stopping-faults.ts';
import { arrivalTells, LISTED } from './next-check/tells.ts';
import { type CheckWorth, worthOfChecks } from './next-check/worth.ts';

interface Candidate {
  readonly soFar: SoFar;
  readonly key: CheckWorth;
  readonly parting: Parting;
  readonly idle: readonly IdleCheck[];
}

const LEAST_BITS = 0.5;
const LEAST_BITS_OF_ONE = 0.3;
/** The best for its minutes and those nearly as good. */
const KEYS_TRIED = 3;
const NEARLY = 0.8;
/** The two others are picked of so many of the likeliest mistakes. */
const AMONG_LIKELIEST = 4;

export const nextCheckMaker: ItemMaker = { kind: 'next check', make };

function make(plant: QuizPlant, seed: number): Made {
  const chance = createRandom(seed, `next check at ${plant.id}`);
  const seeded = seededPlant(plant, seed, stoppingFaults(plant));
  if (seeded.lockout === null) return no('nothing goes wrong');
  const ways = waysSoFar(plant, seeded, chance);
  if (ways.length === 0) return no('not worth asking');
  let why: Rejection = 'not worth asking';
  for (const soFar of shuffled(ways, chance)) {
    const found = candidateOf(plant, seeded, soFar);
    if (typeof found !== 'string') return { ok: true, item: itemOf(plant, seeded, found, chance) };
    why = found;
  }
  return no(why);
}

function candidateOf(plant: QuizPlant, seeded: SeededPlant, soFar: SoFar): Candidate | Rejection {
  const ranked = worthOfChecks(plant, seeded, soFar.belief, soFar.made);
  const worthy = ranked.filter(({ bits }) => bits >= LEAST_BITS);
  const [best] = worthy;
  if (best === undefined) return 'not worth asking';
  let why: Rejection = 'key not proved';
  for (const key of worthy.slice(0, KEYS_TRIED)) {
    if (key.bits / key.cost < (NEARLY * best.bits) / best.cost) break;
    const parting = partingBy(plant, seeded, soFar, key);
    if (parting === null || parting.bits < LEAST_BITS_OF_ONE || parting.groups.length < 2) continue;
    const idle = idleChecks(plant, seeded, soFar, key);
    if (idle.length >= 2) return { soFar, key, parting, idle };
    why = 'too few neighbours';
  }
  return why;
}

function itemOf(
  plant: QuizPlant,
  seeded: SeededPlant,
  { soFar, key, parting, idle }: Candidate,
  chance: RandomState,
): Item {
  const others = shuffled(idle.slice(0, AMONG_LIKELIEST), chance).slice(0, 2);
  const right = partingOption(plant, seeded, soFar, key, parting);
  const options = others.map((one) => idleOption(plant, seeded, one));
  const place = Math.floor(nextUniform(chance) * (options.length + 1));
  options.splice(place, 0, right);
  const { what } = partsOfCheck(key.check);
  return {
    id: itemId({ kind: 'next check', plant: plant.id, seed: seeded.seed }),
    kind: 'next check',
    plant: plant.id,
    topic: `next check/${seeded.lockout?.cause ?? seeded.endsIn}`,
    skills: skillsOfCause(plant, seeded.fault),
    difficulty: difficultyOf(soFar, others, what),
    stem: {
      tells: arrivalTells(plant, seeded, soFar.chart, soFar.standing),
      asks: {
        code: soFar.standing.length <= LISTED ? 'quiz.next.asks-listed' : 'quiz.next.asks',
      },
      readings: soFar.readings,
      shows: { chart: soFar.chart, trends: [] },
    },
    run: seeded.run,
    caution: cautionOfCheck([key, ...others].map(({ check }) => check)),
    answer: 'choice',
    options,
    key: place,
  };
}

/** Own training values: more causes, more to combine, and others that look as good, are harder. */
function difficultyOf(
  { standing, readings, chart }: SoFar,
  others: readonly IdleCheck[],
  what: string,
): number {
  const alike = others.filter(({ check }) => partsOfCheck(check).what === what).length;
  const tempting = others.reduce((sum, { bitsBefore }) => sum + Math.min(1, bitsBefore), 0);
  const unlisted = standing.length > LISTED ? 0.6 : 0;
  const all =
    -1.6 +
    0.3 * (standing.length - 2) +
    0.2 * readings.length +
    (chart ? 0.3 : 0) +
    0.3 * alike +
    0.4 * tempting +
    unlisted;
  return Math.round(100 * Math.max(-2.5, Math.min(2, all))) / 100 || 0;
}

function no(why: Rejection): Made {
  return { ok: false, why };
}
