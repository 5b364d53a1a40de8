/** A run as an exercise has it: come to, worked on, left and come back to. A toy plant, a counting bench. */
import { beforeEach, describe, expect, it } from 'vitest';
import type { RunHost } from '../../../src/app/session/host-ports.ts';
import type { Status, ToPage } from '../../../src/app/session/protocol.ts';
import { createRunHost } from '../../../src/app/session/run-host.ts';
import type { Opening, ToWorker } from '../../../src/app/session/to-worker.ts';
import type { WorkKind } from '../../../src/app/session/work-protocol.ts';
import type { TimedAction } from '../../../src/engine/index.ts';
import { type Bench, createBench } from './toy-run.ts';

const ARRIVES_S = 15;
const OWN: TimedAction[] = [
  { t: 2, type: 'supply', on: false },
  { t: 40, type: 'supply', on: true },
];

let bench: Bench;
let host: RunHost;

function open(kind: WorkKind, how: Partial<Opening> = {}): void {
  bench = createBench(OWN, ARRIVES_S);
  host = createRunHost(bench.ports);
  tell({ type: 'open', kind, id: 'toy', ...how });
}
function tell(...messages: ToWorker[]): void {
  for (const message of messages) host.receive(message);
}
function run(realS: number): void {
  for (let i = 0; i < realS * 40; i += 1) {
    bench.clockMs += 25;
    host.tick();
  }
}
function posted<T extends ToPage['type']>(type: T): Extract<ToPage, { type: T }>[] {
  return bench.posted.filter((message) => message.type === type) as Extract<ToPage, { type: T }>[];
}
function status(): Status {
  return posted('batch').at(-1)?.status as Status;
}
function log(): readonly TimedAction[] {
  return posted('log').at(-1)?.log ?? [];
}
function plant<K extends 'bench' | 'meters' | 'minutes'>(key: K) {
  return posted('batch').findLast((batch) => batch.plant?.[key] !== undefined)?.plant?.[key];
}
const act = (action: Extract<ToWorker, { type: 'act' }>['action']): void =>
  tell({ type: 'act', action });

describe('a job', () => {
  beforeEach(() => open('job'));

  it('opens paused when the learner comes, with what was done before and what is still to come', () => {
    expect(status()).toMatchObject({ mode: 'paused', timeS: ARRIVES_S, headS: ARRIVES_S });
    expect(log()).toEqual(OWN);
    expect(plant('bench')).toMatchObject({ supplyOn: false });
  });

  it('goes on where it was left: the same run, hash by hash', () => {
    tell({ type: 'play', speed: 5 });
    run(1);
    act({ type: 'call-for-heat', on: true });
    run(3);
    act({ type: 'reset', pressed: true });
    run(1);
    act({ type: 'reset', pressed: false });
    run(0.5);
    tell({ type: 'pause' });
    const left = { ...status(), log: log() };
    open('job', { log: [...left.log], untilS: left.headS, hash: left.hash, setupHash: 'toy' });
    expect(status()).toMatchObject({ timeS: left.headS, hash: left.hash });
    expect(posted('failed')).toEqual([]);
    expect(log()).toEqual(left.log);
  });

  it('does what was pending when the page was closed', () => {
    open('job', { log: OWN, untilS: 20, pending: [{ type: 'lock', point: 'isolator', on: true }] });
    expect(log()).toContainEqual({ t: 20, type: 'lock', point: 'isolator', on: true });
    expect(plant('bench')).toMatchObject({ locks: ['isolator'] });
  });

  it('lets a button go that was held when the page was closed, and no sooner than it may', () => {
    const pressed: TimedAction = { t: 20, type: 'reset', pressed: true };
    open('job', { log: [...OWN, pressed], untilS: 30 });
    expect(log()).toContainEqual({ t: 30, type: 'reset', pressed: false });
    open('job', { log: [...OWN, pressed], untilS: 20.1 });
    tell({ type: 'play', speed: 1 });
    run(1);
    expect(log()).toContainEqual({ t: 20.3, type: 'reset', pressed: false });
  });

  it('is not opened with work of another setup, and says so', () => {
    open('job', { log: OWN, untilS: 20, setupHash: 'before the update' });
    expect(posted('failed')[0]?.failure).toBe('exercise changed');
    expect(posted('opened')).toEqual([]);
  });

  it('is opened when the engine makes another run of the log, and says so', () => {
    open('job', { log: OWN, untilS: 20, setupHash: 'toy', hash: 'of the old engine' });
    expect(posted('failed')[0]?.failure).toBe('work differs');
    expect(status().timeS).toBe(20);
  });

  it('cannot be taken back: a seek leaves the plant where it is', () => {
    tell({ type: 'play', speed: 20 });
    run(1);
    tell({ type: 'seek', tS: 16 });
    expect(status()).toMatchObject({ timeS: 35, headS: 35, mode: 'paused' });
    act({ type: 'call-for-heat', on: true });
    expect(posted('cut')).toEqual([]);
    expect(log().at(-2)).toMatchObject({ t: 35, type: 'call-for-heat' });
  });

  it('shows what a hand did while its clock stands still', () => {
    act({ type: 'lock', point: 'isolator', on: true });
    expect(plant('bench')).toMatchObject({ locks: ['isolator'] });
    expect(status()).toMatchObject({ mode: 'paused', timeS: ARRIVES_S + 0.1 });
  });

  it('refuses nothing by name but what the exercise does not allow', () => {
    open('job');
    const facts = posted('opened')[0]?.facts;
    expect(facts?.work).toMatchObject({ kind: 'job', rewinds: false });
  });
});

