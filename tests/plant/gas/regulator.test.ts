import { describe, expect, it } from 'vitest';
import {
  createGasTrain,
  findEdge,
  type GasTrain,
  type GasTrainParameters,
  prepareGasTrain,
} from '../../../src/plant/gas/index.ts';
import { cock, edgeOf, flowOf, METHANE, pressureOf, regulator, run, stemOf } from './fixtures.ts';

const FULL_AREA_M2 = 1e-3;

/** A regulator that feeds a cock to the open air. */
function bench(rest: Parameters<typeof regulator>[4] = {}): GasTrainParameters {
  return {
    mixture: { ...METHANE },
    temperatureK: 288.15,
    supply: {
      pressureGaugePa: 20000,
      ratedFlowKgS: 0.12,
      ratedDropPa: 500,
      volumeDm3: 40,
      airDm3: 0,
    },
    nodes: [{ id: 'outlet', volumeDm3: 15, startGaugePa: 10000, escapeDm3H: 0 }],
    edges: [
      regulator({ id: 'regulator', from: 'supply', to: 'outlet' }, 1.55e-3, 10000, 770, rest),
      cock({ id: 'load', from: 'outlet', to: 'atmosphere' }, FULL_AREA_M2),
    ],
  };
}

function setLoad(train: GasTrain, opening: number): void {
  edgeOf(train.parameters, 'load', 'cock').opening = opening;
  prepareGasTrain(train);
}

/** Lowest and highest outlet pressure over some seconds. */
function swing(train: GasTrain, seconds: number): number {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < seconds * 100; i++) {
    run(train, 0.01);
    low = Math.min(low, pressureOf(train, 'outlet'));
    high = Math.max(high, pressureOf(train, 'outlet'));
  }
  return high - low;
}

describe('regulator', () => {
  it('droops along its stroke: outlet = setpoint − droop · stroke', () => {
    const train = createGasTrain(bench());
    let previous = Infinity;
    for (const opening of [0.5, 0.65, 0.8, 1]) {
      setLoad(train, opening);
      run(train, 5);
      const outlet = pressureOf(train, 'outlet');
      // Above the soft seat (200 / 770 of the stroke) area is in proportion to stroke.
      expect(stemOf(train, 'regulator')).toBeGreaterThan(0.26);
      expect(outlet).toBeCloseTo(10000 - 770 * stemOf(train, 'regulator'), 0);
      expect(outlet).toBeLessThan(previous);
      previous = outlet;
    }
    // About 5 % from the setpoint at full load.
    expect(previous).toBeGreaterThan(9300);
    expect(previous).toBeLessThan(9700);
  });

  it('gives less pressure with a weak spring, and all of it after the repair', () => {
    const train = createGasTrain(bench());
    run(train, 5);
    const sound = pressureOf(train, 'outlet');
    const spring = edgeOf(train.parameters, 'regulator', 'regulator');
    spring.setpointPa = 6000;
    prepareGasTrain(train);
    run(train, 5);
    expect(pressureOf(train, 'outlet')).toBeLessThan(sound - 3500);
    spring.setpointPa = 10000;
    prepareGasTrain(train);
    run(train, 5);
    expect(pressureOf(train, 'outlet')).toBeCloseTo(sound, 1);
  });

  /** Shuts the load evenly over a time and waits for rest; the outlet pressure then. */
  function lockUp(train: GasTrain, shutS: number): number {
    run(train, 5);
    const steps = Math.round(shutS * 100);
    for (let i = 1; i <= steps; i++) {
      setLoad(train, 1 - i / steps);
      run(train, 0.01);
    }
    run(train, 10);
    return pressureOf(train, 'outlet');
  }

  it('locks up within its lock-up rise when a safety valve shuts behind it', () => {
    const train = createGasTrain(bench());
    const locked = lockUp(train, 0.5);
    expect(locked).toBeGreaterThan(10050);
    // Over the lock-up rise by the gas that passes while the diaphragm lags, and a little creep.
    expect(locked).toBeLessThan(10000 + 200 + 600);
    run(train, 60);
    // A sound seat, 0.1 dm³/h into 15 dm³, raises it by 0.19 Pa/s.
    expect(pressureOf(train, 'outlet') - locked).toBeLessThan(20);
  });

  it('catches gas behind a valve that shuts faster than its diaphragm can follow', () => {
    expect(lockUp(createGasTrain(bench()), 0.01)).toBeGreaterThan(13000);
    const blocked = bench({ breatherBlockedFraction: 0.95 });
    expect(lockUp(createGasTrain(blocked), 0.5)).toBeGreaterThan(13000);
  });

  it('creeps to the inlet pressure when its seat is dirty', () => {
    const train = createGasTrain(bench({ seatLeakDm3H: 200 }));
    setLoad(train, 0);
    run(train, 20);
    expect(pressureOf(train, 'outlet')).toBeGreaterThan(12000);
    run(train, 400);
    expect(pressureOf(train, 'outlet')).toBeGreaterThan(19900);
  });

  it('with friction rests at different pressures after a rise and after a fall of load', () => {
    const outletAfter = (frictionPa: number, from: number) => {
      const train = createGasTrain(bench({ frictionPa }));
      setLoad(train, from);
      run(train, 5);
      for (let i = 1; i <= 2000; i++) {
        setLoad(train, from + (i / 2000) * (0.6 - from));
        run(train, 0.01);
      }
      return pressureOf(train, 'outlet');
    };
    expect(Math.abs(outletAfter(0, 0.3) - outletAfter(0, 0.9))).toBeLessThan(1);
    const band = outletAfter(150, 0.9) - outletAfter(150, 0.3);
    // The band is twice the friction, less what the rounded corners take.
    expect(band).toBeGreaterThan(200);
    expect(band).toBeLessThan(305);
  });

  it.each([0.03, 0.1, 0.25])(
    'at %f of full load hunts when its breather is blocked, and rests when it is clear',
    (load) => {
      const clear = createGasTrain(bench());
      setLoad(clear, load);
      run(clear, 20);
      expect(swing(clear, 10)).toBeLessThan(1);
      const blocked = createGasTrain(bench({ breatherBlockedFraction: 0.9 }));
      setLoad(blocked, 0.5 * load);
      run(blocked, 20);
      setLoad(blocked, load);
      run(blocked, 20);
      const pa = swing(blocked, 10);
      expect(pa).toBeGreaterThan(1000);
      // It swings round its setpoint and neither shuts off nor opens to the main.
      expect(pa).toBeLessThan(15000);
    },
  );

  it('cannot hold its setpoint when the supply is low', () => {
    const parameters = bench();
    parameters.supply.pressureGaugePa = 8000;
    const train = createGasTrain(parameters);
    run(train, 10);
    expect(stemOf(train, 'regulator')).toBeCloseTo(1, 6);
    expect(pressureOf(train, 'outlet')).toBeLessThan(6500);
    expect(flowOf(train, 'load')).toBeCloseTo(flowOf(train, 'regulator'), 8);
    expect(train.edgeIds[findEdge(train, 'regulator')]).toBe('regulator');
  });
});
