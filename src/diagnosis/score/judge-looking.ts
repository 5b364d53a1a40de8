/** A check or a watched start: what it was worth when it was decided, and what it cost. */
import { NO_FAULT } from '../../../machines/job/index.ts';
import { ISOLATED, STANDING } from '../observe/moment.ts';
import { partsOfCheck } from '../observe/reading.ts';
import { REDUNDANT_BITS } from '../reasoning/gain.ts';
import type { Decision } from './decision.ts';
import { judgeClaim } from './judge-claim.ts';
import { type Asked, askedBy } from './keys-of-decision.ts';
import { isStepOfStart } from './questions-of-starts.ts';
import { priceOfBit } from './ranking.ts';
import type { JudgedDecision } from './reasoning.ts';
import { regretOfLooking } from './regret.ts';
import { shareOfPart } from './shares-of-parts.ts';
import type { View } from './view-of-knowing.ts';
import type { Step } from './way-so-far.ts';
import { costOfLooking, minutesOfLooking, worthBits } from './worth-of-looking.ts';

export type Looking = Extract<Decision, { readonly kind: 'check' | 'watch' }>;
type Judged = Pick<JudgedDecision, 'what' | 'bits' | 'minutes' | 'regretMinutes' | 'redundant'>;

/** After work, whoever thinks it is mended has to prove it; that is no search any more. */
const PROVING_SHARE = 0.5;
const PAPERS: ReadonlySet<string> = new Set(['history', 'commissioning sheet', 'read sheet']);

export function judgeLooking(steps: readonly Step[], place: number, decision: Looking): Judged {
  const { before } = steps[place] as Step;
  const asked = askedBy(before.tables, decision);
  const watch = decision.kind === 'check' ? watchOver(steps, place, asked) : null;
  const isThere = asked.moments.every(
    (one) => one === STANDING || one === standingAt(steps, place),
  );
  const waits = watch === null && !isThere;
  const what = decision.kind === 'check' ? decision.check : '';
  const minutes = minutesOfLooking(before.tables, asked, waits);
  if (isOutsideAtlas(before, asked)) {
    const again = wasDoneBefore(steps, place, decision);
    return { what, bits: null, minutes, regretMinutes: again ? minutes : 0, redundant: again };
  }
  const bits = bitsOfLooking(before, asked);
  const first = !wasDoneBefore(steps, place, decision);
  const isProof = isProving(before) || (decision.kind === 'watch' && isClaimed(steps, place));
  if (isProof || (first && isAlwaysRight(asked))) {
    return { what, bits, minutes, regretMinutes: 0, redundant: false };
  }
  const cost = costOfLooking(before.tables, asked, waits);
  const hung = decision.kind === 'watch' ? hungOn(steps, place) : [];
  if (hung.length > 0)
    return { what, minutes, ...judgeTogether(steps, place, asked, hung, cost, bits) };
  return {
    what,
    bits,
    minutes,
    regretMinutes: regretOfLooking(before, openKeys(before, asked), cost),
    redundant: bits < REDUNDANT_BITS,
  };
}

/** A start that tools hang on at is worth what they tell as well. */
function judgeTogether(
  steps: readonly Step[],
  place: number,
  asked: Asked,
  hung: readonly number[],
  cost: number,
  bits: number,
): Pick<Judged, 'bits' | 'regretMinutes' | 'redundant'> {
  const { before } = steps[Math.min(place, ...hung)] as Step;
  const keys = new Set(asked.keys);
  for (const i of hung) {
    const decision = steps[i]?.decision;
    if (decision?.kind !== 'check') continue;
    for (const key of askedBy(before.tables, decision).keys) keys.add(key);
  }
  const all = { ...asked, keys: [...keys].sort((a, b) => a - b) };
  const together = bitsOfLooking(before, all);
  const regretMinutes = Math.max(0, cost - priceOfBit(before.ranked()) * together);
  return { bits, regretMinutes, redundant: together < REDUNDANT_BITS };
}

