/** Check, claim, mend, prove: what all learners who read the plant have in common. */
import type { RandomState } from '../../numeric/index.ts';
import { causeShares, sharesOf } from '../reasoning/belief.ts';
import type { Case } from '../score/case.ts';
import type { Decision, DecisionAct } from '../score/decision.ts';
import { type Knowing, knowingAfter, knowingNothing } from '../score/follow-belief.ts';
import { viewOf } from '../score/view-of-knowing.ts';
import type { NextCheck } from './learner.ts';
import { endedBy, plantNow } from './plant-now.ts';
import { partsClaimed, workFor } from './work-on.ts';

/** One suspect stands out when its part has this share of all. */
const STANDS_OUT = 0.9;
const MOST_CLAIMS = 4;
/** What whoever does not know what a check is worth has for them before he has to decide. */
export const LIMIT_MINUTES = 90;
const MINUTE_S = 60;

interface Suspect {
  readonly cause: string | null;
  readonly part: string;
  /** Of all causes by which that part may be claimed. */
  readonly share: number;
}

/** @param limitMinutes after so long without a suspect that stands out the likeliest is taken */
export function checksFirst(
  nextFor: (chance: RandomState) => NextCheck,
  limitMinutes = Number.POSITIVE_INFINITY,
) {
  return (theCase: Case, chance: RandomState): readonly Decision[] => {
    const next = nextFor(chance);
    const decisions: Decision[] = [];
    let knowing = knowingNothing(theCase);
    let t = 0;
    const decide = (act: DecisionAct, minutes: number) => {
      const decision: Decision = { t, ...act };
      decisions.push(decision);
      knowing = knowingAfter(theCase, knowing, decision);
      t += Math.max(1, Math.round(minutes * MINUTE_S));
    };
    let mended: readonly string[] = [];
    for (let claims = 0; claims < MOST_CLAIMS; claims++) {
      const plant = plantNow(theCase, mended);
      if (claims === 0) decide({ kind: 'arrive', seen: plant.onArrival }, 0);
      let open = plant.asks.filter(
        (ask) => ask.permitted && !ask.onArrival && ask.moments.length > 0,
      );
      let minutes = 0;
      while (likeliest(theCase, knowing).share < STANDS_OUT && minutes < limitMinutes) {
        const ask = next(viewOf(theCase, knowing), open);
        if (ask === null) break;
        const { check } = ask.question;
        open = open.filter((one) => one !== ask);
        minutes += ask.minutes;
        decide({ kind: 'check', check, seen: plant.seenBy(ask) }, ask.minutes);
      }
      const { cause, part } = likeliest(theCase, knowing);
      // Nothing else is wrong with what was mended.
      if (cause === null && mended.length > 0) return decisions;
      decide({ kind: 'claim', part, why: [] }, 0);
      const work = cause === null ? null : workFor(theCase, cause);
      if (cause === null) return decisions;
      const ended =
        work === null ? theCase.own.filter((own) => own === cause) : endedBy(theCase, work);
      if (work !== null) decide({ kind: 'work', ...work }, 0);
      mended = [...mended, ...ended];
      const after = plantNow(theCase, mended);
      decide({ kind: 'watch', seen: after.watched }, 1);
      const now = likeliest(theCase, knowing);
      if (after.starts && now.cause === null && now.share >= STANDS_OUT) return decisions;
      if (ended.length === 0) decide({ kind: 'withdraw' }, 0);
    }
    return decisions;
  };
}

/** The cause to claim: the likeliest of the likeliest part. */
export function likeliest(theCase: Case, { belief }: Knowing): Suspect {
  const { atlas } = theCase;
  const parts = partsClaimed(theCase);
  const ofCause = causeShares(atlas, sharesOf(belief));
  const byPart = new Map<string, number>();
  parts.forEach((part, c) => {
    byPart.set(part, (byPart.get(part) ?? 0) + (ofCause[c] as number));
  });
  let best = 0;
  parts.forEach((part, c) => {
    const ahead =
      (byPart.get(part) as number) - (byPart.get(parts[best] as string) as number) ||
      (ofCause[c] as number) - (ofCause[best] as number);
    if (ahead > 0) best = c;
  });
  const part = parts[best] as string;
  return { cause: atlas.causes[best]?.fault ?? null, part, share: byPart.get(part) ?? 0 };
}
