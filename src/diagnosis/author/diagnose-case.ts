/** What an author wants to know of a case: can it be told, by what way, how hard is it. */
import type { Atlas, AtlasKey } from '../atlas/atlas.ts';
import { NOT_REACHED } from '../atlas/band.ts';
import { binsOf } from '../atlas/observations.ts';
import { questionCost, questionMinutes, toolFor } from '../atlas/question-cost.ts';
import type { Sample } from '../atlas/take-sample.ts';
import { withPlant } from '../atlas/with-plant.ts';
import { STANDING } from '../observe/moment.ts';
import { checkName } from '../observe/reading.ts';
import { ambiguityGroups } from '../reasoning/ambiguity.ts';
import {
  afterSeeing,
  type Belief,
  causeShares,
  priorBelief,
  sharesOf,
} from '../reasoning/belief.ts';
import { REDUNDANT_BITS } from '../reasoning/gain.ts';
import { solveCase } from '../reasoning/optimum.ts';
import type { Observation } from '../reasoning/particles.ts';
import { type Question, questionsOf } from '../reasoning/questions.ts';
import { type RankedCheck, rankChecks } from '../reasoning/rank-checks.ts';
import { smallCaseOf } from '../reasoning/small-case.ts';

export interface CaseAsked {
  readonly atlas: Atlas;
  /** Everything that the plant of the case reads. */
  readonly truth: Sample;
  /** Faults that are its cause; none: nothing is wrong with the plant. */
  readonly own: readonly string[];
  /** What may be taken along. */
  readonly tools: readonly string[] | 'all';
}

export interface PathStep {
  readonly check: string;
  readonly moment: string;
  readonly minutes: number;
  /** Expected gain before it was made, bits. */
  readonly bits: number;
  /** What was not as on a sound plant, the first of it. */
  readonly told: readonly { readonly aspect: string; readonly word: string }[];
  /** Share of the cause afterwards, with those that cannot be told from it. */
  readonly share: number;
}

export interface CaseDiagnosed {
  /** Other causes that all permitted checks together leave standing; null: nothing wrong. */
  readonly inseparable: readonly (string | null)[];
  readonly path: readonly PathStep[];
  readonly minutes: number;
  /** Whether the path ends with the cause known. */
  readonly found: boolean;
  /** 1 easy to 5 hard; own scale. */
  readonly difficulty: number;
  /** Without what is not permitted the rest stays; this would tell it for the least cost. */
  readonly wouldSeparate: { readonly check: string; readonly moment: string } | null;
}

/** Known well enough to act on. */
const KNOWN_SHARE = 0.9;
/** What stays likelier than this after everything has not been told apart. */
const STANDS_SHARE = 0.05;
const MOST_STEPS = 20;
const MOST_TOLD = 4;

/**
 * The way of an expected-cost optimum where the case is small enough, greedy before that, from what the
 * panel tells on arrival. The plant of the case itself is one of those that it may be.
 */
