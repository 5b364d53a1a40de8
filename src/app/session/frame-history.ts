/** The page's own copy of the recorded frames, bounded like the engine's; frame k is at k · frameS. */
export interface FrameHistory {
  readonly width: number;
  readonly frameS: number;
  readonly chunks: Float64Array[];
  droppedChunks: number;
  count: number;
  /** How often frames were forgotten, and how many the last time left. */
  cuts: number;
  keptAtCut: number;
}

const CHUNK_FRAMES = 600;
export const MAX_CHUNKS = 60;

export function createFrameHistory(width: number, frameS: number): FrameHistory {
  return { width, frameS, chunks: [], droppedChunks: 0, count: 0, cuts: 0, keptAtCut: 0 };
}

/**
 * Writes whole frames from index `first` on; a gap after the last known frame is an error of the
 * sender. Only an empty history may begin later than at 0: with a whole chunk, as the engine forgets.
 */
export function writeFrames(history: FrameHistory, first: number, data: Float64Array): void {
  if (history.count === 0 && first > 0 && first % CHUNK_FRAMES === 0) {
    history.droppedChunks = first / CHUNK_FRAMES;
    history.count = first;
  }
  if (first > history.count)
    throw new RangeError(`frames ${history.count} to ${first} are missing`);
  const frames = data.length / history.width;
  for (let i = 0; i < frames; i += 1) {
    const k = first + i;
    const chunk = chunkFor(history, k);
    if (chunk === null) continue;
    const from = i * history.width;
    chunk.set(data.subarray(from, from + history.width), (k % CHUNK_FRAMES) * history.width);
    history.count = Math.max(history.count, k + 1);
  }
}

/** Forgets every frame from index `count` on. */
export function cutFrames(history: FrameHistory, count: number): void {
  history.count = Math.min(history.count, count);
  history.cuts += 1;
  history.keptAtCut = history.count;
  const chunks = Math.ceil(history.count / CHUNK_FRAMES) - history.droppedChunks;
  history.chunks.length = Math.max(0, Math.min(history.chunks.length, chunks));
}

export function firstKept(history: FrameHistory): number {
  return history.droppedChunks * CHUNK_FRAMES;
}

/** A view of frame k, clamped to what is kept; null before the first frame. */
export function frameAt(history: FrameHistory, k: number): Float64Array | null {
  if (history.count === 0) return null;
  const index = Math.min(history.count - 1, Math.max(firstKept(history), k));
  const chunk = history.chunks[Math.floor(index / CHUNK_FRAMES) - history.droppedChunks];
  if (chunk === undefined) return null;
  const at = (index % CHUNK_FRAMES) * history.width;
  return chunk.subarray(at, at + history.width);
}

/** Index of the last frame that is not after `tS`. */
export function frameIndexAt(history: FrameHistory, tS: number): number {
  return Math.max(0, Math.min(history.count - 1, Math.floor(tS / history.frameS + 1e-6)));
}

function chunkFor(history: FrameHistory, k: number): Float64Array | null {
  let slot = Math.floor(k / CHUNK_FRAMES) - history.droppedChunks;
  if (slot < 0) return null;
  while (slot >= history.chunks.length) {
    if (history.chunks.length === MAX_CHUNKS) {
      history.chunks.shift();
      history.droppedChunks += 1;
      slot -= 1;
    }
    history.chunks.push(new Float64Array(CHUNK_FRAMES * history.width));
  }
  return history.chunks[slot] as Float64Array;
}
