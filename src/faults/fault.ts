import type { Unit } from '../quantity/index.ts';
import type { FaultSubject } from './subject.ts';

export const FAULT_FAMILIES = [
  'fuel train',
  'air path',
  'ignition',
  'flame sensing',
  'burner and combustion',
  'vessel and limits',
  'supply and wiring',
  'people',
] as const;
export type FaultFamily = (typeof FAULT_FAMILIES)[number];

export const ONSET_KINDS = ['start', 'time', 'step', 'intermittent'] as const;
export type OnsetKind = (typeof ONSET_KINDS)[number];

/**
 * How far from sound: 0 is sound, larger is worse, in the fault's own unit.
 * `low` and `high` bound what is worth teaching; `typical` is what a fresh case gets.
 */
export interface SeverityRange {
  readonly unit: Unit;
  readonly means: string;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/**
 * A fault: one mechanism, told as a change of one component's parameters.
 *
 * Nothing here says what symptom follows; the plant does. `apply` gets a working copy of
 * the sound parameters, may only move them away from sound in proportion to `severity`,
 * and at severity 0 must change nothing.
 */
export interface Fault {
  /** Plain words; the name in files, logs and lists. */
  readonly id: string;
  readonly family: FaultFamily;
  readonly component: string;
  readonly mechanism: string;
  readonly severity: SeverityRange;
  readonly onsets: readonly OnsetKind[];
  /** What a technician does about it. */
  readonly repair: string;
  /** Share of field failures, relative to the other faults; own training value. */
  readonly priorWeight: number;
  /** An act of the operator that puts it right by itself. */
  readonly undoneBy?: 'turn-cock';
  appliesTo(subject: FaultSubject): boolean;
  apply(subject: FaultSubject, severity: number): void;
}

/** For things that are sound or not: any severity of one half or more counts as not. */
export const BROKEN: SeverityRange = {
  unit: '1',
  means: '1 broken, 0 sound',
  low: 1,
  typical: 1,
  high: 1,
};
export function isBroken(severity: number): boolean {
  return severity >= 0.5;
}

export const NOT_INTERMITTENT: readonly OnsetKind[] = ['start', 'time', 'step'];
export const ANY_ONSET: readonly OnsetKind[] = [...NOT_INTERMITTENT, 'intermittent'];

export function share(means: string, low: number, typical: number, high: number): SeverityRange {
  return { unit: '1', means, low, typical, high };
}
