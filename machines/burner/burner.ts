import type { SimulatedClock } from '../clock.ts';
import { type BurnerContext, NO_RESETS, type ResetRecord, type SavedLockout } from './context.ts';
import {
  type Answer,
  decisionsFor,
  powerUp,
  type Station,
  takeInputs,
  takeTimer,
} from './decisions.ts';
import type { TimerAct } from './evaluate.ts';
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
  const decisions = decisionsFor(variant);
  const around = { word: 0, timings, nowMs: () => clock.nowMs };
  const timers = new Map<string, number>();
  let station: Station | null = null;
  let failure: { readonly error: unknown } | null = null;
  let rule: string | null = null;
  let off = false;

  function send(word: number): void {
    around.word = word;
    if (failure === null && !off) {
      attempt(() =>
        station === null
          ? powerUp(decisions, saved, around)
          : takeInputs(decisions, station, around),
      );
    }
    if (failure !== null) throw failure.error;
  }

  /** A mistake shows at the next word sent: a timer has nobody to tell. */
  function attempt(ask: () => Answer): void {
    try {
      follow(ask());
    } catch (error) {
      failure = { error };
      stop();
    }
  }

  function follow(answer: Answer): void {
    for (const taken of answer.rules) {
      if (taken.ofSequence) rule = taken.rule;
      changes?.({ kind: 'rule', rule: taken.rule });
    }
    for (const act of answer.timers) setTimer(act);
    if (answer.to !== station) moveTo(answer.to);
  }

  function setTimer({ id, event, delayMs }: TimerAct): void {
    const running = timers.get(id);
    if (running !== undefined) clock.clearTimeout(running);
    timers.delete(id);
    if (event === null) return;
    const fire = (): void => {
      timers.delete(id);
      attempt(() => takeTimer(decisions, station as Station, event, around));
    };
    timers.set(id, clock.setTimeout(fire, delayMs));
  }

  function stop(): void {
    off = true;
    for (const timer of timers.values()) clock.clearTimeout(timer);
    timers.clear();
    burner.commands = 0;
    burner.target = 0;
  }

  function moveTo(to: Station): void {
    const before = station === null ? null : station.context;
    const next = to.context;
    station = to;
    const { commands, target, phase } = to.outputs;
    const moved = phase !== burner.phase;
    const stepped = before === null || before.step !== next.step;
    burner.commands = commands;
    burner.target = target;
    burner.phase = phase;
    burner.step = to.step;
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

  return burner;
}
