import { type ChannelIndex, readAt } from '../channels.ts';
import type { StepMark } from './alignment.ts';
import { type Band, bandOf } from './band.ts';
import type { Lane, LaneLine } from './lanes.ts';

/** The healthy run, lane by lane. */
export interface ExpectedRun {
  readonly marks: readonly StepMark[];
  readonly endS: number;
  readonly frameS: number;
  /** null for a lane without a line, or with one that nothing holds to a value. */
  readonly bands: readonly (Band | null)[];
  /** The lines' scales, fitted to this run where they follow it. */
  readonly scales: readonly (LaneLine | null)[];
}

/** Air over the highest expected value, so that a line at its top is still seen to be one. */
const HEADROOM = 1.12;

export function readExpected(
  frames: readonly Float64Array[],
  lanes: readonly Lane[],
  channels: ChannelIndex,
  frameS: number,
): ExpectedRun {
  const stepPlace = channels.indexOf('logic.step');
  const marks: StepMark[] = [];
  frames.forEach((frame, i) => {
    const step = readAt(frame, stepPlace);
    if (marks[marks.length - 1]?.step !== step) marks.push({ step, tS: i * frameS });
  });
  const columns = lanes.map((lane) => {
    const place = channels.indexOf(lane.line?.channel ?? '');
    return Float64Array.from(frames, (frame) => readAt(frame, place));
  });
  const scales = lanes.map((lane, i) => fitScale(lane.line, columns[i]));
  return {
    marks,
    endS: frames.length * frameS,
    frameS,
    scales,
    bands: scales.map((scale, i) =>
      scale === null || scale.tolerance === null
        ? null
        : bandOf(columns[i], frameS, scale.max - scale.min, scale.tolerance),
    ),
  };
}

export function fitScale(line: LaneLine | null, values: Float64Array): LaneLine | null {
  if (line === null || !line.follows) return line;
  let highest = line.min;
  for (const value of values) highest = Math.max(highest, value);
  return highest > line.min ? { ...line, max: line.min + (highest - line.min) * HEADROOM } : line;
}

/** 0 at the bottom of the scale, 1 at its top; what lies beyond stays at the edge. */
export function shareOf(scale: LaneLine, value: number): number {
  return Math.min(1, Math.max(0, (value - scale.min) / (scale.max - scale.min)));
}
