import { type AnyActorScope, createActor, type EventObject, type SnapshotFrom } from 'xstate';
import type { BurnerInput, SavedLockout } from './context.ts';
import { guardsFor } from './guards.ts';
import { burnerMachine } from './machine.ts';
import type { RuleMeta } from './meta.ts';
import type { Variant } from './terminals.ts';
import { type TimingName, type Timings, timingParameters } from './timings.ts';

export type BurnerSnapshot = SnapshotFrom<typeof burnerMachine>;

/** What the machine may look at besides its own state. */
export interface Surroundings {
  word: number;
  timings: Timings;
  nowMs: () => number;
}

export interface TakenRule {
  readonly rule: string;
  /** A step is changed by a rule of the sequence; supervision has rules too, which only led there. */
  readonly ofSequence: boolean;
}

/** A timer that was started, or one that was cancelled: without an event. */
export interface TimerAct {
  readonly id: string;
  readonly event: EventObject | null;
  readonly delayMs: number;
}

/** Where one event led, what it did on the way, and all that this rested on. */
export interface Outcome {
  readonly snapshot: BurnerSnapshot;
  readonly rules: readonly TakenRule[];
  readonly timers: readonly TimerAct[];
  /** Mask over the word of inputs. */
  readonly bitsRead: number;
  readonly timingsRead: ReadonlySet<TimingName>;
  readonly timeRead: boolean;
}

export interface Evaluator {
  powerUp(saved: SavedLockout | undefined, around: Surroundings): Outcome;
  inputs(from: BurnerSnapshot, around: Surroundings): Outcome;
  timer(from: BurnerSnapshot, event: EventObject, around: Surroundings): Outcome;
}

/**
 * Evaluates the machine as the pure function that it is, one event at a time, and watches what the
 * result rested on: every input, timing and look at the clock goes through here.
 *
 * @throws whatever a condition or delay of the machine throws
 */
export function createEvaluator(variant: Variant): Evaluator {
  let around: Surroundings | null = null;
  let bitsRead = 0;
  let timeRead = false;
  let timingsRead = new Set<TimingName>();
  let rules: TakenRule[] = [];
  let timers: TimerAct[] = [];

  const machine = burnerMachine.provide({
    guards: guardsFor((word, bit) => {
      bitsRead |= bit;
      return (word & bit) !== 0;
    }),
  });
  const given: BurnerInput = {
    variant,
    timings: watchedTimings(),
    word: 0,
    nowMs: () => {
      timeRead = true;
      return present().nowMs();
    },
  };
  const scope = inertScope();

  function present(): Surroundings {
    if (around === null) throw new Error('the machine was asked out of turn');
    return around;
  }

  function watchedTimings(): Timings {
    const watched = {} as Timings;
    for (const name of Object.keys(timingParameters) as TimingName[]) {
      Object.defineProperty(watched, name, {
        enumerable: true,
        get: () => {
          timingsRead.add(name);
          return present().timings[name];
        },
      });
    }
    return watched;
  }

  /** An actor's surroundings in which nothing happens but that rules and timers are written down. */
  function inertScope(): AnyActorScope {
    around = { word: 0, timings: given.timings, nowMs: () => 0 };
    const self = createActor(machine, {
      input: given,
      inspect: (event) => {
        if (event.type !== '@xstate.microstep') return;
        for (const { meta, source } of event._transitions) {
          if (meta === undefined) continue;
          rules.push({ rule: (meta as RuleMeta).rule, ofSequence: source.path[0] === 'sequence' });
        }
      },
    });
    return {
      self,
      id: self.id,
      sessionId: self.sessionId,
      system: self.system,
      logger: nothing,
      defer: nothing,
      stopChild: nothing,
      emit: nothing,
      actionExecutor: noteTimer,
    };
  }

  function noteTimer(action: { type: string; params?: unknown }): void {
    if (action.type === 'xstate.raise') {
      const { id, event, delay } = action.params as RaiseParams;
      if (delay !== undefined) timers.push({ id, event, delayMs: delay });
    } else if (action.type === 'xstate.cancel') {
      const { sendId } = action.params as { sendId: string };
      timers.push({ id: sendId, event: null, delayMs: 0 });
    }
  }

  function watch(within: Surroundings, evaluate: () => BurnerSnapshot): Outcome {
    around = within;
    bitsRead = 0;
    timeRead = false;
    timingsRead = new Set();
    rules = [];
    timers = [];
    const snapshot = evaluate();
    around = null;
    if (snapshot.status !== 'active') throw snapshot.error;
    return { snapshot, rules, timers, bitsRead, timingsRead, timeRead };
  }

  return {
    powerUp: (saved, within) =>
      watch(within, () =>
        machine.getInitialSnapshot(scope, { ...given, word: within.word, saved } as never),
      ),
    inputs: (from, within) =>
      watch(within, () => machine.transition(from, { type: 'inputs', word: within.word }, scope)),
    timer: (from, event, within) =>
      watch(within, () =>
        machine.transition(
          { ...from, context: { ...from.context, word: within.word } } as BurnerSnapshot,
          event as never,
          scope,
        ),
      ),
  };
}

interface RaiseParams {
  readonly id: string;
  readonly event: EventObject;
  readonly delay?: number;
}

function nothing(): void {}
