import { describe, expect, it } from 'vitest';
import {
  createGasTrain,
  leakAreaForFlow,
  nozzleFlow,
  prepareNozzle,
} from '../../../src/plant/gas/index.ts';
import {
  AMBIENT_PA,
  edgeOf,
  leakingVolume,
  METHANE,
  pressureOf,
  run,
  smallTrain,
} from './fixtures.ts';

/** Reference: gas_train.json, leak_decay: 6 dm³, 100 mbar, 50 dm³/h of CH4 at 15 °C; exact_orifice. */
const DECAY = [
  [5, 88.61189],
  [10, 77.90387],
  [20, 58.53614],
  [30, 41.91188],
  [60, 8.62108],
  [120, 0],
] as const;

/** Reference: gas_train.json, class_A_leak_example: constant leak from 6 dm³ over 300 s. */
const CLASS_A = [
  [0.02, 28.146],
  [0.04, 56.292],
  [0.06, 84.438],
  [0.1, 140.729],
  [0.15, 211.094],
] as const;

/** Reference: gas_train.json, valve_proving: time to half pressure of a constant leak. */
const PROVING = [
  [50, 3, 20, 2.132],
  [50, 12, 100, 42.635],
  [636.34, 12, 100, 3.35],
] as const;

describe('seat leak', () => {
  it('has the reference effective area', () => {
    // gas_train.json, leak_decay: CdA_m2, 1e-4 relative.
    expect(leakAreaForFlow(50, 10000, METHANE, 288.15) / 8.14845e-8).toBeCloseTo(1, 4);
  });

  it('lets a shut volume decay through the network as the exact orifice does', () => {
    const train = leakingVolume(6, leakAreaForFlow(50, 10000, METHANE, 288.15), 10000);
    let timeS = 0;
    for (const [atS, mbar] of DECAY) {
      run(train, atS - timeS);
      timeS = atS;
      // First order in the step: half a step's fall, below 0.01 mbar.
      expect(Math.abs(pressureOf(train, 'volume') / 100 - mbar)).toBeLessThan(0.01);
    }
  });

  it.each(CLASS_A)('of a sound valve, %f dm³/h, drops 6 dm³ by %f Pa in 300 s', (dm3H, dropPa) => {
    const train = leakingVolume(6, leakAreaForFlow(dm3H, 10000, METHANE, 288.15), 10000);
    run(train, 300);
    // The reference keeps the leak constant; an orifice's falls with its pressure, by dp/(4·p).
    expect(Math.abs((10000 - pressureOf(train, 'volume')) / dropPa - 1)).toBeLessThan(
      dropPa / 20000,
    );
  });

  it.each(PROVING)(
    'of %f dm³/h halves %i dm³ at %i mbar in the time of decay arithmetic',
    (dm3H, volume, mbar, constantS) => {
      const train = leakingVolume(
        volume,
        leakAreaForFlow(dm3H, mbar * 100, METHANE, 288.15),
        mbar * 100,
      );
      let timeS = 0;
      while (pressureOf(train, 'volume') > mbar * 50) {
        run(train, 0.01);
        timeS += 0.01;
      }
      // An orifice takes 2·(1 − √½)/½ = 1.1716 times as long as a constant leak; compressibility 1 %.
      expect(Math.abs(timeS / constantS / 1.1716 - 1)).toBeLessThan(0.01);
    },
  );

  it('of both seats settles the interspace where the two flows are equal', () => {
    const parameters = smallTrain();
    const upstream = edgeOf(parameters, 'upstream-valve', 'shutoff');
    const downstream = edgeOf(parameters, 'downstream-valve', 'shutoff');
    upstream.seatLeakDm3H = 300;
    downstream.seatLeakDm3H = 200;
    const train = createGasTrain(parameters);
    run(train, 300);
    const curve = prepareNozzle(train.gas.heatCapacityRatio);
    const sourcePa = AMBIENT_PA + pressureOf(train, 'regulated');
    let low = AMBIENT_PA;
    let high = sourcePa;
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      const fills =
        nozzleFlow(curve, 300, sourcePa, middle) > nozzleFlow(curve, 200, middle, AMBIENT_PA);
      if (fills) low = middle;
      else high = middle;
    }
    // The far side of the downstream valve stands at the furnace through an open nozzle: 0.2 Pa.
    expect(Math.abs(pressureOf(train, 'interspace') - (low - AMBIENT_PA))).toBeLessThan(0.5);
    // For small differences the flows go with √Δp: p = ps·C1²/(C1² + C2²).
    expect(
      Math.abs(pressureOf(train, 'interspace') / pressureOf(train, 'regulated') - 9 / 13),
    ).toBeLessThan(0.01);
  });
});
