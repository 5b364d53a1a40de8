import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BurnerChange,
  createBurner,
  createSimulatedClock,
  INPUT_BITS,
  INPUTS,
  outputsFor,
  PHASES,
  STEPS,
  type Timings,
} from '../../machines/index.ts';
import { live, SHORT } from './patterns.ts';
import { BAKERY, DAIRY } from './practice.ts';

const ONCE: Timings = { ...SHORT, recyclesAllowed: 1 };
const ms = fc.integer({ min: 10, max: 3000 });
/** Mostly what the plant is asked for; now and then an input that goes away for a while. */
const act = fc.oneof(
  { weight: 12, arbitrary: fc.record({ obligeMs: ms }) },
  { weight: 1, arbitrary: fc.record({ blip: fc.constantFrom(...INPUTS), forMs: ms }) },
  { weight: 1, arbitrary: fc.record({ resetMs: ms }) },
);
type Act = typeof act extends fc.Arbitrary<infer One> ? One : never;
const acts = fc.array(act, { minLength: 60, maxLength: 160 });

/** Lives through the acts; time passes in one jump or in many. */
function liveThrough(todo: readonly Act[], stepMs: number) {
  const clock = createSimulatedClock();
  const seen: { readonly atMs: number; readonly change: BurnerChange }[] = [];
  const burner = createBurner({
    variant: BAKERY,
    timings: ONCE,
    clock,
    changes: (change) => seen.push({ atMs: clock.nowMs, change }),
  });
  let word = INPUTS.slice(2, 12).reduce((all, input) => all | INPUT_BITS[input], 0);
  const outputs: number[][] = [];
  const tell = (next: number): void => {
    if (next !== word) burner.send(next);
    word = next;
  };
  const pass = (forMs: number): void => {
    const untilMs = clock.nowMs + forMs;
    while (clock.nowMs + stepMs < untilMs) clock.advanceTo(clock.nowMs + stepMs);
    clock.advanceTo(untilMs);
    outputs.push([burner.commands, burner.target, burner.step, burner.phase]);
  };
  burner.send(word);
  for (const one of todo) {
    if ('obligeMs' in one) {
      let next = word | INPUT_BITS.callForHeat;
      for (const { input, wanted } of PHASES[burner.phase]?.meta.waitsFor ?? []) {
        if (input === 'resetPressed') continue;
        next = wanted ? next | INPUT_BITS[input] : next & ~INPUT_BITS[input];
      }
      tell(next);
      pass(one.obligeMs);
    } else if ('blip' in one) {
      tell(word ^ INPUT_BITS[one.blip]);
      pass(one.forMs);
      tell(word ^ INPUT_BITS[one.blip]);
    } else {
      tell(word | INPUT_BITS.resetPressed);
      pass(one.resetMs);
      tell(word & ~INPUT_BITS.resetPressed);
    }
  }
  return { seen, outputs };
}

describe('the burner', () => {
  it('lives the same life in jumps as in steps of 10 ms', () => {
    fc.assert(
      fc.property(acts, (todo) => {
        expect(liveThrough(todo, 10)).toEqual(liveThrough(todo, Number.POSITIVE_INFINITY));
      }),
      { seed: 11, numRuns: 60 },
    );
  });
  it('always drives what its phase says, and says the step of its phase', () => {
    const steps = new Set<string>();
    fc.assert(
      fc.property(acts, (todo) => {
        for (const [commands, target, step, phase] of liveThrough(todo, 4000).outputs) {
          const meta = PHASES[phase as number]?.meta;
          if (meta === undefined) throw new Error('no phase');
          expect({ commands, target }).toEqual(outputsFor(meta, BAKERY));
          expect(STEPS[step as number]).toBe(meta.step);
          steps.add(meta.step);
        }
      }),
      { seed: 12, numRuns: 100 },
    );
    expect(steps.size).toBeGreaterThan(10);
  });
  it('reports each step with the rule that led to it', () => {
    const { changes } = live(DAIRY, 'pilot proving', 'x', { legend: { x: { flame: false } } });
    const steps = changes.flatMap((change) =>
      change.kind === 'step' ? [`${change.step} ${change.rule}`] : [],
    );
    expect(steps.slice(1)).toEqual([
      'at-rest check SQ-1',
      'valve proving: empty SQ-6',
      'valve proving: hold empty SQ-7',
      'valve proving: fill SQ-8',
      'valve proving: hold full SQ-9',
      'drive to purge SQ-6',
      'purge SQ-11',
      'drive to light-off SQ-14',
      'spark check SQ-16',
      'pilot trial SQ-18',
      'pilot proving SQ-19',
      'lockout SQ-43',
    ]);
    expect(changes).toContainEqual({ kind: 'lockout', cause: 'pilot lost', step: 'pilot proving' });
    expect(changes).toContainEqual({ kind: 'rule', rule: 'SQ-33' });
  });
  it('is at rest and drives nothing before it is powered and after it is stopped', () => {
    const clock = createSimulatedClock();
    const burner = createBurner({ variant: DAIRY, timings: SHORT, clock });
    expect([burner.commands, STEPS[burner.step]]).toEqual([0, 'standby']);
    burner.send(0);
    expect(burner.commands).not.toBe(0);
    burner.stop();
    expect([burner.commands, clock.nextDueMs]).toEqual([0, Number.POSITIVE_INFINITY]);
  });
  it('shows a mistake in its data as an error, and drives nothing then', () => {
    const clock = createSimulatedClock();
    const broken = new Proxy(SHORT, {
      get(target, name) {
        if (name === 'relaySettleS') throw new Error('no such timing');
        return Reflect.get(target, name);
      },
    });
    const burner = createBurner({ variant: DAIRY, timings: broken, clock });
    const word = INPUTS.slice(2, 12).reduce((all, input) => all | INPUT_BITS[input], 0);
    burner.send(word);
    expect(() => burner.send(word | INPUT_BITS.callForHeat)).toThrow('no such timing');
    expect(burner.commands).toBe(0);
  });
});
