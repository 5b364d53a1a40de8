import { type ChannelIndex, readAt } from '../channels.ts';
import { bitOf, isSet, type Vocabulary } from '../vocabulary.ts';
import type { StepMark } from './alignment.ts';
import { createDecimatedSeries, type DecimatedSeries } from './decimated-series.ts';
import type { Lane } from './lanes.ts';

/** What a lane keeps of a run. */
export interface LaneTrack {
  readonly lane: Lane;
  readonly line: DecimatedSeries;
  readonly asked: DecimatedSeries;
  /** One series a command of the lane. */
  readonly commanded: readonly DecimatedSeries[];
  readonly proved: DecimatedSeries;
}

/** A run as the chart keeps it: its lanes decimated, its steps whole. */
export interface LaneStore {
  readonly tracks: readonly LaneTrack[];
  readonly marks: readonly StepMark[];
  /** Time of the first frame kept, and of the one after the last. */
  readonly originS: number;
  readonly endS: number;
  readonly count: number;
  append(frames: readonly Float64Array[], t0S: number): void;
  clear(): void;
}

export function createLaneStore(
  lanes: readonly Lane[],
  channels: ChannelIndex,
  vocabulary: Vocabulary,
  frameS: number,
): LaneStore {
  const commands = channels.indexOf('logic.commands');
  const inputs = channels.indexOf('logic.inputs');
  const stepPlace = channels.indexOf('logic.step');
  const word = (names: readonly string[], known: readonly string[]): number =>
    names.reduce((bits, name) => bits | bitOf(known, name), 0);
  const sources = lanes.map((lane) => ({
    line: channels.indexOf(lane.line?.channel ?? ''),
    asked: channels.indexOf(lane.asked ?? ''),
    commanded: lane.commanded.map((name) => bitOf(vocabulary.commands, name)),
    proved: word(lane.proved, vocabulary.inputs),
  }));
  const tracks = lanes.map((lane) => ({
    lane,
    line: createDecimatedSeries(),
    asked: createDecimatedSeries(),
    commanded: lane.commanded.map(() => createDecimatedSeries()),
    proved: createDecimatedSeries(),
  }));
  let marks: StepMark[] = [];
  let originS = 0;
  let count = 0;

  function truncate(next: number): void {
    count = next;
    for (const { line, asked, commanded, proved } of tracks) {
      for (const series of [line, asked, ...commanded, proved]) series.truncate(next);
    }
    const endS = originS + next * frameS;
    marks = marks.filter((mark) => mark.tS < endS - frameS / 2);
  }

  return {
    tracks,
    get marks() {
      return marks;
    },
    get originS() {
      return originS;
    },
    get endS() {
      return originS + count * frameS;
    },
    get count() {
      return count;
    },
    append(frames, t0S) {
      if (frames.length === 0) return;
      if (count === 0) originS = t0S;
      const first = Math.round((t0S - originS) / frameS);
      if (first > count) {
        throw new RangeError(`frames from ${originS + count * frameS} s to ${t0S} s are missing`);
      }
      if (first < 0) {
        truncate(0);
        originS = t0S;
      } else if (first < count) truncate(first);
      for (const frame of frames) {
        const step = readAt(frame, stepPlace);
        if (marks.length === 0 || marks[marks.length - 1].step !== step) {
          marks.push({ step, tS: originS + count * frameS });
        }
        const commandWord = readAt(frame, commands);
        const inputWord = readAt(frame, inputs);
        for (let i = 0; i < tracks.length; i += 1) {
          const track = tracks[i];
          const source = sources[i];
          track.line.push(readAt(frame, source.line));
          track.asked.push(readAt(frame, source.asked));
          for (let k = 0; k < track.commanded.length; k += 1) {
            track.commanded[k].push(isSet(commandWord, source.commanded[k]) ? 1 : 0);
          }
          track.proved.push((inputWord & source.proved) !== 0 ? 1 : 0);
        }
        count += 1;
      }
    },
    clear() {
      truncate(0);
      marks = [];
    },
  };
}

/** The value of a series at a time; the nearest one kept where the run is coarser. */
export function valueAt(
  series: DecimatedSeries,
  store: LaneStore,
  tS: number,
  frameS: number,
): number {
  if (series.buckets === 0) return Number.NaN;
  const frame = Math.floor((tS - store.originS) / frameS + 1e-6);
  const bucket = Math.floor(Math.max(0, frame) / series.bucketSize);
  return series.lastOf(Math.min(series.buckets - 1, bucket));
}
