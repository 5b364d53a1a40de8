/** What may be known at one point of the way, with all that is worked out from it when it is asked for. */
import { causeShares } from '../reasoning/belief.ts';
import type { Case } from './case.ts';
import { type CaseTables, tablesOf } from './case-tables.ts';
import type { Evidence } from './evidence.ts';
import { evidenceOf, type Knowing } from './follow-belief.ts';
import { once } from './once.ts';
import { type RankedAsk, rankAsks } from './ranking.ts';
import { type Outlook, outlookOn } from './shares-of-parts.ts';
import { type ThoughtThrough, thinkThrough } from './think-through.ts';

export interface View extends Outlook {
  readonly tables: CaseTables;
  readonly knowing: Knowing;
  readonly evidence: () => readonly Evidence[];
  readonly ranked: () => readonly RankedAsk[];
  /** Null where too much is open. */
  readonly thought: () => ThoughtThrough | null;
  /** Of each cause, its weight without one reading. */
  readonly sumsWithout: (evidence: Evidence) => Float64Array;
}

export function viewOf(theCase: Case, knowing: Knowing): View {
  const tables = tablesOf(theCase);
  const outlook = outlookOn(tables, knowing.belief);
  const evidence = once(() => evidenceOf(knowing));
  const ranked = once(() => rankAsks(tables, outlook, knowing));
  const sums = new Map<Evidence, Float64Array>();
  return {
    ...outlook,
    tables,
    knowing,
    evidence,
    ranked,
    thought: once(() => thinkThrough(tables, outlook, ranked(), null)),
    sumsWithout: (one) => {
      const known = sums.get(one);
      if (known !== undefined) return known;
      const powers = one.expDelta();
      const without = outlook.shares.map((share, p) => share / (powers[p] as number));
      const made = causeShares(tables.atlas, without);
      sums.set(one, made);
      return made;
    },
  };
}
