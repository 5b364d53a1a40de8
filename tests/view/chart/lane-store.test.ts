import { describe, expect, it } from 'vitest';
import { indexChannels } from '../../../src/view/channels.ts';
import { createLaneStore, valueAt } from '../../../src/view/chart/lane-store.ts';
import { lanesOf } from '../../../src/view/chart/lanes.ts';
import { channels, frameWith, vocabulary, wordOf } from '../frames.ts';
import { dairy } from '../plants.ts';

const FRAME_S = 0.1;
const lanes = lanesOf(channels, dairy);
const store = () => createLaneStore(lanes, indexChannels(channels), vocabulary, FRAME_S);
const damper = lanes.findIndex(({ id }) => id === 'damper');
const valve = lanes.findIndex(({ id }) => id === 'upstream-valve');

function drive(count: number, fromDeg: number): Float64Array[] {
  return Array.from({ length: count }, (_none, i) =>
    frameWith({ 'logic.step': 1, 'damper.feedback': fromDeg + i }),
  );
}

describe('a run as the chart keeps it', () => {
  it('reads back what was put in, at its time', () => {
    const run = store();
    run.append(drive(50, 0), 0);
    expect(valueAt(run.tracks[damper].line, run, 2, FRAME_S)).toBe(20);
    expect(run.endS).toBeCloseTo(5, 9);
  });

  it('knows when each step was entered', () => {
    const run = store();
    run.append([frameWith({}), frameWith({})], 0);
    run.append(drive(3, 0), 0.2);
    expect(run.marks).toEqual([
      { step: 0, tS: 0 },
      { step: 1, tS: 0.2 },
    ]);
  });

  it('knows commands and proofs by their bits', () => {
    const run = store();
    run.append(
      [
        frameWith({ 'logic.commands': wordOf(vocabulary.commands, 'upstreamValve') }),
        frameWith({ 'logic.inputs': wordOf(vocabulary.inputs, 'upstreamValveClosed') }),
      ],
      0,
    );
    const track = run.tracks[valve];
    expect([track.commanded[0].greatestOf(0), track.commanded[0].greatestOf(1)]).toEqual([1, 0]);
    expect([track.proved.greatestOf(0), track.proved.greatestOf(1)]).toEqual([0, 1]);
  });

  it('goes on from a moment in the past: what came after is replaced, steps and all', () => {
    const run = store();
    run.append([frameWith({}), ...drive(30, 0)], 0);
    run.append([frameWith({ 'logic.step': 3, 'damper.feedback': 77 })], 1);
    expect(run.count).toBe(11);
    expect(run.marks.map(({ step }) => step)).toEqual([0, 1, 3]);
    expect(valueAt(run.tracks[damper].line, run, 1, FRAME_S)).toBe(77);
    expect(valueAt(run.tracks[damper].line, run, 0.9, FRAME_S)).toBe(8);
  });

  it('may begin in mid-run, but has no gaps', () => {
    const run = store();
    run.append(drive(10, 0), 60);
    expect([run.originS, run.endS]).toEqual([60, 61]);
    expect(() => run.append(drive(1, 0), 62)).toThrow(RangeError);
  });
});
