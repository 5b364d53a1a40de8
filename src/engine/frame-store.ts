/**
 * Keeps the frames of a run: chunks of Float64, oldest chunk dropped past a bound, so
 * memory stays flat however long the run. Frame k is the plant at k · frameS.
 */
export interface FrameStore {
  readonly width: number;
  readonly chunkFrames: number;
  readonly maxChunks: number;
  readonly chunks: Float64Array[];
  droppedChunks: number;
  count: number;
}

const CHUNK_FRAMES = 600;
/** One hour at ten frames a second. */
const MAX_CHUNKS = 60;

export function createFrameStore(width: number): FrameStore {
  return {
    width,
    chunkFrames: CHUNK_FRAMES,
    maxChunks: MAX_CHUNKS,
    chunks: [],
    droppedChunks: 0,
    count: 0,
  };
}

/** The chunk the next frame goes into; the caller writes `width` numbers at the returned offset. */
export function nextFrameOffset(store: FrameStore): number {
  const within = store.count % store.chunkFrames;
  if (within === 0) {
    if (store.chunks.length === store.maxChunks) {
      const oldest = store.chunks.shift();
      store.droppedChunks += 1;
      store.chunks.push(oldest ?? new Float64Array(store.chunkFrames * store.width));
    } else {
      store.chunks.push(new Float64Array(store.chunkFrames * store.width));
    }
  }
  store.count += 1;
  return within * store.width;
}

export function lastChunk(store: FrameStore): Float64Array {
  return store.chunks[store.chunks.length - 1] as Float64Array;
}

/** First frame still kept. */
export function firstFrame(store: FrameStore): number {
  return store.droppedChunks * store.chunkFrames;
}

/**
 * A view of frame k, not a copy.
 *
 * @throws RangeError when k was dropped or is not recorded yet
 */
export function frameAt(store: FrameStore, k: number): Float64Array {
  if (k < firstFrame(store) || k >= store.count) {
    throw new RangeError(`frame ${k} is not kept (${firstFrame(store)} to ${store.count - 1} are)`);
  }
  const chunk = store.chunks[Math.floor(k / store.chunkFrames) - store.droppedChunks];
  const at = (k % store.chunkFrames) * store.width;
  return (chunk as Float64Array).subarray(at, at + store.width);
}
