/**
 * How a held run moves: on, back, to where a hand does something.
 *
 * A run that is rewound is built again from the start by its log; what the page already
 * holds is not sent twice. When the replay comes back to where the run had been, both
 * hashes must agree. Acting before that drops the later part of the log.
 */
import type { Action, TimedAction } from '../../engine/index.ts';
import { type Held, headOf, isPress, type PressedButton, rest, toStepS } from './held-run.ts';
import type { HostPorts } from './host-ports.ts';
import { startPace } from './pace.ts';
import { type Failure, NEXT_STEP_SPEED } from './protocol.ts';

/** A reset shorter than the plant could notice is stretched to this. */
const MIN_PRESS_S = 0.3;

const PUTS_IN_FAULTS: ReadonlySet<string> = new Set([
  'insert-fault',
  'ramp-fault',
  'intermittent-fault',
]);

export type Fail = (failure: Failure, detail: string) => void;

export function createMoves(ports: HostPorts, fail: Fail) {
  function repace(state: Held): void {
    state.pace = startPace(state.run.timeS(), ports.nowMs(), speedNow(state));
  }

  function act(state: Held, action: Action): void {
    if (state.facts.allow !== null && !state.facts.allow.includes(action.type)) {
      fail('action refused', action.type);
      return;
    }
    if (isPress(action) && !action.pressed && state.press?.button === action.type) {
      const releaseDueS = toStepS(state.press.pressedS + MIN_PRESS_S);
      if (state.run.timeS() < releaseDueS) {
        state.press = { ...state.press, releaseDueS };
        repace(state);
        return;
      }
    }
    if (state.run.timeS() < state.head.s) cutLaterPart(state, state.run.timeS());
    // What is there at the start of a run belongs to its setup, not to an act.
    if (state.run.timeS() === 0) advance(state, state.facts.frameS);
    doNow(state, action);
    if (isPress(action)) {
      const pressedS = state.run.timeS();
      state.press = action.pressed ? { button: action.type, pressedS, releaseDueS: null } : null;
      repace(state);
    }
    // At a plant that cannot be taken back an act is done even while its clock is stopped.
    if (!state.facts.work.rewinds && state.mode === 'paused') {
      advance(state, state.run.timeS() + state.facts.frameS);
    }
    state.head = headOf(state.run);
  }

  /** By the class: at the head, whatever a learner may do here. */
  function order(state: Held, action: Action): void {
    if (state.run.timeS() < state.head.s) advance(state, state.head.s);
    if (state.run.timeS() === 0) advance(state, state.facts.frameS);
    doNow(state, action);
    state.head = headOf(state.run);
  }

  /** What was done from that moment on is gone, and there is the head; never before anyone came. */
  function cutTo(state: Held, wantedS: number): void {
    const { frameS, arriveS } = state.facts;
    const tS = Math.max(arriveS, toStepS(Math.floor(wantedS / frameS + 1e-6) * frameS));
    rest(state);
    state.press = null;
    if (tS >= state.head.s) {
      advance(state, state.head.s);
      return;
    }
    const own = state.stage.setup.actions.filter(({ t }) => t >= tS);
    state.log = [...state.log.filter(({ t }) => t < tS), ...own];
    goBackTo(state, tS);
  }

  /** Back to just before the last fault put in by hand; nothing where there is none. */
  function putBack(state: Held): void {
    const place = state.log.findLastIndex(
      (entry) => PUTS_IN_FAULTS.has(entry.type) && !isOwn(state, entry),
    );
    const broken = state.log[place];
    if (!state.facts.work.rewinds || broken === undefined) return;
    rest(state);
    state.press = null;
    state.log = [...state.log.slice(0, place), ...ownAfter(state, broken.t)];
    goBackTo(state, broken.t);
  }

  function cutLaterPart(state: Held, tS: number): void {
    state.log = [...state.log.filter((entry) => entry.t <= tS), ...ownAfter(state, tS)];
    goBackTo(state, tS);
  }

  /** Builds the run again up to there, and there is its new head. */
  function goBackTo(state: Held, tS: number): void {
    rebuild(state, tS);
    state.head = headOf(state.run);
    state.sent = { frames: state.head.frames, events: state.head.events };
    ports.post({ type: 'cut', frames: state.sent.frames, events: state.sent.events });
  }

  function seek(state: Held, wantedS: number): void {
    rest(state);
    letGo(state);
    if (!state.facts.work.rewinds) return;
    const tS = Math.min(
      state.head.s,
      Math.round(wantedS / state.facts.frameS) * state.facts.frameS,
    );
    if (tS < state.run.timeS()) rebuild(state, tS);
    else advance(state, tS);
  }

  function rebuild(state: Held, tS: number): void {
    state.pending = [];
    state.run = ports.createRun({ ...state.stage.setup, actions: [...state.log] });
    state.run.advanceTo(toStepS(tS));
    state.watch.connectAnew(state.run);
  }

  /** A press that the rewind would leave hanging ends where the run was. */
  function letGo(state: Held): void {
    if (state.press === null) return;
    if (state.run.timeS() >= state.head.s) {
      doNow(state, { type: state.press.button, pressed: false });
      state.head = headOf(state.run);
    }
    state.press = null;
  }

  /** A finger that was on a button when the page was closed is gone: it lets go as soon as it may. */
  function takeFingersOff(state: Held): void {
    for (const button of ['reset', 'reset-limits'] as const) {
      const pressedS = pressedSince(state.log, button, state.head.s);
      if (pressedS === null) continue;
      const releaseDueS = toStepS(pressedS + MIN_PRESS_S);
      if (releaseDueS <= state.head.s) doNow(state, { type: button, pressed: false });
      else state.press = { button, pressedS, releaseDueS };
    }
  }

  function doNow(state: Held, action: Action): void {
    state.pending.push(state.run.act(action));
    state.log = state.run.log();
  }

  /** On to the target, or to the first change of step before it, and rests there. */
  function advanceWatchingSteps(state: Held, targetS: number): void {
    while (toStepS(state.run.timeS()) < toStepS(targetS)) {
      const wait = state.nextStep;
      const fromStep = wait?.fromStep ?? state.run.status().step;
      advance(state, state.run.timeS() + state.facts.frameS);
      if (state.run.status().step !== fromStep) {
        rest(state);
        return;
      }
      if (wait !== null && state.run.timeS() >= wait.untilS) {
        rest(state);
        state.note = 'no step change';
        return;
      }
    }
  }

  function advance(state: Held, targetS: number): void {
    const { press } = state;
    if (press !== null && press.releaseDueS !== null && targetS >= press.releaseDueS) {
      advancePastHead(state, press.releaseDueS);
      doNow(state, { type: press.button, pressed: false });
      state.press = null;
      repace(state);
    }
    advancePastHead(state, targetS);
  }

  function advancePastHead(state: Held, targetS: number): void {
    const { run, head } = state;
    if (toStepS(targetS) > toStepS(run.timeS())) state.pending = [];
    if (toStepS(run.timeS()) < toStepS(head.s) && toStepS(targetS) >= toStepS(head.s)) {
      run.advanceTo(toStepS(head.s));
      if (run.hash() !== head.hash) fail('replay differs', `${head.s} s`);
    }
    if (toStepS(targetS) > toStepS(run.timeS())) run.advanceTo(toStepS(targetS));
    if (toStepS(run.timeS()) >= toStepS(head.s)) state.head = headOf(run);
  }

  return {
    repace,
    act,
    order,
    cutTo,
    putBack,
    seek,
    takeFingersOff,
    advance,
    advanceWatchingSteps,
  };
}

/** While a finger is on the reset, time runs as it does for the finger. */
function speedNow(state: Held): number {
  if (state.press !== null && state.press.releaseDueS === null) return 1;
  return state.mode === 'to next step' ? NEXT_STEP_SPEED : state.speed;
}

/** What the scenario does by itself comes again, whatever a hand did before. */
function ownAfter({ stage }: Held, tS: number): TimedAction[] {
  return stage.setup.actions.filter(({ t }) => t > tS);
}

function isOwn({ stage }: Held, action: TimedAction): boolean {
  const text = textOf(action);
  return stage.setup.actions.some((own) => textOf(own) === text);
}

/** A log that was saved may name the fields of an action in another order. */
function textOf(action: TimedAction): string {
  return JSON.stringify(Object.entries(action).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function pressedSince(
  log: readonly TimedAction[],
  button: PressedButton,
  untilS: number,
): number | null {
  const last = log.findLast((entry) => entry.type === button && entry.t <= untilS);
  return last !== undefined && 'pressed' in last && last.pressed ? last.t : null;
}
