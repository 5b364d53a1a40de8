/**
 * Keeps the frames of a run: chunks of Float64, oldest chunk dropped past a bound, so
 * memory stays flat however long the run. Frame k is the plant at k · frameS.
 */
export interface FrameStore {
  readonly width: number;
  /** Frames a chunk, and most chunks kept at once. */
  readonly chunkFrames: number;
  readonly maxChunks: number;
  readonly chunks: FrameChunk[];
  droppedChunks: number;
  count: number;
}

/** The same memory as numbers, and as 32-bit words for the hash. */
export interface FrameChunk {
  readonly numbers: Float64Array;
  readonly words: Int32Array;
}

const CHUNK_FRAMES = 600;
/** One hour at ten frames a second. */
const MAX_CHUNKS = 60;

export function createFrameStore(width: number, kept: 'all' | 'last frame'): FrameStore {
  return {
    width,
    chunkFrames: kept === 'all' ? CHUNK_FRAMES : 1,
    maxChunks: kept === 'all' ? MAX_CHUNKS : 1,
    chunks: [],
    droppedChunks: 0,
    count: 0,
  };
}

/** Makes room for the next frame: the caller writes `width` numbers into `lastChunk` from there. */
export function nextFrameOffset(store: FrameStore): number {
  const within = store.count % store.chunkFrames;
  if (within === 0) {
    if (store.chunks.length === store.maxChunks) {
      store.chunks.push(store.chunks.shift() as FrameChunk);
      store.droppedChunks += 1;
    } else {
      store.chunks.push(createChunk(store.chunkFrames * store.width));
    }
  }
  store.count += 1;
  return within * store.width;
}

export function lastChunk(store: FrameStore): FrameChunk {
  return store.chunks[store.chunks.length - 1] as FrameChunk;
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
  return (chunk as FrameChunk).numbers.subarray(at, at + store.width);
}

function createChunk(length: number): FrameChunk {
  const numbers = new Float64Array(length);
  return { numbers, words: new Int32Array(numbers.buffer) };
}
