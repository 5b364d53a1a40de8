import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Action, createRun, type RunSetup } from '../../src/engine/index.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { soundSetup } from '../faults/exercises.ts';
import { library } from '../support/library.ts';

const UNTIL_S = 90;

/** Anything a technician can do to this plant, sensible or not. */
function anyAct(setup: RunSetup): fc.Arbitrary<Action> {
  const scout = createRun(setup);
  const works = scout.parts().flatMap(({ part, ways }) => ways.map((way) => ({ part, way })));
  const places = [...scout.setup.plant.wiring.rungs.flat(), 'no such place'];
  const place = fc.constantFrom(...places);
  const servo = fc.constantFrom('damper', 'fuel-valve', 'no such servo');
  const share = fc.integer({ min: 0, max: 10 }).map((n) => n / 10);
  return fc.oneof(
    fc.constantFrom(...works).map(({ part, way }): Action => ({ type: 'repair', part, way })),
    fc
      .tuple(fc.constantFrom(...scout.settings()), share)
      .map(([{ part, setting, min, max }, s]): Action => {
        return { type: 'adjust', part, setting, value: min + s * (max - min) };
      }),
    fc
      .tuple(fc.constantFrom('isolator', 'cock', 'nothing'), fc.boolean())
      .map(([point, on]): Action => ({ type: 'lock', point, on })),
    fc
      .tuple(place, place, fc.boolean())
      .map(([from, to, on]): Action => ({ type: 'jumper', from, to, on })),
    fc
      .tuple(fc.constantFrom(...scout.setup.plant.field.switches), fc.boolean())
      .map(([{ id }, on]): Action => ({ type: 'jumper', from: `${id}:1`, to: `${id}:2`, on })),
    fc
      .tuple(servo, fc.integer({ min: -1, max: 90 }))
      .map(([id, deg]): Action => ({ type: 'stroke', servo: id, deg })),
    fc.boolean().map((on): Action => ({ type: 'supply', on })),
    share.map((opening): Action => ({ type: 'turn-cock', cock: 'cock', opening })),
    place.map((at): Action => ({ type: 'check', what: 'volts', place: at, other: 'N' })),
  );
}

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (id, plant) => {
  it('a job done live, put back as a log, is the same job', () => {
    const sound = soundSetup(id);
    const faults = faultsOf(plant);
    const orders = fc.array(
      fc
        .tuple(fc.constantFrom(...faults), fc.boolean())
        .map(([{ id: fault, severity, onsets }, comesAndGoes]): RunSetup['faults'][number] => ({
          fault,
          severity: severity.high,
          onset:
            comesAndGoes && onsets.includes('intermittent')
              ? { kind: 'intermittent', fromS: 5, periodS: 10, duty: 0.5 }
              : { kind: 'start' },
        })),
      { maxLength: 3 },
    );
    const moment = fc.integer({ min: 0, max: 8000 });
    fc.assert(
      fc.property(
        orders,
        fc.array(fc.tuple(moment, anyAct(sound)), { minLength: 1, maxLength: 14 }),
        (orders, things) => {
          const setup = { ...sound, faults: orders };
          const before = JSON.stringify(setup);
          const live = createRun(setup);
          for (const [at, action] of [...things].sort((a, b) => a[0] - b[0])) {
            live.advanceTo(at / 100);
            live.act(action);
            live.bench();
            live.settings();
          }
          live.advanceTo(UNTIL_S);
          const again = createRun({ ...setup, actions: live.log() });
          again.advanceTo(UNTIL_S);
          expect(again.hash()).toBe(live.hash());
          expect(again.bench()).toEqual(live.bench());
          expect(again.settings()).toEqual(live.settings());
          expect(again.standingFaults()).toEqual(live.standingFaults());
          for (const what of live.lookPlaces()) expect(again.look(what)).toEqual(live.look(what));
          expect(JSON.stringify(setup)).toBe(before);
        },
      ),
      { seed: 53, numRuns: 12 },
    );
  }, 60_000);
});
