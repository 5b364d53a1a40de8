import { FRAME_S } from '../../engine/index.ts';
import type { ToolRun, ToolState, ToolUse } from './tool-types.ts';

export function createToolState(use: ToolUse, tS: number): ToolState {
  return {
    use,
    sinceS: tS,
    next: firstFrameFrom(tS),
    channels: null,
    followers: [],
    count: 0,
    overloaded: false,
    words: [],
  };
}

/**
 * Takes the frames that have come since the last call, each once and in order, so that a reading
 * does not depend on how often it is asked for. Frames that the recorder has dropped are passed
 * over. A run that has been taken back begins the tool anew. A hidden channel is as good as none.
 */
export function walkFrames(
  run: ToolRun,
  state: ToolState,
  channels: readonly string[],
  onFrame: (frame: Float64Array, places: readonly number[], k: number) => void,
): void {
  const end = run.frameCount();
  if (end < state.next && state.next > firstFrameFrom(state.sinceS)) restart(state);
  state.channels ??= channels.map((id) =>
    run.channels.findIndex((known) => known.id === id && known.part === 'visible'),
  );
  const places = state.channels;
  for (let k = Math.max(state.next, run.firstFrame()); k < end; k++) {
    onFrame(run.frame(k), places, k);
  }
  state.next = Math.max(state.next, end);
}

/** How long the tool has been connected at the newest frame it has taken, s; 0 before the first. */
export function connectedS(state: ToolState): number {
  return Math.max(0, (state.next - 1) * FRAME_S - state.sinceS);
}

function restart(state: ToolState): void {
  state.next = firstFrameFrom(state.sinceS);
  state.followers.length = 0;
  state.count = 0;
  state.overloaded = false;
  state.words = [];
}

/** The first frame that is not before a moment. */
function firstFrameFrom(tS: number): number {
  return Math.max(0, Math.ceil(tS / FRAME_S - 1e-6));
}
