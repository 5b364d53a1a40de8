/** π/2 in three parts of 33 bits and a rest, so that n · part is exact for |n| < 2²⁰. */
const HALF_PI_1 = 1.5707963267341256;
const HALF_PI_2 = 6.077100506303966e-11;
const HALF_PI_3 = 2.0222662487111665e-21;
const HALF_PI_REST = 8.4784276603689e-32;
const TWO_OVER_PI = 0.6366197723675814;

/**
 * sin x (x in radians), the same bits in every JavaScript engine.
 *
 * Equation: reduced by whole quarter turns to |r| ≤ π/4, then the power series to r¹⁷
 * (remainder below 1e-19).
 * Valid for: |x| ≤ 1e6, error below 1e-15 absolute and 1e-13 relative away from exact multiples of π.
 */
export function exactSin(x: number): number {
  const quarter = Math.floor(x * TWO_OVER_PI + 0.5);
  const r = reduce(x, quarter);
  switch (quarter & 3) {
    case 0:
      return sinNear(r);
    case 1:
      return cosNear(r);
    case 2:
      return -sinNear(r);
    default:
      return -cosNear(r);
  }
}

/** cos x (x in radians), the same bits in every JavaScript engine. Method and validity as `exactSin`. */
export function exactCos(x: number): number {
  const quarter = Math.floor(x * TWO_OVER_PI + 0.5);
  const r = reduce(x, quarter);
  switch (quarter & 3) {
    case 0:
      return cosNear(r);
    case 1:
      return -sinNear(r);
    case 2:
      return -cosNear(r);
    default:
      return sinNear(r);
  }
}

function reduce(x: number, quarter: number): number {
  if (quarter === 0) return x;
  return (
    x - quarter * HALF_PI_1 - quarter * HALF_PI_2 - quarter * HALF_PI_3 - quarter * HALF_PI_REST
  );
}

function sinNear(r: number): number {
  const z = r * r;
  return (
    r +
    r *
      z *
      (-1 / 6 +
        z *
          (1 / 120 +
            z *
              (-1 / 5040 +
                z *
                  (1 / 362880 +
                    z *
                      (-1 / 39916800 +
                        z * (1 / 6227020800 + z * (-1 / 1307674368000 + z / 355687428096000)))))))
  );
}

function cosNear(r: number): number {
  const z = r * r;
  const half = 0.5 * z;
  const tail =
    z *
    z *
    (1 / 24 +
      z *
        (-1 / 720 +
          z *
            (1 / 40320 +
              z *
                (-1 / 3628800 +
                  z *
                    (1 / 479001600 +
                      z * (-1 / 87178291200 + z * (1 / 20922789888000 - z / 6402373705728000)))))));
  const near = 1 - half;
  return near + (1 - near - half + tail);
}
