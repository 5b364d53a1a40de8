import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkGasTrain,
  createGasTrain,
  findEdge,
  type GasTrain,
  type GasTrainParameters,
  gasContentsKg,
  gasEdgeTables,
  prepareGasTrain,
  setBlade,
  stepGasTrain,
} from '../../../src/plant/gas/index.ts';
import {
  AMBIENT_PA,
  cock,
  edgeOf,
  flowOf,
  largeTrain,
  orifice,
  power,
  pressureOf,
  run,
  smallTrain,
} from './fixtures.ts';

const SEED = 20272;

/** Net flow over the boundaries into the train, kg/s, from the readable flows alone. */
function netInflow(train: GasTrain): number {
  let sum = 0;
  for (let e = 0; e < train.edgeCount; e++) {
    if ((train.from[e] as number) >= train.nodeCount) sum += train.flowKgS[e] as number;
    if ((train.to[e] as number) >= train.nodeCount) sum -= train.flowKgS[e] as number;
  }
  return sum;
}

/** A start in small: prove, pilot, main, ramp, stop. Returns what was read every 0.1 s. */
function shortStart(train: GasTrain, stepS: number): { readings: number[][]; halfFullS: number } {
  const readings: number[][] = [];
  const fuel = findEdge(train, 'fuel-valve');
  let halfFullS = NaN;
  let timeS = 0;
  const act: [number, string, boolean][] = [
    [0, 'vent-valve', true],
    [3, 'upstream-valve', true],
    [5, 'upstream-valve', false],
    [15, 'pilot-valve', true],
    [20, 'upstream-valve', true],
    [22, 'downstream-valve', true],
    [25, 'pilot-valve', false],
    [60, 'upstream-valve', false],
    [60, 'downstream-valve', false],
  ];
  const steps = Math.round(65 / stepS);
  for (let i = 0; i < steps; i++) {
    timeS = i * stepS;
    while (act[0] && timeS >= act[0][0] - 1e-9) {
      const [, id, on] = act.shift() as [number, string, boolean];
      power(train, id, on);
    }
    setBlade(train, fuel, Math.min(90, Math.max(15, 15 + (timeS - 30) * 3)));
    stepGasTrain(train, 300, AMBIENT_PA, stepS);
    if (Number.isNaN(halfFullS) && pressureOf(train, 'interspace') > 5000)
      halfFullS = timeS + stepS;
    if (Math.abs((timeS + stepS) * 10 - Math.round((timeS + stepS) * 10)) < 1e-6) {
      readings.push([
        ...train.pressureGaugePa,
        flowOf(train, 'nozzle') * 1e5,
        flowOf(train, 'pilot-orifice') * 1e6,
      ]);
    }
  }
  return { readings, halfFullS };
}

