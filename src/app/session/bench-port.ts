/** The one place where a session leans on the bench: tools, minutes, conduct, proof, sheet. */
import {
  checkOf,
  checkUse,
  createToolState,
  PANEL_CHANNELS,
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
} from '../../bench/index.ts';
import type { PlantFile, Run, RunSetup } from '../../engine/index.ts';
import { type WorkBench, workBench } from '../../judging/work/index.ts';

export type { WorkDone } from '../../judging/work/index.ts';

/** A connected tool: what it shows now. It remembers, so it is asked in the order of time. */
export type ConnectedTool = (run: Run) => ToolReading;

export interface BenchPort extends WorkBench {
  readonly tools: readonly Tool[];
  readonly panelChannels: readonly string[];
  testPoints(plant: PlantFile): readonly TestPoint[];
  /** Why a tool cannot be used like that, and the mend; null when it can. */
  checkUse(plant: PlantFile, use: ToolUse): Pick<ToolIssue, 'found' | 'mend'> | null;
  connectTool(use: ToolUse, tS: number): ConnectedTool;
  /** What the log keeps of connecting it. */
  checkOf: typeof checkOf;
  sheet(setup: RunSetup): readonly SheetRow[];
}

export const benchPort: BenchPort = {
  ...workBench,
  tools: TOOLS,
  panelChannels: PANEL_CHANNELS,
  testPoints: testPointsOf,
  checkUse,
  checkOf,
  connectTool(use, tS) {
    const state = createToolState(use, tS);
    return (run) => readTool(run, use, state);
  },
  sheet: sheetOf,
};
