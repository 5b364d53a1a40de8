import library from 'virtual:library';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ClassEvent } from '../../../machines/class/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { exerciseSetup } from '../../../src/judging/work/index.ts';
import { setupOf } from '../../../src/scenario/index.ts';
import { entriesOf, opened, openSeat, SEAT } from './seat.ts';

const START = opened('start', 'healthy-start');
const BEGIN: ClassEvent = { type: 'begin' };
const runAt = (speed: number): ClassEvent => ({ type: 'run', to: 'all', speed });
const loadOf = (load: number): ClassEvent => ({
  type: 'do',
  to: 'all',
  acts: [{ type: 'set-load', load }],
});
const FREEZE: ClassEvent = { type: 'freeze', to: 'all' };
const backBy = (byS: number): ClassEvent => ({ type: 'rewind by', to: 'all', byS });

/** The one at which the learner comes the soonest. */
const job = library.jobs.reduce((a, b) => (b.arriveAt < a.arriveAt ? b : a));

const startOfClass = () => openSeat({ kind: 'watch', id: 'healthy-start' });

/** What the saved log makes, run anew. */
function hashOfRecord(seat: ReturnType<typeof startOfClass>): string {
  const setup = setupOf(library, 'healthy-start', { seed: 5 });
  const { record } = seat.work.state.read();
  if (setup === null || record === null) throw new Error('nothing saved');
  const run = createRun({ ...setup, actions: [...record.log] });
  run.advanceTo(record.headS);
  return run.hash();
}

/** Many runs from their start, each several times. */
const LONG_MS = 180_000;

