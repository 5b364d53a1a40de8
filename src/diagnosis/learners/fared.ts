/** How a simulated learner fared at a case, and how many of them did on the whole. */
import { createRandom } from '../../numeric/index.ts';
import type { Case } from '../score/case.ts';
import { outcomeOf } from '../score/outcome.ts';
import { reasonAbout } from '../score/reason-about.ts';
import type { FoundWay } from '../score/reasoning.ts';
import type { Learner } from './learner.ts';

export interface Fared {
  readonly found: FoundWay;
  /** 0 to 1. */
  readonly path: number;
  /** By tariff, waiting and work on parts included. */
  readonly minutes: number;
  readonly redundant: number;
  readonly premature: number;
  /** As the map of skills takes it, conduct aside; 0 to 1. */
  readonly outcome: number;
}

export interface FaredOnTheWhole extends Omit<Fared, 'found'> {
  /** How many cases, each seed its own. */
  readonly count: number;
  /** Shares of the count. */
  readonly found: Readonly<Record<FoundWay, number>>;
}

export function howFared(theCase: Case, learner: Learner, seed: number): Fared {
  const decisions = learner.goThrough(theCase, createRandom(seed, learner.name));
  const reasoning = reasonAbout(theCase, decisions);
  const { found, path } = reasoning;
  return {
    found,
    path: path.score,
    minutes: reasoning.decisions.reduce((sum, { minutes }) => sum + minutes, 0),
    redundant: path.redundant,
    premature: path.premature,
    outcome: outcomeOf(reasoning, false),
  };
}

/** Means; of those with several seeds at a case each counts alike. */
export function onTheWhole(all: readonly Fared[]): FaredOnTheWhole {
  const mean = (of: (one: Fared) => number) =>
    all.reduce((sum, one) => sum + of(one), 0) / all.length;
  const share = (way: FoundWay) => mean(({ found }) => (found === way ? 1 : 0));
  return {
    count: all.length,
    found: {
      'by readings': share('by readings'),
      'by trying parts': share('by trying parts'),
      'not found': share('not found'),
    },
    path: mean(({ path }) => path),
    minutes: mean(({ minutes }) => minutes),
    redundant: mean(({ redundant }) => redundant),
    premature: mean(({ premature }) => premature),
    outcome: mean(({ outcome }) => outcome),
  };
}
