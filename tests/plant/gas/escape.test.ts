/** Joints that leak into the room. */
import { describe, expect, it } from 'vitest';
import {
  createGasTrain,
  escapeKgS,
  findNode,
  type GasTrain,
  gasContentsKg,
  nozzleFlow,
  prepareGasTrain,
  prepareNozzle,
  stepGasTrain,
} from '../../../src/plant/gas/index.ts';
import {
  AMBIENT_PA,
  cock,
  largeTrain,
  METHANE,
  power,
  pressureOf,
  run,
  STEP_S,
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

/** A volume behind a shut cock whose joints let gas out. */
function leakyVolume(escapeDm3H: number): GasTrain {
  const shut = cock({ id: 'cock', from: 'supply', to: 'volume' }, 1e-4);
  shut.opening = 0;
  return createGasTrain({
    mixture: { ...METHANE },
    temperatureK: 288.15,
    supply: { pressureGaugePa: 0, ratedFlowKgS: 0.1, ratedDropPa: 100, volumeDm3: 1, airDm3: 0 },
    nodes: [{ id: 'volume', volumeDm3: 6, startGaugePa: 10000, escapeDm3H }],
    edges: [shut],
  });
}

const escapes = (train: GasTrain, node: string) =>
  escapeKgS(train)[findNode(train, node)] as number;

function leaking(node: string, dm3H: number) {
  const parameters = largeTrain();
  const at = parameters.nodes.find(({ id }) => id === node);
  if (at === undefined) throw new Error(`no node ${node}`);
  at.escapeDm3H = dm3H;
  return parameters;
}

/** Steps a train and returns what came in less what went out, with what escaped and what stayed. */
function summed(train: GasTrain, seconds: number) {
  const before = gasContentsKg(train);
  let inKg = 0;
  let outKg = 0;
  let escapedKg = 0;
  for (let k = 0; k < Math.round(seconds / STEP_S); k++) {
    stepGasTrain(train, 0, AMBIENT_PA, STEP_S);
    for (let e = 0; e < train.edgeCount; e++) {
      const kg = (train.flowKgS[e] as number) * STEP_S;
      if ((train.from[e] as number) >= train.nodeCount) inKg += kg;
      if ((train.to[e] as number) >= train.nodeCount) outKg += kg;
    }
    for (const kgS of escapeKgS(train)) escapedKg += kgS * STEP_S;
  }
  return { inKg, outKg, escapedKg, gainedKg: gasContentsKg(train) - before };
}

describe('a joint that leaks into the room', () => {
  it('empties a shut volume as the exact orifice does', () => {
    const train = leakyVolume(50);
    let timeS = 0;
    for (const [atS, mbar] of DECAY) {
      run(train, atS - timeS);
      timeS = atS;
      // First order in the step: half a step's fall, below 0.01 mbar.
      expect(Math.abs(pressureOf(train, 'volume') / 100 - mbar)).toBeLessThan(0.01);
    }
  });

  it('lets out what its parameter says at 100 mbar', () => {
    const train = leakyVolume(50);
    run(train, STEP_S);
    // The pressure has fallen by a hundredth of a second's leak.
    expect(escapes(train, 'volume') / ((50 / 3.6e6) * train.gas.densityKgM3)).toBeCloseTo(1, 3);
  });

  it('lets nothing out where the pipe stands at the pressure of the room', () => {
    const train = createGasTrain(leaking('manifold', 500));
    run(train, 60);
    // What the seats of two sound valves pass, not a ten-thousandth of the leak at 100 mbar.
    expect(escapes(train, 'manifold')).toBeLessThan((0.1 / 3.6e6) * train.gas.densityKgM3);
  });

  it.each(['inlet', 'regulated', 'interspace', 'manifold', 'nozzle-inlet', 'pilot'])(
    'at the %s takes gas from the balance, whatever the valves do, and no more than it lets out',
    (node) => {
      const train = createGasTrain(leaking(node, 2000));
      for (const valve of ['upstream-valve', 'downstream-valve', 'vent-valve', 'pilot-valve']) {
        power(train, valve, true);
      }
      const open = summed(train, 20);
      for (const valve of ['upstream-valve', 'downstream-valve', 'pilot-valve']) {
        power(train, valve, false);
      }
      const shut = summed(train, 20);
      for (const s of [open, shut]) {
        expect(s.escapedKg).toBeGreaterThan(0);
        // Closed to rounding over 2000 steps of flows up to 0.1 kg/s.
        expect(Math.abs(s.inKg - s.outKg - s.escapedKg - s.gainedKg)).toBeLessThan(1e-11);
      }
      const curve = prepareNozzle(train.gas.heatCapacityRatio);
      const atTest = nozzleFlow(curve, 1, AMBIENT_PA + 10000, AMBIENT_PA);
      const perUnit = ((2000 / 3.6e6) * train.gas.densityKgM3) / atTest;
      const byLaw = nozzleFlow(curve, perUnit, AMBIENT_PA + pressureOf(train, node), AMBIENT_PA);
      // A flow in the balance is that of the linearised curve, within 1e-3 of it.
      expect(Math.abs(escapes(train, node) - byLaw)).toBeLessThan(1e-3 * byLaw + 1e-9);
    },
  );

  it('made tight again in a run lets nothing out, and leaves the train as if it had been tight', () => {
    const parameters = leaking('regulated', 2000);
    const train = createGasTrain(parameters);
    run(train, 5);
    expect(escapes(train, 'regulated')).toBeGreaterThan(0);
    for (const node of parameters.nodes) node.escapeDm3H = 0;
    prepareGasTrain(train);
    run(train, 60);
    expect(Math.max(...escapeKgS(train))).toBe(0);
    const sound = createGasTrain(largeTrain());
    run(sound, 60);
    // Both hang at lock-up, where the friction of the stem leaves the pressure a little free.
    expect(
      Math.abs(pressureOf(train, 'regulated') / pressureOf(sound, 'regulated') - 1),
    ).toBeLessThan(0.03);
  });
});
