import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Action, createRun, type FaultOrder, type RunSetup } from '../../src/engine/index.ts';
import { shippedSetup } from '../support/library.ts';

const UNTIL_S = 240;
const healthy = (): RunSetup => shippedSetup('healthy-start');

describe('a run is its log', () => {
  it('same setup, same hash and same events', () => {
    const a = createRun(healthy());
    const b = createRun(healthy());
    a.advanceTo(UNTIL_S);
    b.advanceTo(UNTIL_S);
    expect(b.hash()).toBe(a.hash());
    expect(b.events()).toEqual(a.events());
  });

  it('a run that keeps no frames has the hash of one that keeps them', () => {
    const kept = createRun(healthy());
    const bare = createRun(healthy(), { keep: 'hash only' });
    kept.advanceTo(60);
    bare.advanceTo(60);
    expect(bare.hash()).toBe(kept.hash());
  });

  it('another seed is another run', () => {
    const a = createRun(healthy());
    const b = createRun({ ...healthy(), seed: healthy().seed + 1 });
    a.advanceTo(UNTIL_S);
    b.advanceTo(UNTIL_S);
    expect(b.hash()).not.toBe(a.hash());
  });

  it('however the time is cut into pieces, the run is the same', () => {
    const whole = createRun(healthy());
    whole.advanceTo(200);
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 8000 }), { minLength: 1, maxLength: 40 }),
        (pieces) => {
          const run = createRun(healthy());
          let t = 0;
          for (const piece of pieces) {
            t = Math.min(200, t + piece / 100);
            run.advanceTo(t);
          }
          run.advanceTo(200);
          expect(run.hash()).toBe(whole.hash());
        },
      ),
      { numRuns: 12, seed: 7 },
    );
  });

  it('what was done live, put back as a log, gives the same run', () => {
    const moment = fc.integer({ min: 0, max: 20_000 });
    fc.assert(
      fc.property(fc.array(fc.tuple(moment, anyAction()), { maxLength: 12 }), (things) => {
        const live = createRun(healthy());
        for (const [at, action] of [...things].sort((a, b) => a[0] - b[0])) {
          live.advanceTo(at / 100);
          live.act(action);
        }
        live.advanceTo(UNTIL_S);
        const again = createRun({ ...healthy(), actions: live.log() });
        again.advanceTo(UNTIL_S);
        expect(again.log()).toEqual(live.log());
        expect(again.hash()).toBe(live.hash());
      }),
      { numRuns: 25, seed: 11 },
    );
  });

  it('an act at the very instant of a fault, of a load or of the start falls in the same order again', () => {
    const setup: RunSetup = {
      ...healthy(),
      load: [{ atS: 20, load: 0.6 }],
      faults: [
        { fault: 'regulator droops', severity: 0.3, onset: { kind: 'time', atS: 20 } },
        { fault: 'lens dirty', severity: 0.5, onset: { kind: 'step', step: 'purge' } },
      ],
    };
    const scout = createRun(setup);
    scout.advanceTo(120);
    const purge = scout.events().find((event) => event.type === 'step' && event.step === 'purge');
    const live = createRun(setup);
    for (const t of [0, 20, purge?.t ?? 0]) {
      live.advanceTo(t);
      live.act({ type: 'set-load', load: 0.2 });
      live.act({ type: 'insert-fault', fault: 'regulator droops', severity: 0.1 });
    }
    live.advanceTo(UNTIL_S);
    const again = createRun({ ...setup, actions: live.log() });
    again.advanceTo(UNTIL_S);
    expect(again.events()).toEqual(live.events());
    expect(again.hash()).toBe(live.hash());
  });

  it('a run leaves the data it was given untouched', () => {
    const setup = healthy();
    const before = JSON.stringify(setup);
    const run = createRun(setup);
    run.act({ type: 'insert-fault', fault: 'regulator droops', severity: 0.5 });
    run.act({ type: 'turn-cock', cock: 'cock', opening: 0.3 });
    run.advanceTo(60);
    expect(JSON.stringify(setup)).toBe(before);
  });

  it.each([
    [{ kind: 'intermittent' }, 'undefined, undefined, undefined'],
    [{ kind: 'intermittent', fromS: 5, periodS: 0, duty: 0.5 }, '5, 0, 0.5'],
    [{ kind: 'intermittent', fromS: 5, periodS: 20, duty: 2 }, '5, 20, 2'],
    [{ kind: 'time' }, 'undefined'],
  ])('an onset of %j is refused by the name of its order', (onset, found) => {
    const order = { fault: 'lens dirty', severity: 0.5, onset } as unknown as FaultOrder;
    const sound: FaultOrder = { ...order, onset: { kind: 'start' } };
    const make = () => createRun({ ...healthy(), faults: [sound, order] });
    expect(make).toThrow(RangeError);
    expect(make).toThrow(`faults[1] (lens dirty)`);
    expect(make).toThrow(`found ${found}`);
  });

  it('no recorded number is anything but a number', () => {
    const run = createRun(healthy());
    run.advanceTo(UNTIL_S);
    for (let k = 0; k < run.frameCount(); k++) {
      expect(run.frame(k).every(Number.isFinite)).toBe(true);
    }
  });
});

function anyAction(): fc.Arbitrary<Action> {
  const share = fc.integer({ min: 0, max: 10 }).map((n) => n / 10);
  return fc.oneof(
    fc.boolean().map((on): Action => ({ type: 'call-for-heat', on })),
    fc.boolean().map((pressed): Action => ({ type: 'reset', pressed })),
    fc.boolean().map((pressed): Action => ({ type: 'emergency-stop', pressed })),
    fc.boolean().map((on): Action => ({ type: 'supply', on })),
    share.map((load): Action => ({ type: 'set-load', load })),
    share.map((opening): Action => ({ type: 'turn-cock', cock: 'cock', opening })),
    share.map((rate): Action => ({ type: 'firing', mode: 'hand', rate })),
    fc.constantFrom<Action>(
      { type: 'insert-fault', fault: 'damper shaft slipped', severity: 30 },
      { type: 'insert-fault', fault: 'upstream valve seat passes', severity: 900 },
      { type: 'insert-fault', fault: 'ignition transformer dead', severity: 1 },
      { type: 'clear-fault', fault: 'damper shaft slipped' },
      { type: 'clear-fault', fault: 'upstream valve seat passes' },
    ),
  );
}
