/** A simulated learner who has the stem, the atlas and nothing else: not the key, not what was wrong. */
import {
  afterSeeing,
  type Belief,
  binsOf,
  causeShares,
  gainBits,
  priorBelief,
  type Question,
  questionsOf,
  sampleStart,
  sharesOf,
  type Told,
  uncertaintyOf,
} from '../../src/diagnosis/index.ts';
import {
  type Item,
  type Option,
  type QuizPlant,
  setupOfRun,
  type Term,
} from '../../src/quiz/index.ts';
import { spotOf } from '../../src/quiz/kinds/where/spot-of.ts';
import { seenByStem } from './kinds/seen-by-stem.ts';

type Choice = Extract<Item, { readonly options: unknown }>;

/** What the reader would mark; null for a kind that is not answered by reading. */
export function readRightly(plant: QuizPlant, item: Choice): number | null {
  if (item.run === null) return null;
  // The record of the start is in the stem for all to see; its readings are not.
  const { sample } = sampleStart(setupOfRun(plant.plan, item.run), plant.plan);
  const seen = seenByStem(plant, item, binsOf(plant.atlas, sample));
  const belief = afterSeeing(priorBelief(plant.atlas), plant.atlas, seen);
  const best = (worth: (option: Option, place: number) => number) => {
    const worths = item.options.map(worth);
    return worths.indexOf(Math.max(...worths));
  };
  switch (item.kind) {
    case 'cause':
      return best(({ says }) => shareOf(plant, belief, (fault) => fault === faultIn(says.with)));
    case 'where': {
      const spots = item.options.map((option) => ('spot' in option ? option.spot : ''));
      return best((_, place) =>
        shareOf(plant, belief, (fault) => fault !== null && spotOf(plant, fault) === spots[place]),
      );
    }
    case 'next check': {
      const uncertainty = uncertaintyOf(plant.atlas, sharesOf(belief));
      return best(({ says }) => {
        const question = questionIn(plant, says.with);
        return question === null ? 0 : gainBits(uncertainty, question);
      });
    }
    case 'ruled out': {
      const named = Object.values(item.stem.asks.with ?? {});
      const fault =
        faultIn(item.stem.asks.with) ?? faultAmong(item.stem.tells.flatMap(terms)) ?? '';
      if (fault === '' && named.length === 0) return null;
      return best(({ decidedBy }) =>
        decidedBy === null
          ? 0
          : -shareOf(plant, afterTold(plant, belief, decidedBy), (one) => one === fault),
      );
    }
    default:
      return null;
  }
}

function terms(statement: { readonly with?: Readonly<Record<string, Term>> }): readonly Term[] {
  return Object.values(statement.with ?? {});
}

function faultIn(places: Readonly<Record<string, Term>> = {}): string | null {
  return faultAmong(Object.values(places));
}

function faultAmong(all: readonly Term[]): string | null {
  for (const term of all) {
    if (typeof term !== 'object') continue;
    if (term.is === 'cause') return term.fault;
    if (term.is === 'list') {
      const found = faultAmong(term.of);
      if (found !== null) return found;
    }
  }
  return null;
}

function shareOf(
  plant: QuizPlant,
  belief: Belief,
  isIt: (fault: string | null) => boolean,
): number {
  const shares = causeShares(plant.atlas, sharesOf(belief));
  return plant.atlas.causes.reduce(
    (sum, { fault }, c) => sum + (isIt(fault) ? (shares[c] ?? 0) : 0),
    0,
  );
}

function afterTold({ atlas }: QuizPlant, belief: Belief, told: Told): Belief {
  const key = atlas.keys.findIndex(
    ({ check, moment, aspect }) =>
      check === told.check && moment === told.moment && aspect === told.aspect,
  );
  const bin = atlas.keys[key]?.bins.indexOf(told.word) ?? -1;
  return afterSeeing(belief, atlas, [{ key, bin }]);
}

const questions = new WeakMap<QuizPlant, readonly Question[]>();

/** The check at its one moment, as the option says it. */
function questionIn(
  plant: QuizPlant,
  places: Readonly<Record<string, Term>> = {},
): Question | null {
  const known = questions.get(plant) ?? questionsOf(plant.atlas);
  questions.set(plant, known);
  for (const term of Object.values(places)) {
    if (typeof term !== 'object' || term.is !== 'check') continue;
    return (
      known.find(({ check, moment }) => check === term.check && moment === term.moment) ?? null
    );
  }
  return null;
}
