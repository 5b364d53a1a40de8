/** The one place where a session leans on the bench: tools, minutes, conduct, proof, sheet. */
import type { DeskEntry } from '../../../machines/job/index.ts';
import {
  type ConductFinding,
  checkOf,
  checkUse,
  conductOf,
  createToolState,
  type MinutesUsed,
  minutesOf,
  PANEL_CHANNELS,
  type Proof,
  proofFrom,
  proofOf,
  readTool,
  type SheetRow,
  sheetOf,
  type TestPoint,
  TOOLS,
  type Tool,
  type ToolIssue,
  type ToolReading,
  type ToolUse,
  testPointsOf,
  traceJob,
} from '../../bench/index.ts';
import type { PlantFile, PlantPart, Run, RunSetup, TimedAction } from '../../engine/index.ts';

/** A connected tool: what it shows now. It remembers, so it is asked in the order of time. */
export type ConnectedTool = (run: Run) => ToolReading;

/** A finished or running piece of work: setup, everything done, and how far it came. */
export interface WorkDone {
  readonly setup: RunSetup;
  readonly log: readonly TimedAction[];
  readonly desk: readonly DeskEntry[];
  readonly untilS: number;
}

export interface BenchPort {
  readonly tools: readonly Tool[];
  readonly panelChannels: readonly string[];
  testPoints(plant: PlantFile): readonly TestPoint[];
  /** Why a tool cannot be used like that, and the mend; null when it can. */
  checkUse(plant: PlantFile, use: ToolUse): Pick<ToolIssue, 'found' | 'mend'> | null;
  connectTool(use: ToolUse, tS: number): ConnectedTool;
  /** What the log keeps of connecting it. */
  checkOf: typeof checkOf;
  minutes(done: WorkDone, parts: readonly PlantPart[]): MinutesUsed;
  proof(done: WorkDone): Proof;
  /** Runs the log again, once for both. */
  judge(done: WorkDone): { readonly conduct: readonly ConductFinding[]; readonly proof: Proof };
  sheet(setup: RunSetup): readonly SheetRow[];
}

export const benchPort: BenchPort = {
  tools: TOOLS,
  panelChannels: PANEL_CHANNELS,
  testPoints: testPointsOf,
  checkUse,
  checkOf,
  connectTool(use, tS) {
    const state = createToolState(use, tS);
    return (run) => readTool(run, use, state);
  },
  minutes: ({ setup, log, desk, untilS }, parts) =>
    minutesOf(log, desk, parts, untilS, setup.plant),
  proof: ({ setup, log, desk, untilS }) => proofOf(setup, log, desk, untilS),
  judge({ setup, log, desk, untilS }) {
    const trace = traceJob(setup, log, desk, untilS);
    return { conduct: conductOf(trace, desk), proof: proofFrom(trace) };
  },
  sheet: sheetOf,
};
