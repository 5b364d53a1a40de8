/** What may be known after each decision: the belief of one who forgets nothing and infers rightly. */
import { type Belief, priorBelief } from '../reasoning/belief.ts';
import { afterPuttingRight, afterRepair } from './after-repair.ts';
import type { Case } from './case.ts';
import { type CaseTables, tablesOf } from './case-tables.ts';
import type { Decision } from './decision.ts';
import { type Evidence, type EvidenceByName, takeEvidence, weighing } from './evidence.ts';
import { BY_HAND } from './parts-of-cause.ts';

export interface Knowing {
  readonly belief: Belief;
  /** Read of the plant as it is now. */
  readonly known: EvidenceByName;
  /** Read before work on it, which still tells of what the work did not mend. */
  readonly earlier: readonly Evidence[];
  /** Works so far. */
  readonly works: number;
  /** Causes that work has ended, if they were there; as places in the causes. */
  readonly mended: readonly number[];
  /** What the last decision told that was new. */
  readonly added: readonly Evidence[];
}

export function knowingNothing(theCase: Case): Knowing {
  return {
    belief: priorBelief(theCase.atlas),
    known: new Map(),
    earlier: [],
    works: 0,
    mended: [],
    added: [],
  };
}

/** The same belief object comes back where nothing was learnt. */
export function knowingAfter(theCase: Case, before: Knowing, decision: Decision): Knowing {
  switch (decision.kind) {
    case 'arrive':
    case 'check':
    case 'watch': {
      const { belief, known } = before;
      return { ...before, ...takeEvidence(tablesOf(theCase), belief, known, decision.seen) };
    }
    case 'work':
      return afterWork(theCase, before, decision.part, decision.way);
    default:
      return before.added.length === 0 ? before : { ...before, added: [] };
  }
}

/** All that was read and still counts. */
export function evidenceOf({ known, earlier }: Knowing): readonly Evidence[] {
  return [...earlier, ...known.values()];
}

function afterWork(theCase: Case, before: Knowing, part: string, way: string): Knowing {
  const tables = tablesOf(theCase);
  const { atlas } = theCase;
  const ended = tables.parts.endedBy(part, way);
  const works = before.works + 1;
  const isPutRight = way === BY_HAND && tables.parts.causesOf(part).length === 0;
  if (ended.length === 0 && !isPutRight) return { ...before, works, added: [] };
  const belief = isPutRight
    ? afterPuttingRight(before.belief, atlas)
    : afterRepair(before.belief, atlas, (fault) =>
        ended.some((cause) => atlas.causes[cause]?.fault === fault),
      );
  const earlier = evidenceOf(before).map((one) =>
    one.ofOldPlant ? one : withoutSound(tables, one),
  );
  const mended = [...new Set([...before.mended, ...ended])];
  return { belief, known: new Map(), earlier, works, mended, added: [] };
}

/** What the old plant read says nothing of a mended one. */
function withoutSound(tables: CaseTables, evidence: Evidence): Evidence {
  const { atlas } = tables;
  const delta = evidence.delta.map((add, p) => {
    const cause = atlas.causes[atlas.causeOf[p] as number];
    return cause?.fault === null ? 0 : add;
  });
  return { ...evidence, ...weighing(tables, delta), ofOldPlant: true };
}
