import type { ToolRun } from '../../bench/index.ts';
import type { Run } from '../../engine/index.ts';

/** A tool takes each frame once, and is asked more often than this. */
const KEPT = 16;

/** The newest frames of a run that keeps none, for tools that are not asked at each of them. */
export interface FrameTail {
  /** Takes the newest frame of the run. */
  take(): void;
  newest(): Float64Array;
  /** The run as it was at the newest frame taken, with those before it. */
  readonly view: ToolRun;
}

export function createFrameTail(run: Run): FrameTail {
  const frames: Float64Array[] = [];
  let count = 0;
  const take = () => {
    const next = run.frameCount();
    if (next === count) return;
    const frame = run.frame(next - 1);
    const place = (next - 1) % KEPT;
    const kept = frames[place];
    if (kept === undefined) frames[place] = frame.slice();
    else kept.set(frame);
    count = next;
  };
  const at = (k: number) => frames[k % KEPT] as Float64Array;
  take();
  const first = count - 1;
  return {
    take,
    newest: () => at(count - 1),
    view: {
      ...run,
      frame: at,
      frameCount: () => count,
      firstFrame: () => Math.max(first, count - KEPT),
      timeS: () => (count - 1) * run.frameS,
    },
  };
}
