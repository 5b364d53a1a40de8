import { NO_FAULT } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';
import type { ClaimVerdict, Verdict } from '../session/work-protocol.ts';

type Faults = Verdict['truth']['faults'];

/**
 * What is said of a claim. Being right without a reading is luck, and is told so: it is not praised.
 *
 * @param readings how many pinned readings were given for it
 */
export function claimWords(claim: ClaimVerdict, readings: number, faults: Faults): string[] {
  return [...caseWords(claim, faults), supportWords(claim, readings)];
}

/** The part of a cause that nobody named; null: that the plant was sound. */
export function missedWords(part: string | null): string {
  return part === null ? say('debrief.missed.sound') : say('debrief.missed', { part });
}

function caseWords({ part, right, another, fault }: ClaimVerdict, faults: Faults): string[] {
  if (!right) {
    if (faults.length === 0) return [say('debrief.claim.was-sound')];
    return [say(part === NO_FAULT ? 'debrief.claim.was-faulty' : 'debrief.claim.not-there')];
  }
  if (!another || fault === null) return [];
  const there = faults.find(({ id }) => id === fault);
  return [
    there === undefined
      ? say('debrief.claim.as-good', { fault })
      : say('debrief.claim.another', { component: there.component }),
  ];
}

function supportWords({ right, supported }: ClaimVerdict, readings: number): string {
  if (!supported) return say(right ? 'debrief.claim.luck' : 'debrief.claim.guess');
  if (!right) return say('debrief.claim.misread');
  return readings === 1
    ? say('debrief.claim.shown-one')
    : say('debrief.claim.shown', { count: readings });
}
