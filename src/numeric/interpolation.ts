/** Points of a curve with rising x. `slopes` is empty for straight lines between the points. */
export interface CurveTable {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly slopes: Float64Array;
}

/** A table read with straight lines between its points, and held at its ends. */
export function createLinearTable(x: ArrayLike<number>, y: ArrayLike<number>): CurveTable {
  checkPoints(x, y);
  return { x: Float64Array.from(x), y: Float64Array.from(y), slopes: new Float64Array(0) };
}

/**
 * A table read with a cubic that keeps the points' rises and falls: no overshoot, smooth slope.
 *
 * Equation: Hermite cubic with weighted harmonic mean slopes.
 * Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300.
 */
export function createMonotoneTable(x: ArrayLike<number>, y: ArrayLike<number>): CurveTable {
  checkPoints(x, y);
  const xs = Float64Array.from(x);
  const ys = Float64Array.from(y);
  const count = xs.length;
  const slopes = new Float64Array(count);
  const width = (i: number) => (xs[i + 1] as number) - (xs[i] as number);
  const secant = (i: number) => ((ys[i + 1] as number) - (ys[i] as number)) / width(i);
  if (count === 2) slopes.fill(secant(0));
  for (let i = 1; i < count - 1; i++) {
    const before = secant(i - 1);
    const after = secant(i);
    if (before * after <= 0) continue;
    const w1 = 2 * width(i) + width(i - 1);
    const w2 = width(i) + 2 * width(i - 1);
    slopes[i] = (w1 + w2) / (w1 / before + w2 / after);
  }
  if (count > 2) {
    slopes[0] = endSlope(width(0), width(1), secant(0), secant(1));
    slopes[count - 1] = endSlope(
      width(count - 2),
      width(count - 3),
      secant(count - 2),
      secant(count - 3),
    );
  }
  return { x: xs, y: ys, slopes };
}

/** y at x; outside the points the nearest end's value. */
export function readTable(table: CurveTable, x: number): number {
  const xs = table.x;
  const ys = table.y;
  const last = xs.length - 1;
  if (!(x > (xs[0] as number))) return ys[0] as number;
  if (x >= (xs[last] as number)) return ys[last] as number;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if ((xs[middle] as number) <= x) low = middle;
    else high = middle;
  }
  const x0 = xs[low] as number;
  const y0 = ys[low] as number;
  const y1 = ys[high] as number;
  const width = (xs[high] as number) - x0;
  const t = (x - x0) / width;
  const slopes = table.slopes;
  if (slopes.length === 0) return y0 + (y1 - y0) * t;
  const rise = y1 - y0;
  const m0 = (slopes[low] as number) * width;
  const m1 = (slopes[high] as number) * width;
  return y0 + t * (m0 + t * (3 * rise - 2 * m0 - m1 + t * (m0 + m1 - 2 * rise)));
}

function endSlope(near: number, next: number, secant: number, nextSecant: number): number {
  const slope = ((2 * near + next) * secant - near * nextSecant) / (near + next);
  if (slope * secant <= 0) return 0;
  if (secant * nextSecant <= 0 && Math.abs(slope) > 3 * Math.abs(secant)) return 3 * secant;
  return slope;
}

function checkPoints(x: ArrayLike<number>, y: ArrayLike<number>): void {
  if (x.length < 2 || x.length !== y.length) {
    throw new RangeError(
      `a curve needs as many y as x and at least 2, got ${x.length}, ${y.length}`,
    );
  }
  for (let i = 1; i < x.length; i++) {
    if (!((x[i] as number) > (x[i - 1] as number))) {
      throw new RangeError(`x of a curve must rise: ${x[i - 1]}, ${x[i]}`);
    }
  }
}
