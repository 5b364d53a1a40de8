import type { PlantFile } from '../engine/index.ts';
import { findFault, remediesOf } from '../faults/index.ts';
import { causePartsOf } from './causes.ts';
import type { Drill } from './drill-schema.ts';
import type { Job } from './job-schema.ts';

/** One fault that an exercise takes as the cause, and the parts by which it may be named. */
export interface AnswerCause {
  readonly fault: string;
  /** The part it is mended at. */
  readonly part: string;
  /** What the fault is of; the same as `part` unless the two have different names. */
  readonly component: string;
  /** All parts that a claim may name, those two included. */
  readonly parts: readonly string[];
}

/** What would be right to say of an exercise. */
export interface ExerciseAnswer {
  /** Those that are to be found; empty where nothing is wrong with the plant. */
  readonly causes: readonly AnswerCause[];
  /** Not there, but nobody could tell: taken for one of the causes. */
  readonly accepted: readonly AnswerCause[];
  /** Each cause is to be found, not just one of them. */
  readonly each: boolean;
}

export function answerOfJob(
  { faults, cause, accept = [] }: Pick<Job, 'faults' | 'cause' | 'accept'>,
  plant: PlantFile,
): ExerciseAnswer {
  const brought = new Set(faults.map(({ fault }) => fault));
  const named = cause ?? [...brought];
  const there = named.filter((id) => brought.has(id));
  const causes = there.length > 0 ? there : named;
  const others = [...named.filter((id) => !causes.includes(id)), ...accept];
  return { causes: causesIn(causes, plant), accepted: causesIn(others, plant), each: true };
}

/** Null where the answer is one of the options. */
export function answerOfDrill(
  { claim }: Pick<Drill, 'claim'>,
  plant: PlantFile,
): ExerciseAnswer | null {
  if (claim === undefined) return null;
  return { causes: causesIn(claim, plant), accepted: [], each: false };
}

function causesIn(ids: readonly string[], plant: PlantFile): AnswerCause[] {
  return ids.flatMap((id) => {
    const fault = findFault(id);
    if (fault === undefined) return [];
    const { component } = fault;
    const part = remediesOf(fault, plant)[0]?.part ?? component;
    return [
      { fault: id, part, component, parts: causePartsOf({ faults: [], cause: [id] }, plant) },
    ];
  });
}
