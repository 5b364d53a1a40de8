/**
 * The page's end of a run: keeps what the worker sent, decides which moment is shown,
 * and hands that moment to the drawing each frame without passing through React.
 */
import type { Action } from '../../engine/index.ts';
import {
  createFrameHistory,
  cutFrames,
  type FrameHistory,
  frameAt,
  frameIndexAt,
  writeFrames,
} from './frame-history.ts';
import { momentAt } from './moment.ts';
import { createMomentPublisher } from './moment-publisher.ts';
import {
  type Failure,
  NEXT_STEP_SPEED,
  type Status,
  type ToPage,
  toPageSchema,
} from './protocol.ts';
import { createSavedRun } from './saved-run.ts';
import { createPlantSide } from './session-plant.ts';
import { createReasonSide, type ReasonerWays } from './session-reason.ts';
import type {
  MomentListener,
  Session,
  SessionOpening,
  SessionState,
  WorkerLike,
} from './session-types.ts';
import { advanceShownS } from './shown-clock.ts';
import { createStore } from './store.ts';
import type { ToWorker } from './to-worker.ts';
import { changeOfTold, createLead, type Told } from './told.ts';

/** Less than a frame apart is the same moment. */
const SAME_S = 0.05;

/**
 * @param what a scenario to watch, by its name, or how an exercise is to be opened
 * @param reasoner where reasoning is asked for; without it there is none
 */
