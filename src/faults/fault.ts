import type { Unit } from '../quantity/index.ts';
import type { Remedy } from './remedy.ts';
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
  /** The acts that end it, each by itself; at least one. */
  readonly remedies: readonly Remedy[];
  /** Share of field failures, relative to the other faults; own training value. */
  readonly priorWeight: number;
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
function isBroken(severity: number): boolean {
  return severity >= 0.5;
}

export const NOT_INTERMITTENT: readonly OnsetKind[] = ['start', 'time', 'step'];
export const ANY_ONSET: readonly OnsetKind[] = [...NOT_INTERMITTENT, 'intermittent'];

export function share(means: string, low: number, typical: number, high: number): SeverityRange {
  return { unit: '1', means, low, typical, high };
}

/** All of a fault but where it applies and what it changes. */
export type FaultWords = Omit<Fault, 'appliesTo' | 'apply'>;

/**
 * A fault of one part: it applies where the plant has the part, and changes that part alone.
 * Of one that is broken or sound, `change` is called only when it is broken.
 */
export function faultOf<T>(
  find: (subject: FaultSubject) => T | undefined,
  words: FaultWords,
  change: (part: T, severity: number) => void,
): Fault {
  return {
    ...words,
    appliesTo: (subject) => find(subject) !== undefined,
    apply: (subject, severity) => {
      const part = find(subject);
      if (part === undefined || (words.severity === BROKEN && !isBroken(severity))) return;
      change(part, severity);
    },
  };
}
