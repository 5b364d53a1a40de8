import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import { createFeedControl, stepFeedControl } from '../../src/field/feed-control.ts';
import {
  type LevelProbeParameters,
  levelProbeParameters,
  modulatingFeedParameters,
  onOffFeedParameters,
} from '../../src/field/index.ts';
import { createLevelProbe, stepLevelProbe } from '../../src/field/level-probe.ts';
import { createRandom } from '../../src/numeric/index.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.1;

function probe(given: Partial<LevelProbeParameters> = {}) {
  return createLevelProbe(
    fillDefaults(levelProbeParameters, { id: 'probe', lowM: -0.2, highM: 0.2, lagS: 2, ...given }),
    createRandom(1, 'probe'),
    STEP_S,
  );
}

function shown(levelM: number, given: Partial<LevelProbeParameters> = {}): number {
  const p = probe(given);
  for (let i = 0; i < 10; i++) stepLevelProbe(p, levelM);
  return p.readingM;
}

describe('level probe', () => {
  it('shows the level within its range', () => {
    expect(shown(0.05)).toBeCloseTo(0.05, 9);
    expect(shown(-0.4)).toBeCloseTo(-0.2, 9);
    expect(shown(0.4)).toBeCloseTo(0.2, 9);
  });

  it('with a film shows most too much where there is least water', () => {
    // Wetted share w reads as w + f(1 − w): −0.1 m is w = ¼, so f = ½ reads 5/8 of 0.4 m.
    expect(shown(-0.1, { fouling: 0.5 })).toBeCloseTo(0.05, 9);
    expect(shown(0.2, { fouling: 0.5 })).toBeCloseTo(0.2, 9);
  });

  it('with leaking insulation never shows low water', () => {
    expect(shown(-0.2, { insulationLeak: 0.6 })).toBeCloseTo(0.04, 9);
    expect(shown(0.1, { insulationLeak: 0.6 })).toBeCloseTo(0.2, 9);
  });

  it('never shows less water than there is, however fouled or leaking, and stays in its range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (levelM, fouling, insulationLeak) => {
          const reading = shown(levelM, { fouling, insulationLeak });
          expect(reading).toBeGreaterThanOrEqual(levelM - 1e-9);
          expect(reading).toBeLessThanOrEqual(0.2 + 1e-9);
        },
      ),
      { seed: 7 },
    );
  });
});

describe('feed control', () => {
  const modulating = (feedForward: number) => {
    const p = probe();
    const control = createFeedControl(
      fillDefaults(modulatingFeedParameters, {
        id: 'feed',
        kind: 'modulating',
        probe: 'probe',
        bandM: 0.2,
        feedForward,
        fullSteamKgS: 4,
      }),
      [p],
      createContactBoard(),
    );
    return (levelM: number, steamKgS: number) => {
      for (let i = 0; i < 300; i++) stepLevelProbe(p, levelM);
      stepFeedControl(control, steamKgS, STEP_S);
      return control.demand;
    };
  };

  it('opens the valve as the level falls, over its band', () => {
    const demand = modulating(0);
    expect(demand(0, 3)).toBeCloseTo(0.5, 6);
    expect(demand(-0.05, 3)).toBeCloseTo(0.75, 6);
    expect(demand(-0.15, 3)).toBe(1);
    expect(demand(0.15, 3)).toBe(0);
  });

  it('with the steam flow ahead gives the water that goes, before the level says so', () => {
    const demand = modulating(1);
    expect(demand(0, 1)).toBeCloseTo(0.25, 6);
    expect(demand(0, 3)).toBeCloseTo(0.75, 6);
    // Swollen by 5 cm after a rise of load: two elements still open the valve, one would shut it.
    expect(demand(0.05, 4)).toBeGreaterThan(demand(0, 2));
    expect(modulating(0)(0.05, 4)).toBeLessThan(modulating(0)(0, 2));
  });

  it('starts the pump low, stops it high, and rides out a wave', () => {
    const p = probe({ lagS: 0 });
    const control = createFeedControl(
      fillDefaults(onOffFeedParameters, {
        id: 'feed',
        kind: 'on-off',
        probe: 'probe',
        onM: -0.02,
        offM: 0.02,
        dwellS: 2,
      }),
      [p],
      createContactBoard(),
    );
    const hold = (levelM: number, seconds: number) => {
      for (let i = 0; i < Math.round(seconds / STEP_S); i++) {
        stepLevelProbe(p, levelM);
        stepFeedControl(control, 0, STEP_S);
      }
      return [control.pump.contact.made, control.demand];
    };
    expect(hold(0, 10)).toEqual([false, 0]);
    expect(hold(-0.05, 1.5)).toEqual([false, 0]);
    expect(hold(0, 1)).toEqual([false, 0]);
    expect(hold(-0.03, 3)).toEqual([true, 1]);
    expect(hold(0.01, 30)).toEqual([true, 1]);
    expect(hold(0.03, 3)).toEqual([false, 0]);
  });

  it('is refused without its probe', () => {
    const parameters = fillDefaults(onOffFeedParameters, {
      id: 'feed',
      kind: 'on-off',
      probe: 'another',
      onM: -0.02,
      offM: 0.02,
    });
    expect(() => createFeedControl(parameters, [probe()], createContactBoard())).toThrow(
      RangeError,
    );
  });
});
