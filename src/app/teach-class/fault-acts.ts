/** A fault, put in as the instructor wants it: acts of the engine's tables. Pure. */
import type { Action } from '../../engine/index.ts';

export const FAULT_MANNERS = ['at once', 'growing', 'coming and going'] as const;
export type FaultManner = (typeof FAULT_MANNERS)[number];

export interface FaultWish {
  readonly fault: string;
  /** In the fault's own unit. */
  readonly severity: number;
  readonly manner: FaultManner;
  /** Of one that grows: until it is there, simulated seconds. */
  readonly overS: number;
  /** Of one that comes and goes: from one coming to the next on average, and how much of it. */
  readonly periodS: number;
  readonly duty: number;
}

export function faultAct({ fault, severity, manner, ...wish }: FaultWish): Action {
  switch (manner) {
    case 'at once':
      return { type: 'insert-fault', fault, severity };
    case 'growing':
      return { type: 'ramp-fault', fault, severity, overS: wish.overS };
    case 'coming and going':
      return {
        type: 'intermittent-fault',
        fault,
        severity,
        periodS: wish.periodS,
        duty: wish.duty,
      };
  }
}

interface Named {
  readonly id: string;
  readonly family: string;
  readonly component: string;
  readonly mechanism: string;
}

/** Those in which every word of the search occurs, whatever its case; none written: all. */
export function searchFaults<Fault extends Named>(
  faults: readonly Fault[],
  search: string,
  family: string,
): readonly Fault[] {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  return faults.filter((fault) => {
    if (family !== '' && fault.family !== family) return false;
    const text = `${fault.id} ${fault.family} ${fault.component} ${fault.mechanism}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
}

/** Faults that acts said in the class have put in and not taken out again, by where they went. */
export function standingByActs(acts: readonly { readonly type: string }[]): readonly string[] {
  const standing = new Set<string>();
  for (const act of acts) {
    if (!('fault' in act) || typeof act.fault !== 'string') continue;
    const isGone =
      act.type === 'clear-fault' ||
      (act.type === 'ramp-fault' && 'severity' in act && act.severity === 0);
    if (isGone) standing.delete(act.fault);
    else standing.add(act.fault);
  }
  return [...standing];
}