describe('a seat', () => {
  it('waits for the begin, runs at the speed that is said, and stands still while it is frozen', async () => {
    const seat = startOfClass();
    seat.hear(entriesOf(START));
    seat.session.play(20);
    await seat.live(0.5);
    expect(seat.status()).toMatchObject({ timeS: 0, mode: 'paused', frozen: true });
    seat.hear(entriesOf(START, BEGIN));
    await seat.live(2);
    expect(seat.status()).toMatchObject({ mode: 'playing', speed: 1, frozen: false });
    seat.hear(entriesOf(START, BEGIN, runAt(16)));
    await seat.live(2);
    expect(seat.session.headS()).toBeGreaterThan(30);
    seat.hear(entriesOf(START, BEGIN, runAt(16), FREEZE));
    await seat.live(0.2);
    const { headS } = seat.status() ?? { headS: 0 };
    seat.session.play(20);
    seat.session.nextStep();
    seat.session.act({ type: 'call-for-heat', on: false });
    await seat.live(1);
    expect(seat.session.headS()).toBe(headS);
    expect(seat.session.store.read().refusal).toEqual({ why: 'frozen by class', count: 4 });
    expect(seat.session.store.read().failure).toBeNull();
    expect(seat.log().some((act) => act.type === 'call-for-heat' && !act.on)).toBe(false);
  });

  it('is its own again once the class is closed', async () => {
    const seat = startOfClass();
    seat.hear(entriesOf(START, BEGIN, FREEZE, { type: 'close' }));
    await seat.live(0.2);
    expect(seat.status()).toMatchObject({ mode: 'paused', frozen: false });
    seat.session.play(5);
    await seat.live(1);
    expect(seat.session.headS()).toBeGreaterThan(3);
  });

  it('goes to its next step when that is said, and stands there', async () => {
    const seat = startOfClass();
    seat.hear(entriesOf(START, BEGIN, FREEZE, { type: 'next step', to: 'all' }));
    await seat.live(8);
    const steps = seat.session.store
      .read()
      .events.filter(({ t, type }) => type === 'step' && t > 0);
    expect(steps).toHaveLength(1);
    expect(seat.status()).toMatchObject({ mode: 'paused', frozen: true });
  });

  it('takes what is said to it or to all, and nothing that is said to another', async () => {
    const seat = startOfClass();
    const to = { seat: SEAT + 1 };
    seat.hear(
      entriesOf(
        START,
        BEGIN,
        { type: 'do', to, acts: [{ type: 'set-load', load: 0.9 }] },
        { type: 'do', to: { seat: SEAT }, acts: [{ type: 'set-load', load: 0.4 }] },
        { type: 'freeze', to },
      ),
    );
    await seat.live(1);
    expect(seat.log().filter(({ type }) => type === 'set-load')).toMatchObject([{ load: 0.4 }]);
    expect(seat.status()?.frozen).toBe(false);
    expect(seat.work.ofClass.ordered).toMatchObject([{ n: 4, act: 0 }]);
  });

  it('does nothing behind a gap, and all of it in order when the gap is closed', async () => {
    const seat = startOfClass();
    const all = entriesOf(START, BEGIN, loadOf(0.2), loadOf(0.4), loadOf(0.6));
    seat.hear(all.filter(({ n }) => n !== 4));
    await seat.live(0.5);
    expect(seat.applied).toEqual([1, 2, 3]);
    seat.hear(all);
    await seat.live(0.5);
    expect(seat.applied).toEqual([1, 2, 3, 4, 5]);
    const loads = seat.log().flatMap((act) => (act.type === 'set-load' ? [act.load] : []));
    expect(loads).toEqual([0.2, 0.4, 0.6]);
  });

  it('goes back, and what was done since is gone from its log', async () => {
    const seat = startOfClass();
    seat.hear(entriesOf(START, BEGIN, runAt(16)));
    await seat.live(1);
    seat.hear(entriesOf(START, BEGIN, runAt(16), loadOf(0.3)));
    await seat.live(2);
    const said = [
      START,
      BEGIN,
      runAt(16),
      loadOf(0.3),
      { type: 'rewind', to: 'all', toS: 5 },
    ] as const;
    seat.hear(entriesOf(...said));
    await seat.live(0.3);
    expect(seat.session.headS()).toBe(5);
    expect(seat.log().some(({ type }) => type === 'set-load')).toBe(false);
    expect(seat.work.ofClass).toEqual({ applied: 5, ordered: [] });
    seat.hear(entriesOf(...said, runAt(8)));
    await seat.live(1);
    expect(seat.session.headS()).toBeGreaterThan(10);
    seat.work.saveNow();
    expect(hashOfRecord(seat)).toBe(seat.work.state.read().record?.hash);
  });

  it('does what waits for a step when the run enters it, once, and again after a rewind', async () => {
    const seat = startOfClass();
    const when: ClassEvent = {
      type: 'when',
      id: 'a',
      to: 'all',
      step: 'purge',
      acts: [{ type: 'insert-fault', fault: 'damper jammed short of purge', severity: 25 }],
    };
    const said = [START, when, BEGIN, runAt(64)];
    seat.hear(entriesOf(...said));
    const entered = () =>
      seat.session.store.read().events.find((e) => e.type === 'step' && e.step === 'purge')?.t ?? 0;
    for (let i = 0; i < 40 && seat.work.ofClass.ordered.length === 0; i += 1) await seat.live(0.2);
    await seat.live(0.5);
    const faults = () => seat.log().filter(({ type }) => type === 'insert-fault');
    expect(faults()).toHaveLength(1);
    expect(faults()[0]?.t).toBeGreaterThanOrEqual(entered());
    // At 64 times real time a picture is some seconds of the plant.
    expect(faults()[0]?.t).toBeLessThan(entered() + 10);
    const purgeS = entered();
    seat.hear(entriesOf(...said, { type: 'rewind', to: 'all', toS: purgeS - 5 }, runAt(8)));
    await seat.live(0.3);
    expect(faults()).toHaveLength(0);
    await seat.live(2);
    expect(faults()).toHaveLength(1);
    seat.reload({ saves: true });
    await seat.live(1);
    expect(faults()).toHaveLength(1);
  });

  it('takes off what is locked, and leaves the rest on', async () => {
    const seat = openSeat({ kind: 'job', id: job.id });
    await seat.live(0.2);
    const points = seat.session.store.read().facts?.testPoints ?? [];
    const placeOf = (tool: (typeof points)[number]['tools'][number]) =>
      points.find(({ tools }) => tools.includes(tool))?.id ?? '';
    seat.session.connect({ tool: 'manometer', place: placeOf('manometer') });
    seat.session.connect({ tool: 'flue-gas analyser', place: placeOf('flue-gas analyser') });
    expect(seat.session.meterUses()).toHaveLength(2);
    seat.hear(
      entriesOf(opened('job', job.id), BEGIN, { type: 'lock tools', tools: ['manometer'] }),
    );
    await seat.live(0.2);
    expect(seat.session.meterUses().map(({ tool }) => tool)).toEqual(['flue-gas analyser']);
  });

  it(
    'has everything once in the end, wherever its page was killed and whenever it heard',
    async () => {
      await fc.assert(
        fc.asyncProperty(
          fc.array(anySaying(), { minLength: 3, maxLength: 10 }),
          fc.array(
            fc.record({
              hears: fc.integer({ min: 0, max: 3 }),
              tenths: fc.integer({ min: 0, max: 4 }),
              end: fc.constantFrom('goes on', 'goes on', 'is closed', 'is killed'),
            }),
            { minLength: 6, maxLength: 10 },
          ),
          async (said, happens) => {
            const all = entriesOf(START, BEGIN, runAt(8), ...said);
            const seat = startOfClass();
            let heard = 0;
            for (const { hears, tenths, end } of happens) {
              heard = Math.min(all.length, heard + hears);
              seat.hear(all.slice(0, heard));
              await seat.live(tenths / 10);
              if (end !== 'goes on') seat.reload({ saves: end === 'is closed' });
            }
            seat.hear(all);
            await seat.live(1);
            seat.hear([...all, { n: all.length + 1, atMs: 0, ...FREEZE }]);
            await seat.live(0.3);
            expect(seat.session.store.read().failure).toBeNull();
            expect(seat.work.ofClass.applied).toBe(all.length + 1);
            // Each act of each entry that no rewind cut off is in the log, once and in order.
            const { ordered } = seat.work.ofClass;
            const loads = ordered.map(({ n }) => {
              const entry = all.find((one) => one.n === n);
              return entry?.type === 'do' ? entry.acts[0]?.load : undefined;
            });
            const log = seat.log().filter(({ type }) => type === 'set-load');
            expect(log.map((act) => (act.type === 'set-load' ? act.load : null))).toEqual(loads);
            seat.work.saveNow();
            expect(hashOfRecord(seat)).toBe(seat.work.state.read().record?.hash);
            // Those since the last rewind cannot have been cut off.
            const lastBack = all.findLast(({ type }) => type === 'rewind by')?.n ?? 0;
            const since = all
              .filter(({ n, type }) => n > lastBack && type === 'do')
              .map(({ n }) => n);
            expect(ordered.map(({ n }) => n).filter((n) => n > lastBack)).toEqual(since);
          },
        ),
        { numRuns: 8, seed: 31 },
      );
    },
    LONG_MS,
  );
});

