/**
 * Which faults stand, and when each comes and goes.
 *
 * The sound parameters are kept aside; whenever the set of standing faults changes, the live
 * ones are rewritten from them and the standing faults applied in catalogue order.
 */
import type { StepName } from '../../machines/burner/index.ts';
import { applyFaults, type FaultSubject } from '../faults/index.ts';
import { createRandom, nextUniform, type RandomState } from '../numeric/index.ts';
import { restoreInPlace } from './live-parameters.ts';

export type FaultOnset =
  | { readonly kind: 'start' }
  | { readonly kind: 'time'; readonly atS: number }
  | { readonly kind: 'step'; readonly step: StepName }
  | {
      readonly kind: 'intermittent';
      readonly fromS: number;
      /** Mean time from one coming to the next, s. */
      readonly periodS: number;
      /** Share of the time that it stands, 0 to 1. */
      readonly duty: number;
    };

export interface FaultOrder {
  readonly fault: string;
  readonly severity: number;
  readonly onset: FaultOnset;
}

export interface StandingFault {
  readonly fault: string;
  readonly severity: number;
}

export interface StandingFaults {
  readonly sound: FaultSubject;
  readonly live: FaultSubject;
  readonly standing: StandingFault[];
}

export function createStandingFaults(sound: FaultSubject, live: FaultSubject): StandingFaults {
  return { sound, live, standing: [] };
}

/** Inserts, or changes the severity of one that stands. */
export function insertFault(faults: StandingFaults, fault: string, severity: number): void {
  const at = faults.standing.findIndex((one) => one.fault === fault);
  if (at >= 0) faults.standing.splice(at, 1);
  faults.standing.push({ fault, severity });
  rewriteLive(faults);
}

/** True when it stood. */
export function removeFault(faults: StandingFaults, fault: string): boolean {
  const at = faults.standing.findIndex((one) => one.fault === fault);
  if (at < 0) return false;
  faults.standing.splice(at, 1);
  rewriteLive(faults);
  return true;
}

export function rewriteLive(faults: StandingFaults): void {
  restoreInPlace(faults.live, faults.sound);
  applyFaults(faults.live, faults.standing);
}

/** Onto a copy of one's own: those that stand and are wanted. */
export function applyStanding(
  onto: FaultSubject,
  standing: readonly StandingFault[],
  wanted: (fault: string) => boolean,
): void {
  applyFaults(
    onto,
    standing.filter(({ fault }) => wanted(fault)),
  );
}

/** The chance of one intermittent fault: its own stream, so that no other fault moves it. */
export function intermittentChance(seed: number, order: FaultOrder, place: number): RandomState {
  return createRandom(seed, `fault.${place}.${order.fault}`);
}

/** How long the fault now stands or stays away, ms: half to one and a half of its mean. */
export function nextSpellMs(
  random: RandomState,
  onset: Extract<FaultOnset, { kind: 'intermittent' }>,
  standing: boolean,
): number {
  const meanS = onset.periodS * (standing ? onset.duty : 1 - onset.duty);
  const spellMs = Math.round(meanS * (0.5 + nextUniform(random)) * 100) * 10;
  return Math.max(spellMs, 10);
}
