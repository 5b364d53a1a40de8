/**
 * Owns one run and answers the page. It is the worker's whole behaviour but for the
 * timer that ticks it, so that it can be tried without a browser.
 */
import { answerQuestion } from './answer-question.ts';
import { createFollow } from './follow-run.ts';
import { startFollowing } from './following.ts';
import {
  copyFrames,
  type Held,
  headOf,
  isPress,
  isRunning,
  rest,
  statusOf,
  toStepS,
} from './held-run.ts';
import { type HostPorts, type OpenFailure, openFailure, type RunHost } from './host-ports.ts';
import { paceTargetS, startPace, tickPace } from './pace.ts';
import { createPlantWatch } from './plant-watch.ts';
import type { Failure, Refusal } from './protocol.ts';
import { createMoves } from './run-moves.ts';
import { type ToWorker, toWorkerSchema } from './to-worker.ts';

const NEXT_STEP_MAX_S = 300;
const TWIN_SLICE_S = 2;
const TWIN_SLICE_MS = 8;

export function createRunHost(ports: HostPorts): RunHost {
  let held: Held | null = null;
  let answered = 0;
  const moves = createMoves(ports, fail);
  const follow = createFollow(ports, fail);

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
      // A host that is lent to one session after the other counts for each anew.
      answered = 1;
      open(message);
      return;
    }
    if (message.type === 'dispose') {
      held = null;
      return;
    }
    if (held === null) return;
    const why = refusalOf(held, message);
    if (why !== null) {
      ports.post({ type: 'refused', why });
      report(held);
      return;
    }
    switch (message.type) {
      case 'play':
        play(held, message.speed);
        break;
      case 'pause':
        if (held.following === null) rest(held);
        break;
      case 'next step':
        runToNextStep(held);
        break;
      case 'act':
        if (message.ordered) moves.order(held, message.action);
        else moves.act(held, message.action);
        break;
      case 'freeze':
        held.frozen = message.on;
        if (message.on) rest(held);
        break;
      case 'cut to':
        moves.cutTo(held, message.tS);
        break;
      case 'follow':
        follow.take(held, message.told);
        break;
      case 'seek':
        if (held.following === null) moves.seek(held, message.tS);
        break;
      case 'live':
        if (held.following === null) moves.seek(held, held.head.s);
        break;
      case 'stop at':
        held.stopsAtEachStep = message.what === 'each step';
        break;
      case 'put back':
        moves.putBack(held);
        break;
      case 'meters':
        held.watch.setMeters(held.run, message.uses);
        break;
      case 'desk':
        held.watch.setDesk(message.entries);
        break;
      case 'ask':
        ask(held, message);
        return;
    }
    report(held);
  }

  function open(message: Extract<ToWorker, { type: 'open' }>): void {
    held = null;
    const { given, seed } = message;
    const stage = ports.openStage(message.id, message.kind, { item: message.item, given, seed });
    const log = message.follow?.add ?? message.log ?? stage.setup.actions;
    const run = ports.createRun({ ...stage.setup, actions: [...log] });
    const facts = stage.facts(run);
    const { setupHash, rewinds } = facts.work;
    if (message.setupHash !== undefined && message.setupHash !== setupHash) {
      throw openFailure('exercise changed', message.id);
    }
    run.advanceTo(toStepS(message.follow?.headS ?? message.untilS ?? facts.arriveS));
    const state: Held = {
      stage,
      facts,
      run,
      log: run.log(),
      pace: startPace(run.timeS(), ports.nowMs(), 1),
      mode: 'paused',
      speed: 1,
      note: null,
      head: headOf(run),
      sent: { frames: run.firstFrame(), events: 0 },
      nextStep: null,
      stopsAtEachStep: false,
      press: null,
      twin: stage.healthyUntilS > 0 ? ports.createRun(stage.healthySetup) : null,
      pending: [],
      watch: createPlantWatch(ports.bench, rewinds ? null : facts.parts),
      sentLog: null,
      frozen: false,
      following: null,
    };
    held = state;
    ports.post({ type: 'opened', facts });
    if (message.hash !== undefined && message.hash !== run.hash()) {
      fail('work differs', `${run.timeS()} s`);
    }
    if (message.follow !== undefined) {
      state.following = startFollowing(message.follow, run, ports.nowMs());
      follow.take(state, { ...message.follow, keep: message.follow.add.length, add: [] });
    } else if (message.log !== undefined) moves.takeFingersOff(state);
    for (const action of message.pending ?? []) {
      // Whether it may be done was asked when it was done: the class may have ordered it.
      if (facts.allow === null || facts.allow.includes(action.type)) moves.act(state, action);
      else moves.order(state, action);
    }
    report(state);
  }

  function ask(state: Held, { ask: number, question }: Extract<ToWorker, { type: 'ask' }>): void {
    try {
      const found = answerQuestion(ports, state, question);
      ports.post({ type: 'answer', ask: number, answer: found });
    } catch (error) {
      const why = messageOf(error);
      ports.post({ type: 'answer', ask: number, answer: { of: 'nothing', why } });
    }
  }

  function play(state: Held, speed: number): void {
    state.speed = speed;
    state.mode = 'playing';
    state.note = null;
    state.nextStep = null;
    moves.repace(state);
  }

  function runToNextStep(state: Held): void {
    state.mode = 'to next step';
    state.note = null;
    state.nextStep = {
      fromStep: state.run.status().step,
      untilS: state.run.timeS() + NEXT_STEP_MAX_S,
    };
    moves.repace(state);
  }

  function tick(): boolean {
    const state = held;
    if (state === null) return false;
    try {
      const twinRuns = runTwin(state);
      if (state.following !== null) {
        const before = state.run.timeS();
        const goesOn = follow.tick(state, state.following);
        if (goesOn || state.run.timeS() !== before) report(state);
        return goesOn || twinRuns;
      }
      if (!isRunning(state)) return twinRuns;
      const { endS } = state.stage;
      state.pace = tickPace(state.pace, ports.nowMs());
      const frames = Math.floor(paceTargetS(state.pace) / state.facts.frameS);
      const targetS = Math.min(endS, frames * state.facts.frameS);
      if (targetS <= state.run.timeS() && state.run.timeS() < endS) return true;
      if (state.nextStep === null && !state.stopsAtEachStep) moves.advance(state, targetS);
      else moves.advanceWatchingSteps(state, targetS);
      if (state.run.timeS() >= endS) {
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

  function report(state: Held): void {
    const { run, sent, head } = state;
    if (state.sentLog !== state.log) {
      state.sentLog = state.log;
      ports.post({ type: 'log', log: [...state.log], headS: head.s, hash: head.hash });
    }
    const frames = copyFrames(run, sent.frames, head.frames, state.facts.channels.length);
    const atHead = toStepS(run.timeS()) >= toStepS(head.s);
    const events = atHead ? run.events().slice(sent.events) : [];
    const pending = state.pending.map(
      (action) => ({ t: action.t, type: 'action', action }) as const,
    );
    const plant = state.watch.tell({
      run,
      log: state.log,
      headS: head.s,
      nowMs: ports.nowMs(),
      running: isRunning(state),
    });
    ports.post(
      {
        type: 'batch',
        firstFrame: sent.frames,
        frames,
        firstEvent: sent.events,
        events: [...events, ...pending],
        status: { answered, ...statusOf(state) },
        ...(plant === null ? {} : { plant }),
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
    else fail('simulation stopped', messageOf(error));
    if (held !== null) rest(held);
  }

  return { receive, tick };
}

/** What a class does not let a page do now; null where it does. */
function refusalOf(state: Held, message: ToWorker): Refusal | null {
  const { type } = message;
  const isAct = type === 'act' || type === 'play' || type === 'next step' || type === 'put back';
  if (state.following !== null) {
    return isAct || type === 'cut to' ? 'follows the class' : null;
  }
  if (!state.frozen || !isAct || ('ordered' in message && message.ordered)) return null;
  // A finger that was on a button may leave it.
  if (type === 'act' && isPress(message.action) && !message.action.pressed) return null;
  return 'frozen by class';
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