describe('work at a job that is cut', () => {
  it('is what it was then: log, paper, tools and run; and goes on from there as any other', async () => {
    const seat = openSeat({ kind: 'job', id: job.id });
    await seat.live(0.2);
    const arriveS = seat.session.headS();
    const points = seat.session.store.read().facts?.testPoints ?? [];
    const placeOf = (tool: (typeof points)[number]['tools'][number]) =>
      points.find(({ tools }) => tools.includes(tool))?.id ?? '';
    const note = (text: string) =>
      seat.work.putDesk([
        ...seat.work.state.read().desk,
        { t: seat.session.headS(), type: 'note', text },
      ]);
    seat.work.putDesk([{ t: arriveS, type: 'arrive', tools: ['manometer', 'flue-gas analyser'] }]);
    seat.session.connect({ tool: 'manometer', place: placeOf('manometer') });
    seat.session.play(5);
    await seat.live(2);
    note('before');
    const cutS = seat.session.headS() + 3;
    await seat.live(1);
    seat.session.connect({ tool: 'flue-gas analyser', place: placeOf('flue-gas analyser') });
    seat.session.act({ type: 'supply', on: false });
    note('after');
    await seat.live(1);
    const entries = entriesOf(opened('job', job.id), BEGIN, {
      type: 'rewind',
      to: 'all',
      toS: cutS,
    });
    seat.hear(entries);
    await seat.live(0.3);
    const { record } = seat.work.state.read();
    expect(record?.headS).toBeCloseTo(cutS, 1);
    expect(record?.log.filter(({ t }) => t >= arriveS)).toMatchObject([{ type: 'check' }]);
    expect(record?.desk.map(({ type }) => type)).toEqual(['arrive', 'note']);
    expect(seat.session.meterUses().map(({ tool }) => tool)).toEqual(['manometer']);
    expect(record?.ofClass?.applied).toBe(3);
    // The same when it is brought back, and the run that its log says it is.
    seat.reload({ saves: false });
    await seat.live(0.2);
    expect(seat.session.store.read().failure).toBeNull();
    expect(seat.session.headS()).toBeCloseTo(cutS, 1);
    const found = exerciseSetup(library, 'job', job.id, { seed: 5 });
    if (found === null || record === null) throw new Error('no setup');
    const run = createRun({ ...found.setup, actions: [...record.log] });
    run.advanceTo(record.headS);
    expect(run.hash()).toBe(record.hash);
    // Before anyone came there is no going back to.
    seat.hear(
      entriesOf(
        opened('job', job.id),
        BEGIN,
        { type: 'rewind', to: 'all', toS: cutS },
        backBy(1e5),
      ),
    );
    await seat.live(0.3);
    expect(seat.session.headS()).toBe(arriveS);
    expect(seat.work.state.read().desk.map(({ type }) => type)).toEqual(['arrive']);
  });
});

function anySaying(): fc.Arbitrary<ClassEvent> {
  return fc.oneof(
    fc.integer({ min: 1, max: 9 }).map((n) => loadOf(n / 10)),
    fc.integer({ min: 1, max: 9 }).map((n) => loadOf(n / 10)),
    fc.constantFrom(2, 8).map(runAt),
    fc.constant(FREEZE),
    fc.integer({ min: 0, max: 6 }).map(backBy),
    fc.constant<ClassEvent>({ type: 'next step', to: 'all' }),
    fc.constant<ClassEvent>({ type: 'lock tools', tools: ['manometer'] }),
  );
}
