/**
 * The expected band of one lane: for every frame of the expected run, the least and the
 * greatest value that is still as expected.
 */
export interface Band {
  readonly frameS: number;
  readonly value: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** A device may be this much early or late and still be as expected: training value. */
const SLACK_S = 1.5;

/** A line at rest has this much of the lane's height as its band. */
const LEAST_SHARE = 0.02;

/**
 * @param span how much of the quantity the lane's height stands for
 * @param tolerance share of the expected value itself that is allowed either way
 */
export function bandOf(
  values: Float64Array,
  frameS: number,
  span: number,
  tolerance: number,
): Band {
  const reach = Math.round(SLACK_S / frameS);
  const low = new Float64Array(values.length);
  const high = new Float64Array(values.length);
  for (let i = 0; i < values.length; i += 1) {
    let least = Number.POSITIVE_INFINITY;
    let greatest = Number.NEGATIVE_INFINITY;
    const end = Math.min(values.length - 1, i + reach);
    for (let k = Math.max(0, i - reach); k <= end; k += 1) {
      least = Math.min(least, values[k]);
      greatest = Math.max(greatest, values[k]);
    }
    low[i] = least - Math.abs(least) * tolerance - span * LEAST_SHARE;
    high[i] = greatest + Math.abs(greatest) * tolerance + span * LEAST_SHARE;
  }
  return { frameS, value: values, low, high };
}

export function frameOf(band: Band, tS: number): number {
  return Math.min(band.value.length - 1, Math.max(0, Math.round(tS / band.frameS)));
}

export type Standing =
  | { readonly type: 'as expected' }
  | { readonly type: 'behind'; readonly seconds: number }
  | { readonly type: 'ahead'; readonly seconds: number }
  | { readonly type: 'outside' };

/**
 * How an actual value stands to the band at a moment of the expected run.
 *
 * Behind: the expected run passed this value so many seconds ago, within the same step.
 * Ahead: it comes to it later in the step. Outside: it never has it in this step.
 *
 * @param overrunS how much longer the step has lasted than expected
 */
export function standingOf(
  band: Band,
  actual: number,
  atS: number,
  step: { readonly fromS: number; readonly toS: number },
  overrunS: number,
): Standing {
  const now = frameOf(band, atS);
  if (actual >= band.low[now] && actual <= band.high[now]) return { type: 'as expected' };
  const first = frameOf(band, step.fromS);
  const last = frameOf(band, step.toS);
  for (let i = now; i > first; i -= 1) {
    if (passes(band.value[i - 1], band.value[i], actual)) {
      return { type: 'behind', seconds: (now - i) * band.frameS + overrunS };
    }
  }
  for (let i = now; i < last; i += 1) {
    if (passes(band.value[i], band.value[i + 1], actual)) {
      return { type: 'ahead', seconds: (i - now) * band.frameS };
    }
  }
  return { type: 'outside' };
}

function passes(from: number, to: number, value: number): boolean {
  return from !== to && (from <= value ? value <= to : value >= to);
}