export function diagnoseCase(asked: CaseAsked): CaseDiagnosed {
  const { truth, own, tools } = asked;
  const atlas = withPlant(asked.atlas, own[0] ?? null, truth);
  const bins = binsOf(atlas, truth);
  const questions = questionsOf(atlas);
  const isPermitted = ({ check }: Pick<Question, 'check'>) => {
    const tool = toolFor(check);
    return tool === null || tools === 'all' || tools.includes(tool);
  };
  const isReached = (key: number) => atlas.keys[key]?.bins[bins[key] as number] !== NOT_REACHED;
  const permitted = questions.filter((one) => isPermitted(one) && one.keys.some(isReached));
  const seenIn = ({ keys }: Question): readonly Observation[] =>
    keys.filter(isReached).map((key) => ({ key, bin: bins[key] as number }));
  const costOf = (question: Question) => questionCost(atlas, question);
  const onThePanel = questions.filter(isOnThePanel);
  const arrived = afterSeeing(priorBelief(atlas), atlas, onThePanel.flatMap(seenIn));

  const isOwn = atlas.causes.map(({ fault }) =>
    fault === null ? own.length === 0 : own.includes(fault),
  );
  const knowing = afterSeeing(arrived, atlas, permitted.flatMap(seenIn));
  const left = causeShares(atlas, sharesOf(knowing));
  const alike = ambiguityGroups(atlas, (key) => isPermitted(atlas.keys[key] as AtlasKey));
  const groups = alike.filter((group) => group.some((c) => isOwn[c]));
  const rest = atlas.causes.flatMap((_, c) => {
    const stands = (left[c] as number) >= STANDS_SHARE || groups.some((all) => all.includes(c));
    return !isOwn[c] && stands ? [c] : [];
  });
  const shareOf = (belief: Belief) => {
    const shares = causeShares(atlas, sharesOf(belief));
    return shares.reduce((sum, share, c) => (isOwn[c] || rest.includes(c) ? sum + share : sum), 0);
  };

  const path: PathStep[] = [];
  let belief = arrived;
  let open = permitted.filter((question) => !onThePanel.includes(question));
  while (path.length < MOST_STEPS && shareOf(belief) < KNOWN_SHARE) {
    const next = nextCheck(atlas, belief, open, costOf);
    if (next === null) break;
    const { question, bits } = next;
    belief = afterSeeing(belief, atlas, seenIn(question));
    open = open.filter((one) => one !== question);
    path.push({
      check: question.check,
      moment: question.moment,
      minutes: questionMinutes(atlas, question),
      bits,
      told: toldBy(asked.atlas, question.keys, bins),
      share: shareOf(belief),
    });
  }
  const minutes = path.reduce((sum, step) => sum + step.minutes, 0);
  return {
    inseparable: rest.map((c) => atlas.causes[c]?.fault ?? null),
    path,
    minutes,
    found: shareOf(belief) >= KNOWN_SHARE,
    difficulty: difficultyOf(path.length, minutes, rest.length),
    wouldSeparate: separator(
      atlas,
      questions.filter((question) => !isPermitted(question)),
      (cause) => isOwn[cause] === true,
      rest,
    ),
  };
}

/** What is known on arrival: what the panel keeps of a lockout, and in which step the start ended. */
function isOnThePanel({ check, moment }: Question): boolean {
  return (
    check === checkName('history') ||
    (check === checkName('watch one start') && moment === STANDING)
  );
}

function nextCheck(
  atlas: Atlas,
  belief: Belief,
  open: readonly Question[],
  costOf: (question: Question) => number,
): RankedCheck | null {
  const ranked = rankChecks(atlas, belief, open, costOf);
  const greedy = ranked[0];
  if (greedy === undefined || greedy.bits < REDUNDANT_BITS) return null;
  const small = smallCaseOf(atlas, belief, open, costOf);
  const optimum = small === null ? null : solveCase(small);
  const best = optimum?.best([...(small?.weights.keys() ?? [])]) ?? null;
  const question = best === null ? undefined : open[small?.questions[best]?.place ?? -1];
  return ranked.find((one) => one.question === question) ?? greedy;
}

/** What of an answer is not as it would be on a sound plant. */
function toldBy({ keys }: Atlas, places: readonly number[], bins: Int16Array): PathStep['told'] {
  const told = places.flatMap((place) => {
    const { aspect, bins: names, column } = keys[place] as Atlas['keys'][number];
    const bin = bins[place] as number;
    const word = names[bin] ?? '';
    // The first particle is the plant itself, with nothing wrong.
    return bin === column[0] || word === 'in band' ? [] : [{ aspect, word }];
  });
  return told.slice(0, MOST_TOLD);
}

/** More to combine, more time, more that stays doubtful. */
function difficultyOf(checks: number, minutes: number, rest: number): number {
  const score = 1 + 0.5 * Math.max(0, checks - 1) + minutes / 20 + (rest > 0 ? 1 : 0);
  return Math.max(1, Math.min(5, Math.round(score)));
}

/** The cheapest question on which no plant of the rest answers as one of the cause does. */
function separator(
  atlas: Atlas,
  questions: readonly Question[],
  isOwn: (cause: number) => boolean,
  rest: readonly number[],
): { check: string; moment: string } | null {
  if (rest.length === 0) return null;
  const separating = questions.filter(({ column }) => {
    const ownAnswers = new Set<number>();
    const others = new Set<number>();
    atlas.causeOf.forEach((cause, p) => {
      if (isOwn(cause)) ownAnswers.add(column[p] as number);
      else if (rest.includes(cause)) others.add(column[p] as number);
    });
    return ownAnswers.size > 0 && [...ownAnswers].every((answer) => !others.has(answer));
  });
  const [cheapest] = separating.sort((a, b) => questionCost(atlas, a) - questionCost(atlas, b));
  return cheapest === undefined ? null : { check: cheapest.check, moment: cheapest.moment };
}
