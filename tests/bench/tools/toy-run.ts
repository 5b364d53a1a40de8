import type { ToolRun } from '../../../src/bench/index.ts';
import type { LookReading, MeterReading } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';

interface Toy {
  /** What each channel holds in frame k. */
  readonly channels: Readonly<Record<string, (k: number) => number>>;
  readonly frames: number;
  readonly scenario?: string;
  readonly meter?: MeterReading;
  readonly look?: LookReading | null;
}

/** A run made of formulas: what a tool makes of it can be worked out by hand. */
export function toyRun({ channels, frames, scenario, meter, look }: Toy): ToolRun {
  const ids = Object.keys(channels);
  const made = Object.values(channels);
  return {
    setup: shippedSetup(scenario ?? 'laundry-healthy-start'),
    channels: ids.map((id) => ({ id, unit: '1', kind: 'number', part: 'visible' })),
    frameS: 0.1,
    frameCount: () => frames,
    firstFrame: () => 0,
    frame: (k) => Float64Array.from(made, (value) => value(k)),
    timeS: () => (frames - 1) * 0.1,
    meter: () => meter ?? null,
    look: () => look ?? null,
  };
}

/** The same run when it had recorded fewer frames. */
export function earlier(run: ToolRun, frames: number): ToolRun {
  return { ...run, frameCount: () => frames, timeS: () => (frames - 1) * run.frameS };
}
