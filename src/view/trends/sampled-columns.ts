/**
 * Columns of a run for a line chart, never more points than twice the buckets: within a
 * bucket the least and the greatest value stand in the order they came in.
 */
export interface SampledRun {
  readonly count: number;
  append(frames: readonly Float64Array[], t0S: number): void;
  clear(): void;
  /** Times and one column a place, between two times, thinned out to about `buckets`. */
  columns(
    places: readonly number[],
    fromS: number,
    toS: number,
    buckets: number,
  ): { readonly times: number[]; readonly values: number[][] };
  /** What a place read at a moment; null outside the run. */
  valueAt(place: number, tS: number): number | null;
  readonly originS: number;
  readonly endS: number;
}

/** @param frameS time between frames, s */
export function createSampledRun(frameS: number): SampledRun {
  let frames: Float64Array[] = [];
  let originS = 0;
  return {
    get count() {
      return frames.length;
    },
    get originS() {
      return originS;
    },
    get endS() {
      return originS + frames.length * frameS;
    },
    append(next, t0S) {
      if (next.length === 0) return;
      if (frames.length === 0) originS = t0S;
      const first = Math.round((t0S - originS) / frameS);
      if (first > frames.length) throw new RangeError(`frames before ${t0S} s are missing`);
      if (first < 0) {
        frames = [];
        originS = t0S;
      } else if (first < frames.length) frames.length = first;
      for (const frame of next) frames.push(frame);
    },
    clear() {
      frames = [];
    },
    valueAt(place, tS) {
      const frame = frames[Math.floor((tS - originS) / frameS + 1e-6)];
      return frame === undefined || place < 0 ? null : frame[place];
    },
    columns(places, fromS, toS, buckets) {
      const first = Math.max(0, Math.floor((fromS - originS) / frameS));
      const last = Math.min(frames.length - 1, Math.ceil((toS - originS) / frameS));
      const stride = Math.max(1, Math.ceil((last - first + 1) / buckets));
      const times: number[] = [];
      const values: number[][] = places.map(() => []);
      for (let start = first; start <= last; start += stride) {
        const end = Math.min(last, start + stride - 1);
        const at = [start, end];
        for (let half = 0; half < (stride === 1 ? 1 : 2); half += 1) {
          times.push(originS + at[half] * frameS);
        }
        for (let p = 0; p < places.length; p += 1) {
          pushExtremes(values[p], frames, places[p], start, end, stride === 1);
        }
      }
      return { times, values };
    },
  };
}

function pushExtremes(
  column: number[],
  frames: readonly Float64Array[],
  place: number,
  start: number,
  end: number,
  single: boolean,
): void {
  let least = start;
  let greatest = start;
  for (let i = start; i <= end; i += 1) {
    if (frames[i][place] < frames[least][place]) least = i;
    if (frames[i][place] > frames[greatest][place]) greatest = i;
  }
  if (single) column.push(frames[start][place]);
  else {
    const [a, b] = least <= greatest ? [least, greatest] : [greatest, least];
    column.push(frames[a][place], frames[b][place]);
  }
}