describe('tools at work', () => {
  const use = { tool: 'manometer', place: 'inlet', range: 'low' } as const;

  beforeEach(() => open('job'));

  it('are read five times a second while it runs, once when it stands', () => {
    tell({ type: 'meters', uses: [use] });
    tell({ type: 'play', speed: 1 });
    const before = Number(shown());
    run(2);
    expect(Number(shown()) - before).toBeLessThanOrEqual(11);
    expect(Number(shown()) - before).toBeGreaterThanOrEqual(9);
    tell({ type: 'pause' });
    run(2);
    const paused = Number(shown());
    run(2);
    expect(Number(shown())).toBe(paused);
  });

  it('keep what they remember while others come and go', () => {
    tell({ type: 'meters', uses: [use] }, { type: 'play', speed: 20 });
    run(1);
    tell({ type: 'meters', uses: [use, { ...use, place: 'outlet' }] });
    expect(plant('meters')?.map(({ reading }) => reading?.value)).toEqual([20, 0]);
    tell({ type: 'meters', uses: [use] });
    expect(plant('meters')?.map(({ reading }) => reading?.value)).toEqual([20]);
  });

  it('say why they cannot be connected there', () => {
    tell({ type: 'meters', uses: [{ ...use, place: 'nowhere' }] });
    expect(plant('meters')?.[0]).toMatchObject({
      reading: null,
      issue: { mend: { code: 'mend' } },
    });
  });

  it('leave the run as it is', () => {
    tell({ type: 'play', speed: 20 });
    run(1);
    const without = status().hash;
    open('job');
    tell({ type: 'meters', uses: [use, { ...use, place: 'outlet' }] }, { type: 'play', speed: 20 });
    run(1);
    expect(status().hash).toBe(without);
  });

  const shown = () => plant('meters')?.[0]?.reading?.shown;
});

