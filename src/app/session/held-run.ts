import type { Action, Run, TimedAction } from '../../engine/index.ts';
import type { Following } from './following.ts';
import type { Stage } from './host-ports.ts';
import type { Pace } from './pace.ts';
import type { PlantWatch } from './plant-watch.ts';
import type { Facts, Status } from './protocol.ts';

/** Buttons that are in for as long as they are held. */
export type PressedButton = 'reset' | 'reset-limits';

export function isPress(
  action: Action,
): action is Extract<Action, { readonly type: PressedButton }> {
  return action.type === 'reset' || action.type === 'reset-limits';
}

/** The one run a host holds, and how far it and the page have come. */
export interface Held {
  readonly stage: Stage;
  readonly facts: Facts;
  run: Run;
  log: readonly TimedAction[];
  pace: Pace;
  mode: Status['mode'];
  speed: number;
  note: Status['note'];
  head: { s: number; hash: string; frames: number; events: number };
  sent: { frames: number; events: number };
  nextStep: { fromStep: string; untilS: number } | null;
  stopsAtEachStep: boolean;
  press: { button: PressedButton; pressedS: number; releaseDueS: number | null } | null;
  /** The healthy twin while it is being run, a little in each tick. */
  twin: Run | null;
  /** Done at the moment where the run stands; the engine takes it with the next step. */
  pending: TimedAction[];
  readonly watch: PlantWatch;
  /** The log as the page has it. */
  sentLog: readonly TimedAction[] | null;
  frozen: boolean;
  /** Set while it follows a run elsewhere. */
  following: Following | null;
}

export function isRunning(state: Held): boolean {
  return state.mode !== 'paused';
}

export function headOf(run: Run): Held['head'] {
  return {
    s: run.timeS(),
    hash: run.hash(),
    frames: run.frameCount(),
    events: run.events().length,
  };
}

export function statusOf(state: Held): Omit<Status, 'answered'> {
  return {
    mode: state.mode,
    speed: state.speed,
    timeS: state.run.timeS(),
    headS: state.head.s,
    hash: state.run.hash(),
    note: state.note,
    frozen: state.frozen,
    follows:
      state.following === null
        ? null
        : {
            behindS: toStepS(Math.max(0, state.following.headS - state.run.timeS())),
            differed: state.following.differed,
          },
  };
}

/** Whole frames `from` to before `to`; those not recorded yet are left at 0. */
export function copyFrames(run: Run, from: number, to: number, width: number) {
  const data = new Float64Array(Math.max(0, to - from) * width);
  const kept = Math.min(to, run.frameCount());
  for (let k = from; k < kept; k += 1) data.set(run.frame(k), (k - from) * width);
  return data;
}

/** To a multiple of the engine's 10 ms, clear of the last bits of 0.1. */
export function toStepS(tS: number): number {
  return Math.round(tS * 100) / 100;
}

export function rest(state: Held): void {
  state.mode = 'paused';
  state.nextStep = null;
}