export function createSession(
  worker: WorkerLike,
  what: string | SessionOpening,
  reasoner: ReasonerWays | null = null,
  nowMs: () => number = () => performance.now(),
): Session {
  const {
    play: playsAtOnce = true,
    follow: followed,
    ...opening
  } = typeof what === 'string' ? ({ kind: 'watch', id: what } as SessionOpening) : what;
  const store = createStore<SessionState>({
    phase: 'opening',
    facts: null,
    status: null,
    events: [],
    shownS: 0,
    lookingBack: false,
    failure: null,
    refusal: null,
    revision: 0,
  });
  const listeners = new Set<MomentListener>();
  let history: FrameHistory | null = null;
  let expected: readonly Float64Array[] | null = null;
  let shownS = 0;
  let lastAnimateMs = 0;
  let dirty = true;
  let scrubS: number | null = null;
  let resumeAfterLook = false;

  /** Messages sent, and the one whose answer must be in before a status counts again. */
  let sent = 0;
  let awaited = 0;
  let lastStatus: Status | null = null;
  let aim: Partial<Pick<Status, 'mode' | 'timeS'>> | null = null;
  let lookedBack = false;

  const publisher = createMomentPublisher(store);
  const saved = createSavedRun();
  const plant = createPlantSide({ send, perform, facts: () => store.read().facts });
  const lead = createLead(nowMs);
  /** The log that was told last of the run that is followed. */
  let followedLog = followed?.log ?? null;
  const reasoning = createReasonSide(reasoner, opening, saved.now);

  function send(message: ToWorker): void {
    sent += 1;
    worker.postMessage(message);
  }

  worker.onerror = (event) => {
    failWith('simulation stopped', event.message ?? '');
  };
  worker.onmessage = (event) => {
    const parsed = toPageSchema.safeParse(event.data);
    if (!parsed.success) {
      failWith('message not understood', parsed.error.message);
      return;
    }
    const message = parsed.data;
    switch (message.type) {
      case 'opened':
        history = createFrameHistory(message.facts.channels.length, message.facts.frameS);
        publisher.watch(message.facts.channels);
        store.write({ phase: 'open', facts: message.facts, failure: null });
        if (playsAtOnce && followedLog === null) send({ type: 'play', speed: 1 });
        break;
      case 'batch':
        if (history !== null) takeBatch(history, message);
        break;
      case 'cut': {
        if (history === null) return;
        cutFrames(history, message.frames);
        const { events, revision } = store.read();
        store.write({
          events: events.slice(0, message.events),
          revision: revision + 1,
        });
        dirty = true;
        break;
      }
      case 'refused': {
        const { refusal } = store.read();
        store.write({ refusal: { why: message.why, count: (refusal?.count ?? 0) + 1 } });
        break;
      }
      case 'expected':
        if (history === null) return;
        expected = framesOf(message.frames, history.width);
        store.write({ revision: store.read().revision + 1 });
        break;
      case 'log':
        saved.takeLog(message);
        break;
      case 'answer':
        plant.takeAnswer(message.ask, message.answer);
        break;
      case 'failed':
        failWith(message.failure, message.detail);
        break;
    }
  };

  function takeBatch(into: FrameHistory, batch: Extract<ToPage, { type: 'batch' }>): void {
    writeFrames(into, batch.firstFrame, batch.frames);
    const { events, status } = store.read();
    if (batch.events.length > 0 || events.length > batch.firstEvent) {
      store.write({ events: [...events.slice(0, batch.firstEvent), ...batch.events] });
    }
    if (batch.plant !== undefined) plant.takeNews(batch.plant);
    // Posted before the worker knew where the page wants to be: true, but no longer to the point.
    if (batch.status.answered >= awaited) {
      lastStatus = batch.status;
      aim = null;
      if (!sameMode(status, batch.status)) store.write({ status: batch.status });
    }
    // After the store: whoever saves what is told here asks it whether the run rests.
    saved.takeStatus(batch.status);
    const told = toldNow(batch.status);
    if (told !== null) lead.tell(told);
  }

  function toldNow({ timeS, hash, mode, speed }: Status): Told | null {
    const log = saved.now()?.log;
    return log === undefined ? null : { log, headS: timeS, hash, mode, speed };
  }

  function failWith(failure: Failure, detail: string): void {
    const { phase } = store.read();
    store.write({
      failure: { failure, detail },
      phase: phase === 'opening' ? 'failed' : phase,
    });
  }

  /** What the worker said last, but for what the page has asked of it since. */
  function statusNow(): Status | null {
    return lastStatus === null ? null : { ...lastStatus, ...aim };
  }

  function animate(nowMs: number): void {
    const elapsedS = Math.min(0.25, Math.max(0, (nowMs - lastAnimateMs) / 1000));
    lastAnimateMs = nowMs;
    const status = statusNow();
    if (history === null || status === null || history.count === 0) return;
    const running = status.mode !== 'paused' && scrubS === null;
    const before = shownS;
    if (scrubS !== null) shownS = scrubS;
    else if (status.timeS < shownS) shownS = status.timeS;
    else {
      const speed = status.mode === 'to next step' ? NEXT_STEP_SPEED : status.speed;
      shownS = advanceShownS(shownS, status.timeS, speed, elapsedS, running);
    }
    const lookingBack = scrubS !== null || status.timeS < status.headS - SAME_S;
    if (shownS !== before || lookingBack !== lookedBack || dirty) {
      dirty = false;
      lookedBack = lookingBack;
      const around = { tS: shownS, nowMs, running, headS: status.headS, lookingBack };
      const moment = momentAt(history, around);
      if (moment !== null) for (const listener of listeners) listener(moment);
    }
    publisher.publish(nowMs, {
      frame: shownFrame(),
      shownS,
      lookingBack: lookedBack,
      status: lastStatus,
    });
  }

  function shownFrame(): Float64Array | null {
    return history === null ? null : frameAt(history, frameIndexAt(history, shownS));
  }

  /** Whether the run itself goes back when someone looks back. */
  function rewinds(): boolean {
    return followedLog === null && (store.read().facts?.work.rewinds ?? true);
  }

  function settle(): void {
    // At work the plant stays where it is: only the record is looked at, until it is left.
    if (scrubS === null || !rewinds()) return;
    send({ type: 'seek', tS: scrubS });
    awaited = sent;
    aim = { mode: 'paused', timeS: scrubS };
    scrubS = null;
  }

  /** At work a look back ends before anything is done or let run. */
  function leaveTheRecord(): void {
    if (scrubS !== null && !rewinds()) backToLive();
    else settle();
  }

  function backToLive(): void {
    scrubS = null;
    if (followedLog !== null) {
      dirty = true;
      return;
    }
    send({ type: 'live' });
    awaited = sent;
    if (lastStatus !== null) {
      aim = { mode: 'paused', timeS: lastStatus.headS };
      shownS = lastStatus.headS;
      dirty = true;
    }
    if (resumeAfterLook) send({ type: 'play', speed: lastStatus?.speed ?? 1 });
    resumeAfterLook = false;
  }

  function perform(action: Action): void {
    leaveTheRecord();
    send({ type: 'act', action });
    saved.await(action, sent);
  }

  send({
    type: 'open',
    ...opening,
    ...(followed === undefined ? {} : { follow: changeOfTold(followed) }),
  });

  return {
    store,
    history: () => history,
    expectedFrames: () => expected,
    shownFrame,
    play(speed) {
      leaveTheRecord();
      send({ type: 'play', speed: speed ?? lastStatus?.speed ?? 1 });
    },
    pause: () => send({ type: 'pause' }),
    nextStep() {
      leaveTheRecord();
      send({ type: 'next step' });
    },
    order(what) {
      scrubS = null;
      if (what === 'next step') {
        send({ type: 'next step', ordered: true });
        return;
      }
      // Saved before it is sent, so that it is never done without being known to be ordered.
      saved.await(what, sent + 1);
      send({ type: 'act', action: what, ordered: true });
    },
    freeze(on) {
      if (on) scrubS = null;
      send({ type: 'freeze', on });
    },
    cutTo(tS) {
      scrubS = null;
      send({ type: 'cut to', tS });
      awaited = sent;
    },
    follow(told) {
      if (followedLog === null) throw new Error('opened to be acted on, not to follow');
      send({ type: 'follow', told: changeOfTold(told, followedLog) });
      followedLog = told.log;
    },
    onLead: (listener) => lead.listen(listener, lastStatus === null ? null : toldNow(lastStatus)),
    act: perform,
    perform,
    ...plant.acts,
    reason: reasoning.reason,
    headS: () => lastStatus?.headS ?? store.read().facts?.arriveS ?? 0,
    stopAt: (what) => send({ type: 'stop at', what }),
    putBack() {
      scrubS = null;
      send({ type: 'put back' });
      awaited = sent;
    },
    onLog: saved.listen,
    scrub(tS) {
      if (history === null || lastStatus === null) return;
      const mode = aim?.mode ?? lastStatus.mode;
      if (scrubS === null && !lookedBack) resumeAfterLook = mode === 'playing';
      if (mode !== 'paused' && followedLog === null) {
        send({ type: 'pause' });
        awaited = sent;
        aim = { mode: 'paused' };
      }
      scrubS = Math.max(0, Math.min(lastStatus.headS, tS));
      shownS = scrubS;
      dirty = true;
    },
    settle,
    backToLive,
    dismissFailure: () => store.write({ failure: null }),
    onMoment(listener) {
      listeners.add(listener);
      dirty = true;
      return () => listeners.delete(listener);
    },
    refresh() {
      dirty = true;
    },
    animate,
    close() {
      send({ type: 'dispose' });
      worker.terminate();
      listeners.clear();
      plant.close();
      reasoning.close();
    },
  };
}

function sameMode(a: Status | null, b: Status): boolean {
  return (
    a !== null &&
    a.mode === b.mode &&
    a.speed === b.speed &&
    a.note === b.note &&
    a.frozen === b.frozen &&
    a.follows?.differed === b.follows?.differed
  );
}

function framesOf(data: Float64Array, width: number): Float64Array[] {
  return Array.from({ length: data.length / width }, (_, k) =>
    data.subarray(k * width, (k + 1) * width),
  );
}
