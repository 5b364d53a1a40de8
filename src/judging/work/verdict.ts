import type { ConductFinding, MinutesUsed, Proof } from '../../bench/index.ts';
import type { RepairWay } from '../../engine/index.ts';

/** What the exercise brought to the plant. */
export interface BroughtFault {
  readonly id: string;
  readonly mechanism: string;
  readonly component: string;
  readonly repair: string;
  readonly severity: number;
}

/** A cause that was named, held against what was the matter. */
export interface ClaimVerdict {
  readonly part: string;
  readonly right: boolean;
  /** At least one pinned reading was given for it. */
  readonly supported: boolean;
  /** Right by another name than that of the part which is mended. */
  readonly another: boolean;
  /** The fault that it is right for; null where it is wrong, or right that there is none. */
  readonly fault: string | null;
}

/** Work on a part with which nothing was wrong. */
export interface NeedlessWork {
  readonly t: number;
  readonly part: string;
  readonly way: RepairWay;
  readonly minutes: number;
  readonly cost: number;
}

/** What comes of the work. Plain data: it crosses to the page. */
export interface Verdict {
  readonly conduct: readonly ConductFinding[];
  readonly minutes: MinutesUsed;
  readonly proof: Proof;
  /** In the order of the exercise; empty when nothing was wrong with the plant. */
  readonly truth: { readonly faults: readonly BroughtFault[] };
  /** Faults that still stand, or come back while the plant is left alone. */
  readonly standing: readonly string[];
  /** Whether the burner, left alone after the work, stayed out of lockout, for how long (s), and whether it was in service at all. */
  readonly held: {
    readonly held: boolean;
    readonly forS: number;
    readonly lockout: string | null;
    readonly ran: boolean;
  };
  /** In the order they were made; empty where no cause is to be named. */
  readonly claims: readonly ClaimVerdict[];
  /** Parts of causes that no claim named. */
  readonly missed: readonly string[];
  readonly needless: readonly NeedlessWork[];
}
