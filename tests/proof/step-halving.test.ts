/**
 * What is recorded must come from the equations and not from the step: a healthy start of each
 * plant, once more at half the step.
 *
 * Compared frame by frame at equal times. A reading counts as the same when it is within half a per
 * cent of the quantity's range of what the whole step gave, there or within 20 ms: for that the start
 * is also called for 10 and 20 ms earlier and later, since everything behind a valve that opens a step
 * later is a step late. The range of a quantity that hardly moves is taken as a hundredth of that of
 * its kind. Behind a pressure regulator friction of its stem leaves a band in which any pressure is
 * at rest.
 */
import { describe, expect, it } from 'vitest';
import { createRun, type Run } from '../../src/engine/index.ts';
import { library, shippedSetup } from '../support/library.ts';

const SAME_SHARE = 0.005;
const LATE_S = 0.02;
const SHIFTS_S = [-0.02, -0.01, 0, 0.01, 0.02];
const LEAST_RANGE_SHARE = 0.01;
/**
 * What gathers when a flame lights keeps what those 20 ms between gas and light have put in: they
 * are reckoned at its fastest so far.
 */
const GATHERS = [
  'furnace.combustible',
  'furnace.held-puff',
  'puff.index',
  'flue.carbon-monoxide',
  'analyser.carbon-monoxide',
];

/** The flue gas is reckoned every tenth step, so that these may be a frame old. */
const SAMPLED = /^(flue|analyser|efficiency)\./;

const STARTS = library.plants.flatMap(({ id }) => {
  const start = library.scenarios.find(
    ({ plant, faults, expect: expected }) =>
      plant === id && faults.length === 0 && expected.reaches === 'modulation',
  );
  return start === undefined ? [] : [{ plant: id, scenario: start.id, until: start.until }];
});

/** Width, Pa, of the band in which a regulator leaves the pressures behind it at rest. */
function bandsOf(run: Run): ReadonlyMap<string, number> {
  const { edges } = run.setup.plant.gasTrain;
  const bands = new Map<string, number>();
  for (const edge of edges) {
    if (edge.kind !== 'regulator') continue;
    const behind = [edge.to];
    for (const point of behind) {
      bands.set(`gas.${point}.pressure`, 2 * edge.frictionPa);
      const on = edges.filter(({ from, kind }) => from === point && kind !== 'regulator');
      behind.push(...on.map(({ to }) => to).filter((to) => !behind.includes(to)));
    }
  }
  return bands;
}

function runAt(stepMs: 5 | 10, scenario: string, until: number, laterS = 0): Run {
  const setup = shippedSetup(scenario);
  const actions = setup.actions.map((action) => ({ ...action, t: action.t + laterS }));
  const run = createRun({ ...setup, actions }, { stepMs });
  run.advanceTo(until);
  return run;
}

function valuesOf(run: Run, place: number): number[] {
  return Array.from({ length: run.frameCount() }, (_, k) => run.frame(k)[place] as number);
}

function rangeOf(values: readonly number[]): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return high - low;
}

/** How far a value lies outside what all the lists have at these places. */
function outside(value: number, lists: readonly (readonly number[])[], from: number, to: number) {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const list of lists) {
    for (let k = Math.max(0, from); k <= Math.min(to, list.length - 1); k++) {
      low = Math.min(low, list[k] as number);
      high = Math.max(high, list[k] as number);
    }
  }
  return Math.max(0, low - value, value - high);
}

describe.each(STARTS)('a healthy start of $plant, stepped at 10 ms and at 5 ms', (start) => {
  const shifted = SHIFTS_S.map((laterS) => runAt(10, start.scenario, start.until, laterS));
  const whole = shifted[SHIFTS_S.indexOf(0)] as Run;
  const half = runAt(5, start.scenario, start.until);

  it('reaches modulation', () => {
    expect(whole.status().step).toBe('modulation');
  });

  it('has the same steps, proofs and commands, each within 20 ms', () => {
    const wordsOf = (run: Run) => run.events().map(({ t: _, ...rest }) => rest);
    expect(wordsOf(half)).toEqual(wordsOf(whole));
    const apart = whole.events().map((event, i) => Math.abs(event.t - half.events()[i]!.t));
    expect(Math.max(...apart)).toBeLessThan(LATE_S + 1e-9);
  });

  it('records the same of every quantity, to half a per cent of its range', () => {
    const ranges = new Map<string, number>();
    whole.channels.forEach(({ kind }, place) => {
      ranges.set(kind, Math.max(ranges.get(kind) ?? 0, rangeOf(valuesOf(whole, place))));
    });
    const bands = bandsOf(whole);
    const found: string[] = [];
    whole.channels.forEach(({ id, kind }, place) => {
      const a = valuesOf(whole, place);
      const near = shifted.map((run) => valuesOf(run, place));
      const range = Math.max(rangeOf(a), LEAST_RANGE_SHARE * (ranges.get(kind) ?? 0));
      const same = SAME_SHARE * range + (bands.get(id) ?? 0);
      const older = SAMPLED.test(id) ? 1 : 0;
      let fastest = 0;
      let worst = 0;
      let worstAt = 0;
      const b = valuesOf(half, place);
      b.forEach((value, k) => {
        if (k > 0) fastest = Math.max(fastest, Math.abs((a[k] as number) - (a[k - 1] as number)));
        const gathered = GATHERS.includes(id) ? (LATE_S / whole.frameS) * fastest : 0;
        const over = outside(value, near, k - older, k + older) - same - gathered;
        if (over > worst) {
          worst = over;
          worstAt = k;
        }
      });
      if (worst > 0) {
        const atS = (worstAt * whole.frameS).toFixed(1);
        const share = ((100 * worst) / range).toFixed(2);
        found.push(
          `${id} at ${atS} s: ${a[worstAt]} and ${b[worstAt]}, ${share} % of its range too far`,
        );
      }
    });
    expect(found).toEqual([]);
  });
});
