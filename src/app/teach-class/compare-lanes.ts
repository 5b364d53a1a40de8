/** Two runs of the same plant, lane by lane on one clock. Pure. */
import type { Lane } from '../../view/index.ts';

export interface RecordedRun {
  readonly count: number;
  readonly frameS: number;
  /** Frame k; null before the first one kept. */
  frame(k: number): Float64Array | null;
}

/** The moment that both runs are laid on, s of each. */
export const ALIGNMENTS = ['call for heat', 'run start'] as const;
export type Alignment = (typeof ALIGNMENTS)[number];

interface Happened {
  readonly t: number;
  readonly type: string;
  readonly action?: { readonly type: string };
}

/** The first call for heat; the start of the run where nobody has called for any. */
export function alignedAtS(events: readonly Happened[], alignment: Alignment): number {
  if (alignment === 'run start') return 0;
  const call = events.find(
    ({ type, action }) =>
      type === 'action' &&
      action?.type === 'call-for-heat' &&
      (action as { on?: boolean }).on === true,
  );
  return call?.t ?? 0;
}

export interface LaneLook {
  /** Place of its channel in a frame. */
  readonly place: number;
  readonly min: number;
  readonly max: number;
}

/** Lanes that have a line, with where its value stands; a scale takes in what both runs came to. */
export function linedLanes(lanes: readonly Lane[], channels: readonly { readonly id: string }[]) {
  return lanes.flatMap((lane) => {
    if (lane.line === null) return [];
    const { channel, min, max } = lane.line;
    const place = channels.findIndex(({ id }) => id === channel);
    return place < 0 ? [] : [{ lane, look: { place, min, max } satisfies LaneLook }];
  });
}

/** So many points of a line at most: more than a screen has. */
const MOST_POINTS = 900;

export interface CurveOf {
  readonly run: RecordedRun;
  /** What stands at 0 on the common clock, s of this run. */
  readonly zeroS: number;
}

/** `x` on the common clock, s; `y` the value. Least and greatest of each stretch are kept. */
export function curveOf(
  { run, zeroS }: CurveOf,
  place: number,
): readonly (readonly [number, number])[] {
  const stride = Math.max(1, Math.ceil((2 * run.count) / MOST_POINTS));
  const points: [number, number][] = [];
  for (let from = 0; from < run.count; from += stride) {
    let least: [number, number] | null = null;
    let most: [number, number] | null = null;
    for (let k = from; k < Math.min(run.count, from + stride); k += 1) {
      const value = run.frame(k)?.[place];
      if (value === undefined) continue;
      const point: [number, number] = [k * run.frameS - zeroS, value];
      if (least === null || value < least[1]) least = point;
      if (most === null || value > most[1]) most = point;
    }
    if (least === null || most === null) continue;
    if (least === most) points.push(least);
    else points.push(...(least[0] < most[0] ? [least, most] : [most, least]));
  }
  return points;
}

/** What a run showed at a moment of the common clock; null before its start and after its end. */
export function valueAtS({ run, zeroS }: CurveOf, place: number, clockS: number): number | null {
  const k = Math.floor((clockS + zeroS) / run.frameS + 1e-6);
  if (k < 0 || k >= run.count) return null;
  return run.frame(k)?.[place] ?? null;
}

/** The last moment that all of them have, on the common clock, s. */
export function bothUntilS(runs: readonly CurveOf[]): number {
  return Math.min(...runs.map(({ run, zeroS }) => Math.max(0, run.count - 1) * run.frameS - zeroS));
}

/** From the earlier start to the later end, on the common clock, s. */
export function commonSpan(runs: readonly CurveOf[]): {
  readonly fromS: number;
  readonly toS: number;
} {
  const from = runs.map(({ zeroS }) => -zeroS);
  const to = runs.map(({ run, zeroS }) => Math.max(0, run.count - 1) * run.frameS - zeroS);
  return { fromS: Math.min(0, ...from), toS: Math.max(1, ...to) };
}
