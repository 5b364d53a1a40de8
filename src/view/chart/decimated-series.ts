/**
 * A growing series kept in a bounded number of buckets: when they are full, neighbours are
 * merged two by two. A bucket keeps the least, the greatest and the last of its values, so
 * that no spike is lost however long the run.
 */
export interface DecimatedSeries {
  /** Values put in so far. */
  readonly count: number;
  /** Values in a full bucket. */
  readonly bucketSize: number;
  readonly buckets: number;
  push(value: number): void;
  /** Forget values from `count` on; a bucket that is cut in two keeps all it had. */
  truncate(count: number): void;
  leastOf(bucket: number): number;
  greatestOf(bucket: number): number;
  lastOf(bucket: number): number;
}

const CAPACITY = 4096;

export function createDecimatedSeries(capacity = CAPACITY): DecimatedSeries {
  const least = new Float64Array(capacity);
  const greatest = new Float64Array(capacity);
  const last = new Float64Array(capacity);
  let size = 1;
  let count = 0;

  function merge(): void {
    for (let i = 0; i < capacity / 2; i += 1) {
      least[i] = Math.min(least[2 * i], least[2 * i + 1]);
      greatest[i] = Math.max(greatest[2 * i], greatest[2 * i + 1]);
      last[i] = last[2 * i + 1];
    }
    size *= 2;
  }

  return {
    get count() {
      return count;
    },
    get bucketSize() {
      return size;
    },
    get buckets() {
      return Math.ceil(count / size);
    },
    push(value) {
      if (count === capacity * size) merge();
      const bucket = Math.floor(count / size);
      const isNew = count % size === 0;
      least[bucket] = isNew ? value : Math.min(least[bucket], value);
      greatest[bucket] = isNew ? value : Math.max(greatest[bucket], value);
      last[bucket] = value;
      count += 1;
    },
    truncate(next) {
      count = Math.max(0, Math.min(count, Math.floor(next)));
    },
    leastOf: (bucket) => least[bucket],
    greatestOf: (bucket) => greatest[bucket],
    lastOf: (bucket) => last[bucket],
  };
}
