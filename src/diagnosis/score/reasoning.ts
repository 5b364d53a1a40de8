/** What can be said of how someone went about finding a cause. Plain data: it crosses to the page. */
import type { ReadingValue } from '../observe/reading.ts';
import type { DecisionAct } from './decision.ts';

/** A part by which causes are named, or `nothing`, with its share of what it may be. */
export interface PartShare {
  readonly part: string;
  /** 0 to 1. */
  readonly share: number;
}

/** One thing that a reading told, and the bin it fell into. */
export interface Told {
  readonly check: string;
  readonly moment: string;
  readonly aspect: string;
  readonly value: ReadingValue;
  /** Name of the bin: `low`, `in band`, `high`, or the word itself. */
  readonly word: string;
}

/** A check that could be made, and what it would be good for. */
export interface Advice {
  readonly check: string;
  readonly moment: string;
  /** Expected gain, bits. */
  readonly bits: number;
  /** Minutes without surcharges. */
  readonly minutes: number;
  /** What the likeliest parts would let it read, where they differ: the `why` of a hint. */
  readonly splits: readonly {
    readonly part: string;
    readonly aspect: string;
    readonly word: string;
  }[];
}

export interface JudgedDecision {
  readonly t: number;
  readonly kind: DecisionAct['kind'];
  /** Check, topic, or part: whatever it was about; empty for arrive and watch. */
  readonly what: string;
  /** Way of a work; empty otherwise. */
  readonly way: string;
  /** Moments at which something was read. */
  readonly moments: readonly string[];
  /** Expected gain when it was decided; null where it is no question. */
  readonly bits: number | null;
  /** Minutes by tariff, waiting included. */
  readonly minutes: number;
  /** What it cost beside the best that could have been done then, minutes; free of luck. */
  readonly regretMinutes: number;
  /** Worth less than `REDUNDANT_BITS`. */
  readonly redundant: boolean;
  /** Work on a part, or a claim, before readings spoke for it. */
  readonly premature: boolean;
  /** Share of the part worked on, suspected first or claimed, just before; null for the rest. */
  readonly share: number | null;
  /** Readings that had ruled the part out by then. */
  readonly refutedBy: readonly Told[];
  /** What was not as on a sound plant. */
  readonly told: readonly Told[];
  /** What it might have been just before and just after, the likeliest three. */
  readonly before: readonly PartShare[];
  readonly after: readonly PartShare[];
  /** The best check then, where another one than this was better. */
  readonly best: Advice | null;
}

/** One suspect with what speaks for and against it. */
export interface BoardLine extends PartShare {
  readonly speaksFor: readonly Told[];
  readonly speaksAgainst: readonly Told[];
  /** Readings leave nothing of it, as `refutedBy` has it. */
  readonly ruledOut?: boolean | undefined;
}

export interface JudgedClaim {
  readonly part: string;
  readonly t: number;
  /** Share when it was made, with that of causes that cannot be told from it. */
  readonly share: number;
  /** Readings had made it the likeliest by far. */
  readonly supported: boolean;
  /** Of the pins given for it: how many speak for it, against it, or tell nothing of it. */
  readonly pins: {
    readonly speakingFor: number;
    readonly against: number;
    readonly neutral: number;
  };
}

/** How the cause was come by. */
export const FOUND_WAYS = ['by readings', 'by trying parts', 'not found'] as const;
export type FoundWay = (typeof FOUND_WAYS)[number];

export interface Reasoning {
  readonly decisions: readonly JudgedDecision[];
  readonly found: FoundWay;
  readonly path: {
    /** V* / (V* + ΣΔQ), 0 to 1. */
    readonly score: number;
    /** V*: what the best way takes, minutes with surcharges. */
    readonly bestMinutes: number;
    readonly regretMinutes: number;
    readonly redundant: number;
    readonly premature: number;
  };
  readonly claims: readonly JudgedClaim[];
  /** Each ranking of suspects against what readings had shown by then: Brier-like, 0 good to 1 bad; null where none was made. */
  readonly calibration: {
    readonly rankings: number;
    /** Mean share of what readings left, that the first-ranked had. */
    readonly firstShare: number;
    /** Mean distance of the ranking from that of the readings, 0 same order to 1 reversed. */
    readonly distance: number;
  } | null;
  /** What it may be after all that was read, the likeliest first. */
  readonly board: readonly BoardLine[];
  /** What is best done next, the best first; at most five. */
  readonly next: readonly Advice[];
  /** Places in `decisions` of the three to five that are worth going back to, in the order of time. */
  readonly moments: readonly number[];
  /** The best way through this very plant, from arrival. */
  readonly ideal: readonly {
    readonly check: string;
    readonly moment: string;
    readonly minutes: number;
    readonly bits: number;
    readonly share: number;
    readonly told: readonly { readonly aspect: string; readonly word: string }[];
  }[];
  /** Other parts that no permitted check tells from the cause. */
  readonly alike: readonly string[];
}
