import { describe, expect, it } from 'vitest';
import {
  createGasTrain,
  findEdge,
  prepareGasTrain,
  setBlade,
} from '../../../src/plant/gas/index.ts';
import { edgeOf, flowOf, largeTrain, power, pressureOf, run, stemOf } from './fixtures.ts';

/** Seconds until the stem stops moving. */
function travelTime(train: ReturnType<typeof createGasTrain>, id: string): number {
  let timeS = 0;
  for (let previous = -1; stemOf(train, id) !== previous; timeS += 0.01) {
    previous = stemOf(train, id);
    run(train, 0.01);
  }
  return timeS - 0.01;
}

describe('powered valve', () => {
  it('opens in its opening time and closes within a second', () => {
    const train = createGasTrain(largeTrain());
    power(train, 'upstream-valve', true);
    expect(travelTime(train, 'upstream-valve')).toBeCloseTo(12, 1);
    expect(stemOf(train, 'upstream-valve')).toBe(1);
    power(train, 'upstream-valve', false);
    expect(travelTime(train, 'upstream-valve')).toBeLessThanOrEqual(1);
    expect(stemOf(train, 'upstream-valve')).toBe(0);
  });

  it('opens its fast part fast and the rest slowly', () => {
    const parameters = largeTrain();
    const valve = edgeOf(parameters, 'upstream-valve', 'shutoff');
    valve.fastOpenFraction = 0.4;
    const train = createGasTrain(parameters);
    power(train, 'upstream-valve', true);
    run(train, 0.08);
    expect(stemOf(train, 'upstream-valve')).toBeCloseTo(0.4, 6);
    run(train, 1.2);
    expect(stemOf(train, 'upstream-valve')).toBeCloseTo(0.5, 6);
  });

  it('is tight through the last part of its stroke: flow stops before the stem does', () => {
    const train = createGasTrain(largeTrain());
    power(train, 'vent-valve', true);
    run(train, 5);
    power(train, 'upstream-valve', true);
    run(train, 0.55);
    expect(stemOf(train, 'upstream-valve')).toBeGreaterThan(0.045);
    expect(pressureOf(train, 'interspace')).toBeLessThan(5);
    run(train, 1);
    expect(pressureOf(train, 'interspace')).toBeGreaterThan(9000);
  });

  it('does nothing with a broken coil; a normally open one then stays open', () => {
    const parameters = largeTrain();
    edgeOf(parameters, 'upstream-valve', 'shutoff').coilIntact = false;
    edgeOf(parameters, 'vent-valve', 'shutoff').coilIntact = false;
    const train = createGasTrain(parameters);
    power(train, 'upstream-valve', true);
    power(train, 'vent-valve', true);
    run(train, 5);
    expect(stemOf(train, 'upstream-valve')).toBe(0);
    expect(stemOf(train, 'vent-valve')).toBe(1);
  });

  it('drops out when its coil breaks while open, and comes back with the repair', () => {
    const train = createGasTrain(largeTrain());
    power(train, 'downstream-valve', true);
    run(train, 3);
    const valve = edgeOf(train.parameters, 'downstream-valve', 'shutoff');
    valve.coilIntact = false;
    prepareGasTrain(train);
    run(train, 1);
    expect(stemOf(train, 'downstream-valve')).toBe(0);
    valve.coilIntact = true;
    prepareGasTrain(train);
    run(train, 3);
    expect(stemOf(train, 'downstream-valve')).toBe(1);
  });

  it('stuck part open keeps passing; stuck shut never opens; neither is thrown there', () => {
    const train = createGasTrain(largeTrain());
    const downstream = edgeOf(train.parameters, 'downstream-valve', 'shutoff');
    downstream.stuckOpenFraction = 0.3;
    prepareGasTrain(train);
    run(train, 1);
    expect(stemOf(train, 'downstream-valve')).toBe(0);
    power(train, 'downstream-valve', true);
    run(train, 3);
    power(train, 'downstream-valve', false);
    run(train, 3);
    expect(stemOf(train, 'downstream-valve')).toBe(0.3);
    const vent = edgeOf(train.parameters, 'vent-valve', 'shutoff');
    vent.stuckShutFraction = 0;
    prepareGasTrain(train);
    run(train, 1);
    expect(stemOf(train, 'vent-valve')).toBe(1);
    power(train, 'vent-valve', true);
    run(train, 1);
    power(train, 'vent-valve', false);
    run(train, 3);
    expect(stemOf(train, 'vent-valve')).toBe(0);
  });
});

describe('control valve', () => {
  it('follows its shaft, less the slip of the coupling; only the blade counts for flow', () => {
    const train = createGasTrain(largeTrain());
    const fuel = findEdge(train, 'fuel-valve');
    for (const id of ['vent-valve', 'upstream-valve', 'downstream-valve']) power(train, id, true);
    setBlade(train, fuel, 30);
    run(train, 20);
    const at30 = flowOf(train, 'nozzle');
    edgeOf(train.parameters, 'fuel-valve', 'control').shaftSlipDeg = -15;
    prepareGasTrain(train);
    run(train, 5);
    expect(train.bladeDeg[fuel]).toBe(15);
    const slipped = flowOf(train, 'nozzle');
    expect(slipped).toBeLessThan(0.5 * at30);
    setBlade(train, fuel, 45);
    run(train, 5);
    // Regulated pressure is the same again to a fraction of a pascal.
    expect(flowOf(train, 'nozzle') / at30).toBeCloseTo(1, 4);
  });

  it('never turns its blade beyond 0° or 90°', () => {
    const train = createGasTrain(largeTrain());
    const fuel = findEdge(train, 'fuel-valve');
    edgeOf(train.parameters, 'fuel-valve', 'control').shaftSlipDeg = 20;
    prepareGasTrain(train);
    setBlade(train, fuel, 85);
    expect(train.bladeDeg[fuel]).toBe(90);
  });
});
