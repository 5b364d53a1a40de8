/**
 * Owns one run and answers the page. It is the worker's whole behaviour but for the
 * timer that ticks it, so that it can be tried without a browser.
 *
 * A run that is rewound is built again from the start by its log; what the page already
 * holds is not sent twice. When the replay comes back to where the run had been, both
 * hashes must agree. Acting before that drops the later part of the log.
 */
import type { Action } from '../../engine/index.ts';
import {
  copyFrames,
  type Held,
  headOf,
  isPress,
  isRunning,
  statusOf,
  toStepS,
} from './held-run.ts';
import type { HostPorts, OpenFailure, RunHost } from './host-ports.ts';
import { paceTargetS, startPace, tickPace } from './pace.ts';
import { type Failure, NEXT_STEP_SPEED, type Speed } from './protocol.ts';
import { type ToWorker, toWorkerSchema } from './to-worker.ts';

/** The recorder keeps one hour; a run ends there rather than forget its own beginning. */
export const MAX_RUN_S = 3600;
const NEXT_STEP_MAX_S = 300;
const TWIN_SLICE_S = 2;
const TWIN_SLICE_MS = 8;
/** A reset shorter than the plant could notice is stretched to this. */
const MIN_PRESS_S = 0.3;

export function createRunHost(ports: HostPorts): RunHost {
  let held: Held | null = null;
  let answered = 0;

  function receive(message: unknown): void {
    answered += 1;
    const parsed = toWorkerSchema.safeParse(message);
    if (!parsed.success) {
      fail('message not understood', parsed.error.message);
      return;
    }
    try {
      answer(parsed.data);
    } catch (error) {
      stop(error);
    }
  }

  function answer(message: ToWorker): void {
    if (message.type === 'open') {
      open(message);
      return;
    }
    if (message.type === 'dispose') {
      held = null;
      return;
    }
    if (held === null) return;
    switch (message.type) {
      case 'play':
        play(held, message.speed);
        break;
      case 'pause':
        rest(held);
        break;
      case 'next step':
        runToNextStep(held);
        break;
      case 'act':
        act(held, message.action);
        break;
      case 'seek':
        seek(held, message.tS);
        break;
      case 'live':
        seek(held, held.head.s);
        break;
    }
    report(held);
  }

  function open(message: Extract<ToWorker, { type: 'open' }>): void {
    const stage = ports.openStage(message.scenario);
    const log = message.log ?? stage.setup.actions;
    const run = ports.createRun({ ...stage.setup, actions: [...log] });
    const facts = stage.facts(run);
    if (message.untilS !== undefined) run.advanceTo(toStepS(message.untilS));
    held = {
      stage,
      facts,
      run,
      log: run.log(),
      pace: startPace(run.timeS(), ports.nowMs(), 1),
      mode: 'paused',
      speed: 1,
      note: null,
      head: headOf(run),
      sent: { frames: 0, events: 0 },
      nextStep: null,
      press: null,
      twin: ports.createRun(stage.healthySetup),
      pending: [],
    };
    ports.post({ type: 'opened', facts });
    report(held);
  }

  function play(state: Held, speed: Speed): void {
    state.speed = speed;
    state.mode = 'playing';
    state.note = null;
    state.nextStep = null;
    repace(state);
  }

  function rest(state: Held): void {
    state.mode = 'paused';
    state.nextStep = null;
  }

  function runToNextStep(state: Held): void {
    state.mode = 'to next step';
    state.note = null;
    state.nextStep = {
      fromStep: state.run.status().step,
      untilS: state.run.timeS() + NEXT_STEP_MAX_S,
    };
    repace(state);
  }

  function repace(state: Held): void {
    state.pace = startPace(state.run.timeS(), ports.nowMs(), speedNow(state));
  }

  /** While a finger is on the reset, time runs as it does for the finger. */
  function speedNow(state: Held): number {
    if (state.press !== null && state.press.releaseDueS === null) return 1;
    return state.mode === 'to next step' ? NEXT_STEP_SPEED : state.speed;
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
    if (state.run.timeS() < state.head.s) cutLaterPart(state);
    // What is there at the start of a run belongs to its setup, not to an act.
    if (state.run.timeS() === 0) advance(state, state.facts.frameS);
    doNow(state, action);
    if (isPress(action)) {
      const pressedS = state.run.timeS();
      state.press = action.pressed ? { button: action.type, pressedS, releaseDueS: null } : null;
      repace(state);
    }
    state.head = headOf(state.run);
  }

  function cutLaterPart(state: Held): void {
    const tS = state.run.timeS();
    state.log = state.log.filter((entry) => entry.t <= tS);
    rebuild(state, tS);
    state.head = headOf(state.run);
    state.sent = { frames: state.head.frames, events: state.head.events };
    ports.post({ type: 'cut', frames: state.sent.frames, events: state.sent.events });
  }

  function seek(state: Held, wantedS: number): void {
    rest(state);
    letGo(state);
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

  function doNow(state: Held, action: Action): void {
    state.pending.push(state.run.act(action));
    state.log = state.run.log();
  }

  function tick(): boolean {
    const state = held;
    if (state === null) return false;
    try {
      const twinRuns = runTwin(state);
      if (!isRunning(state)) return twinRuns;
      state.pace = tickPace(state.pace, ports.nowMs());
      const frames = Math.floor(paceTargetS(state.pace) / state.facts.frameS);
      const targetS = Math.min(MAX_RUN_S, frames * state.facts.frameS);
      if (targetS <= state.run.timeS() && state.run.timeS() < MAX_RUN_S) return true;
      if (state.nextStep === null) advance(state, targetS);
      else advanceToNextStep(state, targetS);
      if (state.run.timeS() >= MAX_RUN_S) {
        rest(state);
        state.note = 'end of run';
      }
      report(state);
      return isRunning(state) || twinRuns;
    } catch (error) {
      stop(error);
      return false;
    }
  }

  function advanceToNextStep(state: Held, targetS: number): void {
    const wait = state.nextStep;
    if (wait === null) return;
    while (toStepS(state.run.timeS()) < toStepS(targetS)) {
      advance(state, state.run.timeS() + state.facts.frameS);
      if (state.run.status().step !== wait.fromStep) {
        rest(state);
        return;
      }
      if (state.run.timeS() >= wait.untilS) {
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

  function report(state: Held): void {
    const { run, sent, head } = state;
    const frames = copyFrames(run, sent.frames, head.frames, state.facts.channels.length);
    const atHead = toStepS(run.timeS()) >= toStepS(head.s);
    const events = atHead ? run.events().slice(sent.events) : [];
    const pending = state.pending.map(
      (action) => ({ t: action.t, type: 'action', action }) as const,
    );
    ports.post(
      {
        type: 'batch',
        firstFrame: sent.frames,
        frames,
        firstEvent: sent.events,
        events: [...events, ...pending],
        status: { answered, ...statusOf(state) },
      },
      [frames.buffer],
    );
    state.sent = { frames: head.frames, events: sent.events + events.length };
  }

  /** In slices, so that the run itself starts at once on a slow machine; true while more is to do. */
  function runTwin(state: Held): boolean {
    const { twin, stage, facts } = state;
    if (twin === null) return false;
    const startMs = ports.nowMs();
    while (twin.timeS() < stage.healthyUntilS) {
      twin.advanceTo(toStepS(Math.min(stage.healthyUntilS, twin.timeS() + TWIN_SLICE_S)));
      if (ports.nowMs() - startMs > TWIN_SLICE_MS) return true;
    }
    const frames = copyFrames(twin, 0, twin.frameCount(), facts.channels.length);
    ports.post({ type: 'expected', frames }, [frames.buffer]);
    state.twin = null;
    return false;
  }

  function fail(failure: Failure, detail: string): void {
    ports.post({ type: 'failed', failure, detail });
  }

  /** What was run stays on the page; only running on from here has ended. */
  function stop(error: unknown): void {
    const cause = error instanceof Error ? (error.cause as OpenFailure | undefined) : undefined;
    if (cause?.failure !== undefined) fail(cause.failure, cause.detail);
    else fail('simulation stopped', error instanceof Error ? error.message : String(error));
    if (held !== null) rest(held);
  }

  return { receive, tick };
}
