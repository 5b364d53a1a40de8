/** The one place where judging leans on the bench. */
import type { DeskEntry } from '../../../machines/job/index.ts';
import {
  type ConductFinding,
  conductOf,
  type MinutesUsed,
  minutesOf,
  type Proof,
  proofFrom,
  proofOf,
  traceJob,
} from '../../bench/index.ts';
import type { PlantPart, RunSetup, TimedAction } from '../../engine/index.ts';

/** A finished or running piece of work: setup, everything done, and how far it came. */
export interface WorkDone {
  readonly setup: RunSetup;
  readonly log: readonly TimedAction[];
  readonly desk: readonly DeskEntry[];
  readonly untilS: number;
}

export interface WorkBench {
  minutes(done: WorkDone, parts: readonly PlantPart[]): MinutesUsed;
  proof(done: WorkDone): Proof;
  /** Runs the log again, once for both. */
  judge(done: WorkDone): { readonly conduct: readonly ConductFinding[]; readonly proof: Proof };
}

export const workBench: WorkBench = {
  minutes: ({ setup, log, desk, untilS }, parts) =>
    minutesOf(log, desk, parts, untilS, setup.plant),
  proof: ({ setup, log, desk, untilS }) => proofOf(setup, log, desk, untilS),
  judge({ setup, log, desk, untilS }) {
    const trace = traceJob(setup, log, desk, untilS);
    return { conduct: conductOf(trace, desk), proof: proofFrom(trace) };
  },
};
