import type { RepairWay } from '../../faults/index.ts';
import type { Reading } from '../observe/reading.ts';

/** What was read at one moment of the start. */
export interface Seen {
  readonly moment: string;
  readonly readings: readonly Reading[];
}

/** Something a learner did that bears on finding out. Plain data; from a real run or from a simulated learner. */
export type DecisionAct =
  /** What the panel shows whoever comes: nothing was decided yet. */
  | { readonly kind: 'arrive'; readonly seen: readonly Seen[] }
  /** A tool, eyes, ears, nose or paper; a tool that stays connected is one decision with all it told. */
  | {
      readonly kind: 'check';
      /** As `checkName` makes it. */
      readonly check: string;
      readonly seen: readonly Seen[];
    }
  /** Steps of a start passed, and the panel was there to be looked at. */
  | { readonly kind: 'watch'; readonly seen: readonly Seen[] }
  | { readonly kind: 'ask'; readonly topic: string }
  /** A part was worked on; `adjust` is a dial. */
  | { readonly kind: 'work'; readonly part: string; readonly way: RepairWay | 'adjust' }
  /** Parts, the likeliest first. */
  | { readonly kind: 'suspect'; readonly ranked: readonly string[] }
  | {
      readonly kind: 'claim';
      /** A part, or `nothing`. */
      readonly part: string;
      /** What the pinned readings were that are given for it; a check and the moment it was read at. */
      readonly why: readonly { readonly check: string; readonly moment: string }[];
    }
  | { readonly kind: 'withdraw' };

/** With its time, simulated s; in the order of time. */
export type Decision = { readonly t: number } & DecisionAct;
