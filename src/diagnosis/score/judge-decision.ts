/** One decision against the best that could have been done then. */
import { partsOfCheck } from '../observe/reading.ts';
import { REDUNDANT_BITS } from '../reasoning/gain.ts';
import { adviceOf, bestAdvice } from './advice.ts';
import type { Case } from './case.ts';
import { costOfWork } from './cost-of-work.ts';
import type { Decision } from './decision.ts';
import { judgeClaim } from './judge-claim.ts';
import { judgeLooking } from './judge-looking.ts';
import { BY_HAND } from './parts-of-cause.ts';
import type { Advice, JudgedDecision } from './reasoning.ts';
import { costToKnow, regretOfWork } from './regret.ts';
import { likeliestParts } from './shares-of-parts.ts';
import { signsTold } from './signs-told.ts';
import { refutedBy } from './suspects-board.ts';
import type { Step } from './way-so-far.ts';
import { GUESS_SHARE, shareByReadings, viewOfPart } from './way-so-far.ts';

/** What is said of every decision alike; the rest is of its kind. */
export type Judgement = Pick<
  JudgedDecision,
  | 'what'
  | 'way'
  | 'bits'
  | 'minutes'
  | 'regretMinutes'
  | 'redundant'
  | 'premature'
  | 'share'
  | 'refutedBy'
>;

const NOUGHT: Judgement = {
  what: '',
  way: '',
  bits: null,
  minutes: 0,
  regretMinutes: 0,
  redundant: false,
  premature: false,
  share: null,
  refutedBy: [],
};
const ASK_MINUTES = 2;
const MOST_LIKELIEST = 3;
/** A better check is named where this one cost so much more, minutes. */
const WORTH_NAMING = 0.5;

/** @param steps all of them; the decision is the one at `place` */
export function judgeDecision(
  theCase: Case,
  steps: readonly Step[],
  place: number,
): JudgedDecision {
  const step = steps[place] as Step;
  const { decision, before, after } = step;
  const judgement = judgementOf(theCase, steps, place, step);
  return {
    ...judgement,
    t: decision.t,
    kind: decision.kind,
    moments: momentsOf(decision),
    told: 'seen' in decision ? signsTold(before, after.knowing.added) : [],
    before: likeliestParts(before.tables, before.ofCause, MOST_LIKELIEST),
    after: likeliestParts(after.tables, after.ofCause, MOST_LIKELIEST),
    best: betterThan(step, judgement),
  };
}

function judgementOf(
  theCase: Case,
  steps: readonly Step[],
  place: number,
  { decision, before }: Step,
): Judgement {
  const earlier = steps.slice(0, place);
  switch (decision.kind) {
    case 'check':
    case 'watch':
      return { ...NOUGHT, ...judgeLooking(steps, place, decision) };
    case 'ask': {
      const again = earlier.some(
        (one) => one.decision.kind === 'ask' && one.decision.topic === decision.topic,
      );
      const minutes = again ? 0 : ASK_MINUTES;
      return { ...NOUGHT, what: decision.topic, minutes, redundant: again };
    }
    case 'work': {
      const { part, way } = decision;
      const share = shareByReadings(earlier, before, part);
      const { minutes, cost } = costOfWork(theCase, part, way);
      const isNoGuess = isFuseThatBlew(before, part) || isPutRight(before, part, way);
      if (isNoGuess) return { ...NOUGHT, what: part, way, minutes, share };
      return {
        ...NOUGHT,
        what: part,
        way,
        minutes,
        share,
        regretMinutes: regretOfWork(cost, share),
        premature: share < GUESS_SHARE,
        refutedBy: refutedBy(viewOfPart(earlier, before, part), part),
      };
    }
    case 'suspect': {
      const [first] = decision.ranked;
      if (first === undefined) return NOUGHT;
      const view = viewOfPart(earlier, before, first);
      return {
        ...NOUGHT,
        what: first,
        share: shareByReadings(earlier, before, first),
        refutedBy: refutedBy(view, first),
      };
    }
    case 'claim': {
      const { part, share, supported } = judgeClaim(earlier, before, decision);
      const view = viewOfPart(earlier, before, part);
      return {
        ...NOUGHT,
        what: part,
        share,
        premature: !supported,
        regretMinutes: supported ? 0 : costToKnow(view),
        refutedBy: refutedBy(view, part),
      };
    }
    default:
      return NOUGHT;
  }
}

/** A fuse that was seen to be blown is replaced whatever blew it. */
function isFuseThatBlew({ knowing }: Step['before'], part: string): boolean {
  if (!part.endsWith(' fuse')) return false;
  return [...knowing.known.values(), ...knowing.earlier].some(
    ({ check, signs }) => partsOfCheck(check).place === 'fuses' && signs.includes(true),
  );
}

/** What anybody can see to be left wrong is put right whatever the cause. */
function isPutRight({ tables }: Step['before'], part: string, way: string): boolean {
  return way === BY_HAND && tables.parts.causesOf(part).length === 0;
}

function momentsOf(decision: Decision): readonly string[] {
  return 'seen' in decision ? [...new Set(decision.seen.map(({ moment }) => moment))] : [];
}

function betterThan({ decision, before }: Step, judged: Judgement): Advice | null {
  if (judged.regretMinutes < WORTH_NAMING) return null;
  const best = bestAdvice(before);
  if (best === null || best.bits < REDUNDANT_BITS) return null;
  if (decision.kind === 'check' && best.ask.question.check === decision.check) return null;
  return adviceOf(before, best);
}
