import { createActor, type InspectionEvent } from 'xstate';
import type { SimulatedClock } from '../clock.ts';
import { type BurnerContext, NO_RESETS, type ResetRecord, type SavedLockout } from './context.ts';
import { burnerMachine } from './machine.ts';
import type { RuleMeta } from './meta.ts';
import { outputsOf } from './outputs.ts';
import { type Cause, STEPS, type StepName, type Variant } from './terminals.ts';
import type { Timings } from './timings.ts';

/** What the burner reports as it happens, in order, at the clock's present. */
export type BurnerChange =
  | { readonly kind: 'rule'; readonly rule: string }
  | { readonly kind: 'step'; readonly step: StepName; readonly rule: string | null }
  | { readonly kind: 'phase'; readonly phase: number }
  | { readonly kind: 'lockout'; readonly cause: Cause; readonly step: StepName }
  | { readonly kind: 'stop'; readonly reason: NonNullable<BurnerContext['stopReason']> }
  | { readonly kind: 'reset'; readonly resets: ResetRecord }
  | { readonly kind: 'reset refused'; readonly resets: ResetRecord }
  | { readonly kind: 'reset held'; readonly resets: ResetRecord };

export interface BurnerOptions {
  readonly variant: Variant;
  /** Read afresh whenever a timer starts, so a value changed in mid-run counts from then on. */
  readonly timings: Timings;
  readonly clock: SimulatedClock;
  /** From `saved()` before the power went. */
  readonly saved?: SavedLockout | undefined;
  readonly changes?: ((change: BurnerChange) => void) | undefined;
}

/** The controller as the engine holds it: plain values, renewed only when the machine moved. */
export interface Burner {
  /** Packed word of commands. */
  readonly commands: number;
  /** Place in TARGETS. */
  readonly target: number;
  /** Place in STEPS. */
  readonly step: number;
  /** Place in PHASES. */
  readonly phase: number;
  readonly cause: Cause | null;
  readonly lockoutStep: StepName | null;
  readonly stopReason: BurnerContext['stopReason'];
  readonly valvesProved: boolean;
  readonly resets: ResetRecord;
  /** The packed word of inputs: the first powers the machine up, later ones only when it changed. */
  send(word: number): void;
  /** What outlasts a loss of power. */
  saved(): SavedLockout;
  /** Power off: timers are gone, nothing is driven. */
  stop(): void;
}

export function createBurner(options: BurnerOptions): Burner {
  const { variant, timings, clock, saved, changes } = options;
  const burner = {
    commands: 0,
    target: 0,
    step: STEPS.indexOf(saved?.cause ? 'lockout' : 'standby'),
    phase: -1,
    cause: saved?.cause ?? null,
    lockoutStep: saved?.step ?? null,
    stopReason: null as BurnerContext['stopReason'],
    valvesProved: false,
    resets: saved?.resets ?? NO_RESETS,
    send,
    saved: (): SavedLockout => ({
      cause: burner.cause,
      step: burner.lockoutStep,
      resets: burner.resets,
    }),
    stop,
  };
  let actor: ReturnType<typeof powerUp> | null = null;
  let context: BurnerContext | null = null;
  let failure: { readonly error: unknown } | null = null;
  let rule: string | null = null;

  function powerUp(word: number) {
    const powered = createActor(burnerMachine, {
      id: 'burner',
      clock,
      input: { variant, timings, word, saved, nowMs: () => clock.nowMs },
      ...(changes === undefined ? {} : { inspect: noteRules }),
    });
    powered.subscribe({
      next: (snapshot) => {
        // An observer that throws is reported only later and elsewhere.
        try {
          take(snapshot);
        } catch (error) {
          fail(error);
        }
      },
      error: fail,
    });
    return powered;
  }

  function fail(error: unknown): void {
    failure ??= { error };
    burner.commands = 0;
    burner.target = 0;
  }

  function noteRules(event: InspectionEvent): void {
    if (event.type !== '@xstate.microstep') return;
    for (const taken of event._transitions) {
      const meta = taken.meta as RuleMeta | undefined;
      if (meta === undefined) continue;
      if (isOfSequence(taken)) rule = meta.rule;
      changes?.({ kind: 'rule', rule: meta.rule });
    }
  }

  function take(snapshot: { value: unknown; context: BurnerContext }): void {
    const before = context;
    const next = snapshot.context;
    context = next;
    const { commands, target, phase } = outputsOf(snapshot);
    const moved = phase !== burner.phase;
    const stepped = before === null || before.step !== next.step;
    burner.commands = commands;
    burner.target = target;
    burner.phase = phase;
    burner.step = STEPS.indexOf(next.step);
    burner.cause = next.cause;
    burner.lockoutStep = next.lockoutStep;
    burner.stopReason = next.stopReason;
    burner.valvesProved = next.valvesProved;
    burner.resets = next.resets;
    if (changes === undefined) return;
    if (before !== null) reportResets(before.resets, next.resets);
    if (next.stopReason !== null && next.stopReason !== before?.stopReason) {
      changes({ kind: 'stop', reason: next.stopReason });
    }
    const causeBefore = before === null ? (saved?.cause ?? null) : before.cause;
    if (next.cause !== null && next.lockoutStep !== null && next.cause !== causeBefore) {
      changes({ kind: 'lockout', cause: next.cause, step: next.lockoutStep });
    }
    if (stepped) changes({ kind: 'step', step: next.step, rule });
    if (moved) changes({ kind: 'phase', phase });
  }

  function reportResets(before: ResetRecord, resets: ResetRecord): void {
    if (resets.accepted !== before.accepted) changes?.({ kind: 'reset', resets });
    if (resets.refused !== before.refused) changes?.({ kind: 'reset refused', resets });
    if (resets.held !== before.held) changes?.({ kind: 'reset held', resets });
  }

  function send(word: number): void {
    if (actor === null) {
      actor = powerUp(word);
      actor.start();
    } else {
      actor.send({ type: 'inputs', word });
    }
    if (failure !== null) throw failure.error;
  }

  function stop(): void {
    actor?.stop();
    burner.commands = 0;
    burner.target = 0;
  }

  return burner;
}

/** A step is changed by a rule of the sequence; supervision has rules too, which only led there. */
function isOfSequence(taken: object): boolean {
  return 'source' in taken && (taken.source as { path: string[] }).path[0] === 'sequence';
}
