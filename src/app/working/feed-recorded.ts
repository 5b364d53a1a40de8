import { frameAt } from '../session/frame-history.ts';
import type { Session } from '../session/session-types.ts';

interface TakesFrames {
  /** A `t0S` before the end of what it holds replaces everything from there on. */
  append(frames: readonly Float64Array[], t0S: number): void;
}

/** Hands over, each time it is called, what was recorded since; and after a cut what is left. */
export function feedRecorded(target: TakesFrames, session: Pick<Session, 'history'>): () => void {
  let fed = 0;
  let cuts = session.history()?.cuts ?? 0;
  return () => {
    const history = session.history();
    if (history === null) return;
    if (history.cuts !== cuts) {
      cuts = history.cuts;
      // The last frame kept, once more: what the target holds after it is gone.
      fed = Math.max(0, Math.min(fed, history.keptAtCut) - 1);
    }
    if (fed >= history.count) return;
    const frames: Float64Array[] = [];
    for (let k = fed; k < history.count; k += 1) {
      const frame = frameAt(history, k);
      if (frame !== null) frames.push(frame);
    }
    target.append(frames, fed * history.frameS);
    fed = history.count;
  };
}
