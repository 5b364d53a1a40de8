import type { DeskEntry } from '../../../machines/index.ts';
import type { RunSetup, TimedAction } from '../../engine/index.ts';
import { judgeBypassing } from './bypassing.ts';
import { judgeElectricalWork } from './electrical-work.ts';
import type { ConductFinding } from './finding.ts';
import { judgeGasWork } from './gas-work.ts';
import { judgeInsideWork } from './inside-work.ts';
import { judgeLeaving } from './leaving.ts';
import { judgeStarting } from './starting.ts';
import { traceJob } from './trace-job.ts';
import type { JobTrace } from './trace-types.ts';

/**
 * What was unsafe or careless, by running the log again and looking at the plant at each act: see
 * CONDUCT.md. In order of time.
 */
export function judgeConduct(
  setup: RunSetup,
  log: readonly TimedAction[],
  desk: readonly DeskEntry[],
  untilS?: number,
): readonly ConductFinding[] {
  return conductOf(traceJob(setup, log, desk, untilS), desk);
}

/** The same of a log that has been run again already. */
export function conductOf(trace: JobTrace, desk: readonly DeskEntry[]): readonly ConductFinding[] {
  const found = [
    ...judgeElectricalWork(trace, desk),
    ...judgeGasWork(trace),
    ...judgeStarting(trace, desk),
    ...judgeBypassing(trace),
    ...judgeInsideWork(trace),
    ...judgeLeaving(trace),
  ].sort((a, b) => a.t - b.t);
  // Two looks into one part at one moment are one thing done.
  const said = found.map((one) => JSON.stringify(one));
  return found.filter((_, place) => said.indexOf(said[place] as string) === place);
}