describe('gas train', () => {
  it('holds its pressure when everything is shut and sound', () => {
    const train = createGasTrain(largeTrain());
    power(train, 'vent-valve', true);
    run(train, 5);
    power(train, 'upstream-valve', true);
    run(train, 3);
    power(train, 'upstream-valve', false);
    run(train, 5);
    const filled = pressureOf(train, 'interspace');
    expect(filled).toBeGreaterThan(9900);
    run(train, 60);
    // Three seats of 0.1 dm³/h at 12 dm³: 2 × 0.1 out, next to nothing in: 0.47 Pa/s at most.
    expect(filled - pressureOf(train, 'interspace')).toBeGreaterThan(5);
    expect(filled - pressureOf(train, 'interspace')).toBeLessThan(30);
  });

  it('gives the design flows at light-off, at full fire and through the pilot', () => {
    const train = createGasTrain(largeTrain());
    const fuel = findEdge(train, 'fuel-valve');
    for (const id of ['vent-valve', 'pilot-valve', 'upstream-valve', 'downstream-valve']) {
      power(train, id, true);
    }
    setBlade(train, fuel, 15);
    run(train, 15);
    const low = flowOf(train, 'nozzle');
    expect(flowOf(train, 'pilot-orifice')).toBeGreaterThan(0.002);
    expect(flowOf(train, 'pilot-orifice')).toBeLessThan(0.003);
    setBlade(train, fuel, 90);
    run(train, 5);
    const full = flowOf(train, 'nozzle');
    expect(full).toBeGreaterThan(0.11);
    expect(full).toBeLessThan(0.13);
    expect(low / full).toBeGreaterThan(0.14);
    expect(low / full).toBeLessThan(0.21);
    // In a steady state every path of the main line carries the same, and the service all of it.
    const total = full + flowOf(train, 'pilot-orifice');
    expect(flowOf(train, 'cock') / total).toBeCloseTo(1, 6);
    expect(flowOf(train, 'service') / total).toBeCloseTo(1, 6);
  });

  it('falls to furnace pressure when the cock is shut, and takes furnace pressure from behind', () => {
    const train = createGasTrain(largeTrain());
    for (const id of ['vent-valve', 'upstream-valve', 'downstream-valve']) power(train, id, true);
    setBlade(train, findEdge(train, 'fuel-valve'), 60);
    run(train, 15);
    edgeOf(train.parameters, 'cock', 'cock').opening = 0;
    prepareGasTrain(train);
    run(train, 10, 400);
    expect(flowOf(train, 'cock')).toBe(0);
    for (const node of ['inlet', 'regulated', 'interspace', 'manifold', 'nozzle-inlet']) {
      expect(pressureOf(train, node)).toBeCloseTo(400, 1);
    }
  });

  it('vents the interspace to under 5 mbar within 3 s, and a shut vent valve does not', () => {
    const vented = createGasTrain(largeTrain());
    power(vented, 'vent-valve', true);
    power(vented, 'upstream-valve', true);
    run(vented, 5);
    power(vented, 'upstream-valve', false);
    run(vented, 1);
    power(vented, 'vent-valve', false);
    run(vented, 3);
    expect(pressureOf(vented, 'interspace')).toBeLessThan(500);
  });

  it('works from data alone without a vent and without a pilot', () => {
    const train = createGasTrain(smallTrain());
    power(train, 'upstream-valve', true);
    power(train, 'downstream-valve', true);
    run(train, 10);
    expect(flowOf(train, 'nozzle')).toBeGreaterThan(0.006);
    expect(flowOf(train, 'nozzle')).toBeLessThan(0.012);
    power(train, 'upstream-valve', false);
    power(train, 'downstream-valve', false);
    run(train, 10);
    expect(flowOf(train, 'nozzle')).toBeLessThan(1e-6);
  });

  it('closes its mass balance over any run of valves, cock, blade, furnace pressure and faults', () => {
    const act = fc.record({
      what: fc.integer({ min: 0, max: 6 }),
      on: fc.boolean(),
      size: fc.double({ min: 0, max: 1, noNaN: true }),
      steps: fc.integer({ min: 1, max: 150 }),
    });
    const valves = ['vent-valve', 'upstream-valve', 'downstream-valve', 'pilot-valve'];
    fc.assert(
      fc.property(fc.array(act, { minLength: 5, maxLength: 40 }), (acts) => {
        const train = createGasTrain(largeTrain());
        const start = gasContentsKg(train);
        let moved = 0;
        let passed = start;
        let furnacePa = 0;
        for (const { what, on, size, steps } of acts) {
          const valve = valves[what];
          if (valve) power(train, valve, on);
          else if (what === 4) setBlade(train, findEdge(train, 'fuel-valve'), 90 * size);
          else if (what === 5) furnacePa = 2000 * (size - 0.2);
          else {
            edgeOf(train.parameters, 'cock', 'cock').opening = on ? 1 : size;
            edgeOf(train.parameters, 'upstream-valve', 'shutoff').seatLeakDm3H = 1000 * size;
            prepareGasTrain(train);
          }
          for (let i = 0; i < steps; i++) {
            stepGasTrain(train, furnacePa, AMBIENT_PA, 0.01);
            moved += netInflow(train) * 0.01;
            passed += Math.abs(netInflow(train)) * 0.01;
          }
        }
        expect(Math.abs(gasContentsKg(train) - start - moved)).toBeLessThan(1e-9 * passed);
        for (const pa of train.pressureGaugePa) {
          expect(pa).toBeGreaterThan(-3000);
          expect(pa).toBeLessThan(21500);
        }
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it('changes by less than half a per cent, and 20 ms, when the step is halved', () => {
    const whole = shortStart(createGasTrain(largeTrain()), 0.01);
    const half = shortStart(createGasTrain(largeTrain()), 0.005);
    expect(Math.abs(whole.halfFullS - half.halfFullS)).toBeLessThan(0.02);
    expect(whole.readings.length).toBe(half.readings.length);
    whole.readings.forEach((row, i) => {
      // While a valve moves, a shift of 20 ms is allowed for: the reading 0.1 s on each side bounds it.
      row.forEach((value, k) => {
        const near = [i - 1, i, i + 1].map(
          (j) => half.readings[j]?.[k] ?? (half.readings[i]?.[k] as number),
        );
        const shift = 0.2 * (Math.max(...near) - Math.min(...near));
        const other = half.readings[i]?.[k] as number;
        expect(Math.abs(value - other)).toBeLessThan(0.005 * Math.abs(other) + shift + 5);
      });
    });
  });

  it('reads the same whether or not it coasts through quiet times', () => {
    const coasting = shortStart(createGasTrain(largeTrain()), 0.01);
    const every = createGasTrain(largeTrain());
    every.longestCoast = 1;
    const stepping = shortStart(every, 0.01);
    coasting.readings.forEach((row, i) => {
      row.forEach((value, k) => {
        const other = stepping.readings[i]?.[k] as number;
        // 0.3 % or 5 Pa: the flow change below which the train counts as calm, ten times over.
        expect(Math.abs(value - other)).toBeLessThan(0.003 * Math.abs(other) + 5);
      });
    });
  });

  it('gives the same bits for the same acts, and a preparation without a change changes none', () => {
    const first = shortStart(createGasTrain(largeTrain()), 0.01);
    const second = createGasTrain(largeTrain());
    prepareGasTrain(second);
    const again = shortStart(second, 0.01);
    expect(again.readings).toEqual(first.readings);
    const one = createGasTrain(largeTrain());
    const two = createGasTrain(largeTrain());
    for (let i = 0; i < 500; i++) {
      if (i === 100) for (const train of [one, two]) power(train, 'vent-valve', true);
      if (i % 7 === 0) prepareGasTrain(two);
      for (const train of [one, two]) stepGasTrain(train, i % 50, AMBIENT_PA, 0.01);
    }
    expect(two.absolutePa).toEqual(one.absolutePa);
    expect(two.flowKgS).toEqual(one.flowKgS);
  });

  it('has defaults that lie within their own ranges', () => {
    for (const table of Object.values(gasEdgeTables)) {
      for (const [name, entry] of Object.entries(table)) {
        if (entry.kind !== 'number' || entry.default === undefined) continue;
        expect(entry.default, name).toBeGreaterThanOrEqual(entry.min);
        expect(entry.default, name).toBeLessThanOrEqual(entry.max);
      }
    }
  });
});

describe('checkGasTrain', () => {
  const broken = (change: (parameters: GasTrainParameters) => void) => {
    const parameters = largeTrain();
    change(parameters);
    return checkGasTrain(parameters).map(({ code, id }) => `${code} ${id}`);
  };
  it('finds nothing wrong with sound trains', () => {
    expect(checkGasTrain(largeTrain())).toEqual([]);
    expect(checkGasTrain(smallTrain())).toEqual([]);
  });
  it('names what cannot be a network', () => {
    expect(
      broken((p) => p.nodes.push({ id: 'furnace', volumeDm3: 1, startGaugePa: 0, escapeDm3H: 0 })),
    ).toEqual(['reserved-name furnace']);
    expect(
      broken((p) => p.nodes.push({ id: 'inlet', volumeDm3: 1, startGaugePa: 0, escapeDm3H: 0 })),
    ).toEqual(['repeated-name inlet']);
    expect(
      broken((p) => p.edges.push(cock({ id: 'x', from: 'inlet', to: 'nowhere' }, 1e-4))),
    ).toEqual(['unknown-point x']);
    expect(
      broken((p) => p.edges.push(cock({ id: 'cock', from: 'supply', to: 'inlet' }, 1e-4))),
    ).toEqual(['repeated-name cock']);
    expect(
      broken((p) => p.edges.push(cock({ id: 'x', from: 'inlet', to: 'inlet' }, 1e-4))),
    ).toEqual(['edge-to-itself x']);
    expect(
      broken((p) => p.edges.push(cock({ id: 'x', from: 'furnace', to: 'atmosphere' }, 1e-4))),
    ).toEqual(['two-boundaries x']);
    expect(
      broken((p) => p.edges.push(cock({ id: 'x', from: 'inlet', to: 'interspace' }, 1e-4))),
    ).toEqual(['loop x']);
    expect(
      broken((p) => {
        edgeOf(p, 'fuel-valve', 'control').bladeDeg[2] = 10;
      }),
    ).toEqual(['curve fuel-valve']);
    expect(
      broken((p) => {
        p.mixture.methane = 0;
      }),
    ).toEqual(['empty-mixture mixture']);
    expect(() =>
      createGasTrain({ ...largeTrain(), edges: [cock({ id: 'x', from: 'a', to: 'b' }, 1e-4)] }),
    ).toThrow(RangeError);
  });
  it('allows a bypass beside a path', () => {
    const parameters = largeTrain();
    parameters.edges.push(orifice({ id: 'bypass', from: 'regulated', to: 'interspace' }, 1e-6));
    expect(checkGasTrain(parameters)).toEqual([]);
    const train = createGasTrain(parameters);
    power(train, 'vent-valve', true);
    run(train, 30);
    expect(pressureOf(train, 'interspace')).toBeGreaterThan(9900);
  });
});
