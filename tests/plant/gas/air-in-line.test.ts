import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airShareOf,
  createGasTrain,
  findEdge,
  type GasTrain,
  prepareGasTrain,
} from '../../../src/plant/gas/index.ts';
import { flowOf, power, run, STEP_S, smallTrain } from './fixtures.ts';

/** Between supply and nozzle the small train holds 6 dm³. */
const IN_TRAIN_DM3 = 6;

function trainWith(airDm3: number): GasTrain {
  const train = createGasTrain(smallTrain());
  train.parameters.supply.airDm3 = airDm3;
  prepareGasTrain(train);
  return train;
}

/** Air that is in the train and before it, as kg of gas in the same room. */
function airKg(train: GasTrain): number {
  let sum = train.air.plugKg;
  for (let i = 0; i < train.nodeCount; i++) {
    const kg = (train.absolutePa[i] as number) * (train.capacityKgPa[i] as number);
    sum += kg * (train.air.share[i] as number);
  }
  return sum;
}

const shareAtNozzle = (train: GasTrain) => airShareOf(train, findEdge(train, 'nozzle'));

describe('air left in the line', () => {
  it('is what comes out of the nozzle first, and then no more', () => {
    const train = trainWith(20);
    power(train, 'upstream-valve', true);
    power(train, 'downstream-valve', true);
    run(train, 1);
    expect(shareAtNozzle(train)).toBeGreaterThan(0.9);
    run(train, 60);
    expect(shareAtNozzle(train)).toBe(0);
    expect(train.air.present).toBe(false);
  });

  it('takes as long to go as the flow needs to carry it out', () => {
    const goneAfter = (airDm3: number) => {
      const train = trainWith(airDm3);
      power(train, 'upstream-valve', true);
      power(train, 'downstream-valve', true);
      let s = 0;
      for (; shareAtNozzle(train) > 0.5 || s < 1; s += STEP_S) run(train, STEP_S);
      return { s, volumeS: flowOf(train, 'nozzle') };
    };
    const few = goneAfter(30);
    const many = goneAfter(130);
    // 100 dm³ at the pressure of the supply, 1.05 bar, are 0.0702 kg as methane at 15 °C.
    const carryS = 0.0702 / many.volumeS;
    expect(many.s - few.s).toBeGreaterThan(0.97 * carryS);
    expect(many.s - few.s).toBeLessThan(1.03 * carryS);
  });

  it('waits where no gas flows', () => {
    const train = trainWith(IN_TRAIN_DM3);
    run(train, 300);
    const before = airKg(train);
    run(train, 600);
    expect(airKg(train)).toBeGreaterThan(0.99 * before);
  });

  it('neither grows nor vanishes, whatever the valves do', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.boolean(), fc.boolean(), fc.integer({ min: 1, max: 200 })), {
          minLength: 1,
          maxLength: 8,
        }),
        fc.integer({ min: 1, max: 60 }),
        (acts, airDm3) => {
          const train = trainWith(airDm3);
          const nozzle = findEdge(train, 'nozzle');
          const start = airKg(train);
          let out = 0;
          for (const [upstream, downstream, steps] of acts) {
            power(train, 'upstream-valve', upstream);
            power(train, 'downstream-valve', downstream);
            for (let i = 0; i < steps; i++) {
              run(train, STEP_S);
              const kg = (train.flowKgS[nozzle] as number) * STEP_S;
              if (kg > 0) out += kg * airShareOf(train, nozzle);
              for (const share of train.air.share) {
                expect(share).toBeGreaterThanOrEqual(0);
                expect(share).toBeLessThanOrEqual(1);
              }
            }
          }
          // The displaced gas of the regulator's diaphragm is not counted as holding air.
          expect(Math.abs(airKg(train) + out - start)).toBeLessThan(0.02 * start + 1e-5);
        },
      ),
      { numRuns: 60, seed: 77 },
    );
  });

  it('is gone when the line has been purged, and changes no flow by being there', () => {
    const pure = trainWith(0);
    const train = trainWith(20);
    for (const one of [pure, train]) {
      power(one, 'upstream-valve', true);
      power(one, 'downstream-valve', true);
      run(one, 2);
    }
    expect([...train.flowKgS]).toEqual([...pure.flowKgS]);
    train.parameters.supply.airDm3 = 0;
    prepareGasTrain(train);
    expect(shareAtNozzle(train)).toBe(0);
    expect(airKg(train)).toBe(0);
  });
});
