import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createActor } from 'xstate';
import {
  type Burner,
  burnerMachine,
  createBurner,
  createSimulatedClock,
  INPUT_BITS,
  INPUTS,
  outputsOf,
  PHASES,
  type SimulatedClock,
  STEPS,
  type Timings,
  type Variant,
} from '../../machines/index.ts';
import { SHORT } from './patterns.ts';
import { BAKERY, DAIRY } from './practice.ts';

const TIMINGS: readonly Timings[] = [
  SHORT,
  { ...SHORT, recyclesAllowed: 1, lostProofInPurge: 'lockout' },
  { ...SHORT, purgeS: 2 * SHORT.purgeS, repeatedResets: 2 },
];
const ms = fc.integer({ min: 10, max: 4000 });
const act = fc.oneof(
  { weight: 12, arbitrary: fc.record({ obligeMs: ms }) },
  { weight: 2, arbitrary: fc.record({ blip: fc.constantFrom(...INPUTS), forMs: ms }) },
  { weight: 2, arbitrary: fc.record({ resetMs: ms }) },
);
type Act = typeof act extends fc.Arbitrary<infer One> ? One : never;
const life = fc.record({
  variant: fc.constantFrom(DAIRY, BAKERY),
  timings: fc.constantFrom(...TIMINGS),
  acts: fc.array(act, { minLength: 40, maxLength: 120 }),
});

interface Lived {
  readonly clock: SimulatedClock;
  send(word: number): void;
  phase(): number;
  /** All that can be seen of it from outside. */
  seen(): { readonly step: unknown };
}

/** The statechart run by XState itself, with nothing remembered. */
function liveAsActor(variant: Variant, timings: Timings): Lived {
  const clock = createSimulatedClock();
  const rules: string[] = [];
  let actor: ReturnType<typeof powered> | null = null;
  const powered = (word: number) =>
    createActor(burnerMachine, {
      clock,
      input: { variant, timings, word, nowMs: () => clock.nowMs },
      inspect: (event) => {
        if (event.type !== '@xstate.microstep') return;
        for (const { meta } of event._transitions) if (meta !== undefined) rules.push(meta.rule);
      },
    }).start();
  return {
    clock,
    send(word) {
      if (actor === null) actor = powered(word);
      else actor.send({ type: 'inputs', word });
    },
    phase: () => (actor === null ? -1 : outputsOf(actor.getSnapshot()).phase),
    seen() {
      const snapshot = (actor as NonNullable<typeof actor>).getSnapshot();
      const { step, cause, lockoutStep, stopReason, valvesProved, resets } = snapshot.context;
      const outputs = outputsOf(snapshot);
      const nextDueMs = clock.nextDueMs;
      return {
        ...outputs,
        step,
        cause,
        lockoutStep,
        stopReason,
        valvesProved,
        resets,
        nextDueMs,
        rules,
      };
    },
  };
}

function liveAsBurner(variant: Variant, timings: Timings): Lived {
  const clock = createSimulatedClock();
  const rules: string[] = [];
  const burner: Burner = createBurner({
    variant,
    timings,
    clock,
    changes: (change) => {
      if (change.kind === 'rule') rules.push(change.rule);
    },
  });
  return {
    clock,
    send: burner.send,
    phase: () => burner.phase,
    seen() {
      const { commands, target, phase, cause, lockoutStep, stopReason } = burner;
      const { valvesProved, resets } = burner;
      const step = STEPS[burner.step];
      const nextDueMs = clock.nextDueMs;
      return {
        commands,
        target,
        phase,
        step,
        cause,
        lockoutStep,
        stopReason,
        valvesProved,
        resets,
        nextDueMs,
        rules,
      };
    },
  };
}

function liveThrough(
  { clock, send, phase, seen }: Lived,
  acts: readonly Act[],
): { step: unknown }[] {
  const all: { step: unknown }[] = [];
  let word = INPUTS.slice(2, 12).reduce((made, input) => made | INPUT_BITS[input], 0);
  const tell = (next: number, forMs: number): void => {
    if (next !== word) send(next);
    word = next;
    clock.advanceTo(clock.nowMs + forMs);
    all.push(structuredClone(seen()));
  };
  send(word);
  for (const one of acts) {
    if ('obligeMs' in one) {
      let next = word | INPUT_BITS.callForHeat;
      for (const { input, wanted } of PHASES[phase()]?.meta.waitsFor ?? []) {
        if (input === 'resetPressed') continue;
        next = wanted ? next | INPUT_BITS[input] : next & ~INPUT_BITS[input];
      }
      tell(next, one.obligeMs);
    } else if ('blip' in one) {
      tell(word ^ INPUT_BITS[one.blip], one.forMs);
      tell(word ^ INPUT_BITS[one.blip], 0);
    } else {
      tell(word | INPUT_BITS.resetPressed, one.resetMs);
      tell(word & ~INPUT_BITS.resetPressed, 0);
    }
  }
  return all;
}

describe('what the burner remembers of its machine', () => {
  it('is what the statechart itself would do, the first time and again', () => {
    const steps = new Set<unknown>();
    fc.assert(
      fc.property(life, ({ variant, timings, acts }) => {
        const expected = liveThrough(liveAsActor(variant, timings), acts);
        for (const { step } of expected) steps.add(step);
        expect(liveThrough(liveAsBurner(variant, timings), acts)).toEqual(expected);
        expect(liveThrough(liveAsBurner(variant, timings), acts)).toEqual(expected);
      }),
      { seed: 21, numRuns: 100 },
    );
    expect(steps.size).toBeGreaterThan(15);
  });

  it('heeds a timing that is changed while it runs', () => {
    const settle = (relaySettleS: number): number => {
      const timings = { ...SHORT };
      const { clock, send } = liveAsBurner(DAIRY, timings);
      const word = INPUTS.slice(2, 12).reduce((made, input) => made | INPUT_BITS[input], 0);
      send(word & ~INPUT_BITS.safetyRelayFeedback);
      timings.relaySettleS = relaySettleS;
      send((word & ~INPUT_BITS.safetyRelayFeedback) | INPUT_BITS.callForHeat);
      return clock.nextDueMs;
    };
    expect([settle(1), settle(2), settle(1)]).toEqual([1000, 2000, 1000]);
  });
});
