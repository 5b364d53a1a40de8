import { assign, raise, setup } from 'xstate';
import type { BurnerContext, BurnerInput, ResetRecord } from './context.ts';
import type { BurnerEvent } from './events.ts';
import { guardsFor } from './guards.ts';
import { readInput } from './inputs.ts';
import type { RuleMeta, StateMeta } from './meta.ts';
import type { Cause, StepName } from './terminals.ts';
import { DURATIONS, type DurationName } from './timings.ts';
import { FLAME_LOST, WATCHES, type WatchName } from './watches.ts';

/** Everything the charts name: guards, delays and actions. The charts themselves hold none inline. */
export const burnerSetup = setup({
  types: {} as {
    context: BurnerContext;
    events: BurnerEvent;
    input: BurnerInput;
    meta: StateMeta;
    transitionMeta: RuleMeta;
  },
  guards: guardsFor(readInput),
  delays: delaysOf(DURATIONS),
  actions: {
    takeInputs: assign(({ context, event }) => ({
      word: event.type === 'inputs' ? event.word : context.word,
    })),
    enterStep: assign((_, params: { step: StepName; watch: WatchName }) => params),

    trip: raise(({ context }, params: { cause: Cause }) => ({
      type: 'trip' as const,
      cause: params.cause,
      step: context.step,
    })),
    tripFlameSeen: raise(({ context }) => ({
      type: 'trip' as const,
      cause: WATCHES[context.watch].flameSeen,
      step: context.step,
    })),
    tripFlameLost: raise(({ context }) => ({
      type: 'trip' as const,
      cause: flameLostIn(context.step),
      step: context.step,
    })),
    tripAirflowLost: raise(({ context }) => ({
      type: 'trip' as const,
      cause: WATCHES[context.watch].airLost ?? 'airflow not proved',
      step: context.step,
    })),

    lockOut: assign(({ context }, params: { cause: Cause }) => ({
      cause: params.cause,
      lockoutStep: context.step,
      ...NOTHING_KEPT,
    })),
    lockOutTripped: assign(({ event }) =>
      event.type === 'trip' ? { cause: event.cause, lockoutStep: event.step, ...NOTHING_KEPT } : {},
    ),
    clearLockout: assign({ cause: null, lockoutStep: null }),

    noteStop: assign(({ event }) => (event.type === 'trip' ? { stopReason: event.cause } : {})),
    noteCallEnded: assign({ stopReason: 'call for heat ended' as const, recycles: 0 }),
    countRecycle: assign(({ context }) => ({ recycles: context.recycles + 1 })),
    beginStart: assign(({ context }) => ({
      stopReason: null,
      valvesProved: context.valvesProved && context.variant.valveProving === 'after run-down',
    })),
    keepValvesProved: assign({ valvesProved: true }),
    forgetValvesProved: assign({ valvesProved: false }),

    raiseRestProved: raise({ type: 'rest proved' }),
    raiseFuelOpened: raise({ type: 'fuel opened' }),
    raiseFlameProved: raise({ type: 'flame proved' }),
    raiseFuelShut: raise({ type: 'fuel shut' }),
    raiseLockedOut: raise({ type: 'locked out' }),
    raiseReset: raise({ type: 'reset' }),
    raiseAwake: raise({ type: 'awake' }),

    countReset: assign(({ context }) => ({ resets: withReset(context) })),
    countRefusedReset: assign(({ context }) => ({
      resets: { ...context.resets, refused: context.resets.refused + 1 },
    })),
    countHeldReset: assign(({ context }) => ({
      resets: { ...context.resets, held: context.resets.held + 1 },
    })),
  },
});

/** What a lockout undoes: whoever resets it begins afresh. */
const NOTHING_KEPT = { stopReason: null, recycles: 0, valvesProved: false } as const;

function delaysOf<Name extends DurationName>(names: readonly Name[]) {
  type Delay = (given: { context: BurnerContext }) => number;
  return Object.fromEntries(
    names.map((name): [Name, Delay] => [
      name,
      ({ context }) => Math.round(context.timings[name] * 1000),
    ]),
  ) as Record<Name, Delay>;
}

function flameLostIn(step: StepName): Cause {
  return step in FLAME_LOST ? FLAME_LOST[step as keyof typeof FLAME_LOST] : 'flame lost in service';
}

function withReset({ resets, timings, nowMs }: BurnerContext): ResetRecord {
  const now = nowMs();
  const timesMs = [...resets.timesMs.filter((t) => t > now - timings.resetWindowS * 1000), now];
  return {
    ...resets,
    accepted: resets.accepted + 1,
    timesMs,
    repeated: resets.repeated || timesMs.length >= timings.repeatedResets,
  };
}