function bitsOfLooking(view: View, asked: Asked): number {
  return worthBits(view.tables, view, openKeys(view, asked).keys);
}

/** What is known already is not asked again. */
function openKeys({ knowing }: View, asked: Asked): Asked {
  const seen = new Set<number>();
  for (const { observations } of knowing.known.values()) {
    for (const { key } of observations) seen.add(key);
  }
  return { ...asked, keys: asked.keys.filter((key) => !seen.has(key)) };
}

/** Papers and tests whose worth no atlas has. */
function isOutsideAtlas({ tables }: View, { check, keys }: Asked): boolean {
  return keys.length === 0 && !tables.known.has(partsOfCheck(check).what);
}

function isProving({ knowing, tables, ofCause }: View): boolean {
  return knowing.works > 0 && shareOfPart(tables, ofCause, NO_FAULT) >= PROVING_SHARE;
}

/** A start after a claim that holds is to show what came of it, were it only a cock that was opened. */
function isClaimed(steps: readonly Step[], place: number): boolean {
  for (let i = place - 1; i >= 0; i--) {
    const step = steps[i];
    if (step === undefined || step.decision.kind === 'withdraw') return false;
    if (step.decision.kind !== 'claim') continue;
    return judgeClaim(steps.slice(0, i), step.before, step.decision).supported;
  }
  return false;
}

/** What care asks for whatever is likely: a nose at the door, proof that a circuit is dead; and papers. */
function isAlwaysRight({ check, moments }: Asked): boolean {
  const { what } = partsOfCheck(check);
  if (PAPERS.has(what) || what === 'smell') return true;
  return what === 'volts' && moments.length > 0 && moments.every((one) => one === ISOLATED);
}

/** The same look at the same moments, with no work between. */
function wasDoneBefore(steps: readonly Step[], place: number, decision: Looking): boolean {
  for (let i = place - 1; i >= 0; i--) {
    const before = steps[i]?.decision;
    if (before === undefined || before.kind === 'work') return false;
    if (before.kind === 'check' && decision.kind === 'check' && before.check === decision.check) {
      return true;
    }
  }
  return false;
}

/** The watched start during which a check was kept up; its waiting is charged to that. */
function watchOver(steps: readonly Step[], place: number, asked: Asked): number | null {
  const moments = asked.moments.filter(isStepOfStart);
  if (moments.length === 0) return null;
  const watch = nextWatch(steps, place);
  return watch !== null && sharesMoment(steps[watch], moments) ? watch : null;
}

/** Checks that were kept up during a watched start. */
function hungOn(steps: readonly Step[], place: number): readonly number[] {
  return steps.flatMap(({ decision, before }, i) => {
    if (decision.kind !== 'check') return [];
    return watchOver(steps, i, askedBy(before.tables, decision)) === place ? [i] : [];
  });
}

/** A start is told when it has come to its end. */
function nextWatch(steps: readonly Step[], place: number): number | null {
  for (let i = place + 1; i < steps.length; i++) {
    const kind = steps[i]?.decision.kind;
    if (kind === 'watch') return i;
    if (kind === 'work') return null;
  }
  return null;
}

/** Where the plant stood when the panel was last looked at. */
function standingAt(steps: readonly Step[], place: number): string | null {
  for (let i = place - 1; i >= 0; i--) {
    const decision = steps[i]?.decision;
    if (decision?.kind === 'work') return null;
    if (decision?.kind !== 'arrive' && decision?.kind !== 'watch') continue;
    const moments = decision.seen.map(({ moment }) => moment).filter((one) => one !== STANDING);
    const last = moments.at(-1);
    if (last !== undefined) return last;
  }
  return null;
}

function sharesMoment(step: Step | undefined, moments: readonly string[]): boolean {
  if (step?.decision.kind !== 'watch') return false;
  return step.decision.seen.some(({ moment }) => moments.includes(moment));
}
