import { type AnyActor, type AnyStateMachine, createActor } from 'xstate';
import {
  type BurnerInput,
  type Cause,
  guardsFor,
  INPUTS,
  NO_RESETS,
  type StateMeta,
  type StepName,
  type Timings,
  type Variant,
} from '../../../machines/index.ts';
import type { ReadingRun } from './cubes.ts';

export interface Snapshot {
  readonly status: string;
  readonly error: unknown;
  readonly value: unknown;
  readonly context: BurnerInputsAndMemory;
  readonly _nodes: readonly ChartNode[];
}
interface BurnerInputsAndMemory {
  readonly word: number;
  readonly step: string;
  readonly watch: string;
  readonly cause: Cause | null;
  readonly lockoutStep: StepName | null;
  readonly recycles: number;
  readonly valvesProved: boolean;
}
export interface Transition {
  readonly eventType: string;
  readonly source: { readonly id: string };
  readonly target?: readonly { readonly id: string }[];
  readonly guard?: string;
  readonly delay?: string;
  readonly meta?: { readonly rule: string };
}
export interface ChartNode {
  readonly id: string;
  readonly order: number;
  readonly type: string;
  readonly path: readonly string[];
  readonly meta: StateMeta | undefined;
  readonly after: readonly Transition[];
}

export interface Timer {
  readonly event: string;
  readonly delay: string;
  readonly owner: ChartNode;
}

/** One macrostep and what could be seen of it. */
export interface Outcome {
  readonly snapshot: Snapshot;
  /** Timers whose state was left on the way. */
  readonly cancelled: ReadonlySet<string>;
}

export interface Evaluator {
  readonly variant: Variant;
  /** From power off, with a lockout kept or none. */
  powerUp(saved: Cause | null): ReadingRun<Outcome>;
  inputs(from: Snapshot): ReadingRun<Outcome>;
  timer(from: Snapshot, timer: Timer): ReadingRun<Outcome>;
  /** Every transition taken so far, by name. */
  readonly taken: ReadonlySet<string>;
  /** How often the machine was evaluated. */
  evaluations(): number;
}

/** Evaluates the machine as the pure function it is, watching which inputs it looks at. */
export function createEvaluator(
  machine: AnyStateMachine,
  variant: Variant,
  timings: Timings,
): Evaluator {
  let bitsRead: number[] = [];
  let cancelled = new Set<string>();
  let count = 0;
  const taken = new Set<string>();
  const watched = guardsFor((word, bit) => {
    if (!bitsRead.includes(bit)) bitsRead.push(bit);
    return (word & bit) !== 0;
  });
  const probed = machine.provide({ guards: watched });
  const input = (word: number, cause: Cause | null = null): BurnerInput => ({
    variant,
    timings,
    word,
    nowMs: () => 0,
    saved: { cause, step: cause === null ? null : 'standby', resets: NO_RESETS },
  });
  const scope = inertScope(createActor(probed, { id: 'explored', input: input(0) }));

  const watch =
    (evaluate: (word: number) => unknown): ReadingRun<Outcome> =>
    (word) => {
      bitsRead = [];
      cancelled = new Set();
      count += 1;
      const snapshot = evaluate(word) as Snapshot;
      if (snapshot.status !== 'active') throw snapshot.error;
      return { outcome: { snapshot, cancelled }, bitsRead };
    };
  return {
    variant,
    taken,
    evaluations: () => count,
    powerUp: (saved) =>
      watch((word) => probed.getInitialSnapshot(scope as never, input(word, saved) as never)),
    inputs: (from) =>
      watch((word) => probed.transition(from as never, { type: 'inputs', word }, scope as never)),
    timer: (from, timer) =>
      watch((word) =>
        probed.transition(
          { ...from, context: { ...from.context, word } } as never,
          { type: timer.event },
          scope as never,
        ),
      ),
  };

  function inertScope(self: AnyActor) {
    return {
      self,
      id: '',
      sessionId: '',
      system: {
        ...self.system,
        _sendInspectionEvent: (event: { type: string; _transitions?: readonly Transition[] }) => {
          if (event.type !== '@xstate.microstep') return;
          for (const one of event._transitions ?? []) taken.add(nameOf(one));
        },
      },
      logger: nothing,
      defer: nothing,
      stopChild: nothing,
      emit: nothing,
      actionExecutor: (action: { type: string; params?: { sendId?: string } }) => {
        if (action.type === 'xstate.cancel') cancelled.add(action.params?.sendId ?? '');
      },
    };
  }
}

export function nameOf({ source, eventType, guard, target }: Transition): string {
  const to = target?.map(({ id }) => id).join() ?? 'nowhere';
  return `${source.id}: ${eventType || 'always'} [${guard ?? ''}] → ${to}`;
}

/** The timers that run in a configuration: one for each delay of each active state. */
export function runningTimers(snapshot: Snapshot): Timer[] {
  const timers = new Map<string, Timer>();
  for (const owner of snapshot._nodes) {
    for (const transition of owner.after) {
      timers.set(transition.eventType, {
        event: transition.eventType,
        delay: transition.delay ?? '',
        owner,
      });
    }
  }
  return [...timers.values()];
}

export const WIDTH = INPUTS.length;

function nothing(): void {}