describe('what is asked at work', () => {
  const answers = () => posted('answer').map(({ ask, answer }) => ({ ask, ...answer }));

  it('is answered by number: eyes, ears, nose', () => {
    open('job');
    tell(
      { type: 'ask', ask: 7, question: { of: 'look', what: 'fuses' } },
      { type: 'ask', ask: 8, question: { of: 'look', what: 'belt' } },
      { type: 'ask', ask: 9, question: { of: 'listen' } },
      { type: 'ask', ask: 10, question: { of: 'smell' } },
    );
    expect(answers()).toEqual([
      {
        ask: 7,
        of: 'look',
        reading: { what: 'fuses', values: {}, words: [], needsOpening: false },
      },
      { ask: 8, of: 'look', reading: null },
      { ask: 9, of: 'listen', heard: [{ what: 'fan', loudness: 0.5 }] },
      { ask: 10, of: 'smell', share: 0.25 },
    ]);
  });

  it('counts minutes of acts and paper as they come', () => {
    open('job');
    expect(plant('minutes')).toMatchObject({ total: OWN.length });
    tell({ type: 'desk', entries: [{ t: 15, type: 'begin' }] });
    act({ type: 'call-for-heat', on: true });
    expect(plant('minutes')).toMatchObject({ total: OWN.length + 2 });
  });

  it('judges what was done up to where the run has come', () => {
    open('job');
    const judge: ToWorker = { type: 'ask', ask: 1, question: { of: 'judge', desk: [] } };
    tell(judge, { type: 'play', speed: 20 });
    run(1);
    tell({ ...judge, ask: 2 });
    expect(answers().map((one) => one.of === 'judge' && one.verdict.proof?.proved)).toEqual([
      false,
      true,
    ]);
    expect(answers()[1]).toMatchObject({
      verdict: { conduct: [], truth: { faults: [] }, standing: [], held: { held: true } },
    });
    expect(status().timeS).toBe(35);
  });

  it('says when a question breaks, and goes on', () => {
    open('job');
    bench.ports.bench.proof = () => {
      throw new Error('no proof today');
    };
    tell({ type: 'ask', ask: 3, question: { of: 'proof', desk: [] } }, { type: 'play', speed: 1 });
    expect(answers()).toEqual([{ ask: 3, of: 'nothing', why: 'no proof today' }]);
    run(1);
    expect(status().timeS).toBeCloseTo(16, 6);
  });
});

describe('a lesson', () => {
  beforeEach(() => open('lesson', { untilS: 0 }));

  it('stops on entering each step while it is asked to', () => {
    tell({ type: 'stop at', what: 'each step' }, { type: 'play', speed: 20 });
    run(2);
    expect(status()).toMatchObject({ mode: 'paused', timeS: 10 });
    tell({ type: 'play', speed: 20 });
    run(5);
    expect(status()).toMatchObject({ mode: 'paused', timeS: 50 });
    tell({ type: 'seek', tS: 0 }, { type: 'stop at', what: null }, { type: 'play', speed: 20 });
    run(5);
    expect(status().timeS).toBeCloseTo(100, 6);
  });

  it('puts back what was broken: the run of before, and its own acts still to come', () => {
    tell({ type: 'play', speed: 20 });
    run(1);
    tell({ type: 'pause' });
    const { hash } = status();
    act({ type: 'insert-fault', fault: 'dirty lens', severity: 1 });
    act({ type: 'reset', pressed: true });
    tell({ type: 'play', speed: 20 });
    run(2);
    tell({ type: 'put back' });
    expect(status()).toMatchObject({ mode: 'paused', timeS: 20, headS: 20, hash });
    expect(log()).toEqual(OWN);
    expect(posted('cut').at(-1)).toMatchObject({ frames: 201 });
  });

  it('has nothing to put back where nothing was broken', () => {
    tell({ type: 'play', speed: 20 });
    run(1);
    tell({ type: 'put back' });
    expect(posted('cut')).toEqual([]);
    expect(status().headS).toBe(20);
  });

  it('keeps its own acts to come when someone acts in the past', () => {
    tell({ type: 'play', speed: 20 });
    run(3);
    tell({ type: 'seek', tS: 20 });
    act({ type: 'call-for-heat', on: true });
    expect(log().map(({ t }) => t)).toEqual([2, 20, 40]);
  });
});
