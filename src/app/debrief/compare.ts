import type { JudgedDecision, Reasoning } from '../../diagnosis/index.ts';
import type { Verdict } from '../session/work-protocol.ts';

/** One way of doing a job, as it was judged. */
export interface Way {
  readonly verdict: Pick<Verdict, 'minutes' | 'conduct' | 'claims'>;
  readonly reasoning: Reasoning | null;
  /** When the last cause was named that stands, s; null where none does. */
  readonly claimedAtS: number | null;
}

export interface WayInFigures {
  /** To the last cause named; null where none was. */
  readonly minutesToClaim: number | null;
  readonly minutes: number;
  readonly unsafe: number;
  readonly claims: readonly { readonly part: string; readonly right: boolean }[];
  /** Null where decisions are not weighed. */
  readonly reasoned: {
    readonly regretMinutes: number;
    readonly found: Reasoning['found'];
    readonly redundant: number;
    readonly premature: number;
  } | null;
}

/** What of a way can be laid beside another. */
export function figuresOf({ verdict, reasoning, claimedAtS }: Way): WayInFigures {
  const { minutes, conduct, claims } = verdict;
  return {
    minutesToClaim: claimedAtS === null ? null : minutesUntil(minutes, claimedAtS),
    minutes: minutes.total,
    unsafe: conduct.filter(({ severity }) => severity === 'unsafe').length,
    claims: claims.map(({ part, right }) => ({ part, right })),
    reasoned:
      reasoning === null
        ? null
        : {
            regretMinutes: reasoning.path.regretMinutes,
            found: reasoning.found,
            redundant: reasoning.path.redundant,
            premature: reasoning.path.premature,
          },
  };
}

/** When the last of the causes that stand was named, s. */
export function lastClaimS(claims: readonly { readonly t: number }[]): number | null {
  return claims.at(-1)?.t ?? null;
}

/** What was decided from the moment on where the two part. */
export function decisionsSince(reasoning: Reasoning, t: number): readonly JudgedDecision[] {
  return reasoning.decisions.filter((one) => one.t >= t && one.kind !== 'arrive');
}

const PLANT_TIME = 'conduct.minutes.plant';

/** The plant's own time up to then, and what was charged before it. */
function minutesUntil({ lines }: Verdict['minutes'], tS: number): number {
  return lines
    .filter(({ t }) => t <= tS)
    .reduce(
      (sum, { t, what, minutes }) => sum + (what.code === PLANT_TIME ? (tS - t) / 60 : minutes),
      0,
    );
}
