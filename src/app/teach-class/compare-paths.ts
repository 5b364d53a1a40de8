/** The lines of one lane, as paths in a box of its own. Pure. */
import type { LaneLook } from './compare-lanes.ts';

export const LANE_WIDE = 1000;
export const LANE_HIGH = 100;
/** Air above the highest value, so that a line at the top is still seen to be one. */
const AIR = 0.06;
/** So much of a lane's own scale is always shown. */
const LEAST_OF_SCALE = 0.15;

type Points = readonly (readonly [number, number])[];

/** @returns a path for each run, all to one scale, which takes in whatever either of them came to */
export function pathsOf(
  curves: readonly Points[],
  look: Pick<LaneLook, 'min' | 'max'>,
  { fromS, toS }: { readonly fromS: number; readonly toS: number },
): readonly string[] {
  const values = curves.flatMap((points) => points.map(([, value]) => value));
  const most = values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  // The whole scale would leave a lane flat that stays far below it; noise is to look like noise.
  const least = LEAST_OF_SCALE * (look.max - look.min);
  const high = look.min + Math.max(least, (1 + AIR) * (most - look.min));
  const low = values.reduce((a, b) => Math.min(a, b), look.min);
  return curves.map((points) =>
    points
      .map(([xS, value], k) => {
        const x = (LANE_WIDE * (xS - fromS)) / (toS - fromS);
        const y = LANE_HIGH * (1 - (value - low) / (high - low || 1));
        return `${k === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
      })
      .join(''),
  );
}
