import type { PlantFile } from '../engine/index.ts';
import { findFault, remediesOf } from '../faults/index.ts';
import type { Job } from './job-schema.ts';

type Answer = Pick<Job, 'faults' | 'cause' | 'accept'>;

/** Faults that are taken as the cause: those the job names, or all that it has; and what else it accepts. */
export function causesOf({ faults, cause, accept }: Answer): string[] {
  return [...(cause ?? faults.map(({ fault }) => fault)), ...(accept ?? [])];
}

/** The parts a claim may name for them: what the fault is of, and each part that an act ends it at. */
export function causePartsOf(answer: Answer, plant: PlantFile): string[] {
  const parts = causesOf(answer).flatMap((id) => {
    const fault = findFault(id);
    return fault === undefined
      ? []
      : [fault.component, ...remediesOf(fault, plant).map(({ part }) => part)];
  });
  return [...new Set(parts)];
}
