/**
 * A run that follows another: it takes that one's log and goes as far as it was told that one has
 * come, no further. A little behind, it goes evenly; far behind, as fast as it can; where the log
 * was changed before its own time, it is built again. Whenever it passes a moment whose hash was
 * told, both must agree; where they do not, it is built again from the start.
 */
import type { TimedAction } from '../../engine/index.ts';
import { type Check, type Following, startFollowing } from './following.ts';
import { type Held, headOf, toStepS } from './held-run.ts';
import type { HostPorts } from './host-ports.ts';
import { MAX_GAP_MS } from './pace.ts';
import type { Fail } from './run-moves.ts';
import type { ToldChange } from './to-worker.ts';

/** Told of a head twice a second, it goes evenly when it stays this far behind, real seconds. */
const LAG_REAL_S = 0.6;
/** Further behind than this, it does not hurry but runs as fast as it can. */
const FAR_REAL_S = 4;
/** The other one rests: there within this, real seconds. */
const CLOSE_UP_REAL_S = 0.3;
/** So much work in one go, that what the page asks meanwhile is answered. */
const SLICE_MS = 25;
const SLICE_S = 1;

export function createFollow(ports: HostPorts, fail: Fail) {
  function take(state: Held, told: ToldChange): void {
    const following = state.following ?? startFollowing(told, state.run, ports.nowMs());
    const before = following.log;
    const log = [...before.slice(0, told.keep), ...told.add];
    following.log = log;
    following.headS = told.headS;
    following.mode = told.mode;
    following.speed = told.speed;
    state.following = following;
    state.speed = told.speed;
    if (told.keep < before.length || told.add.length > 0) takeLog(state, following);
    else if (toStepS(told.headS) < toStepS(state.run.timeS())) buildTo(state, told.headS);
    const ahead = following.checks.filter(({ s }) => s < told.headS);
    const check = told.hash === null ? [] : [{ s: told.headS, hash: told.hash }];
    following.checks = [...ahead, ...check];
    // Told of the moment where it stands already.
    goTo(state, state.run.timeS());
    settleMode(state);
  }

  /** New acts that are still to come are put in; for any other change the run is built again. */
  function takeLog(state: Held, following: Following): void {
    const { log, headS } = following;
    const known = state.run.log();
    state.log = log;
    const firstS = firstDifferenceS(known, log);
    const toS = Math.min(headS, firstS ?? headS);
    if (toStepS(toS) < toStepS(state.run.timeS()) || !putNew(state, known)) {
      following.checks = following.checks.filter(({ s }) => s <= toS);
      buildTo(state, Math.min(toS, state.run.timeS()));
    }
  }

  function putNew(state: Held, known: readonly TimedAction[]): boolean {
    const left = known.map(textOf);
    for (const action of state.log) {
      const at = left.indexOf(textOf(action));
      if (at >= 0) left.splice(at, 1);
      else if (!state.run.put(action)) return false;
    }
    return left.length === 0 && sameLog(state.run.log(), state.log);
  }

  /** What the page has of later is gone; it is sent anew as the run comes there. */
  function buildTo(state: Held, tS: number): void {
    state.pending = [];
    state.run = ports.createRun({ ...state.stage.setup, actions: [...state.log] });
    state.run.advanceTo(toStepS(tS));
    state.watch.connectAnew(state.run);
    state.head = headOf(state.run);
    state.sent = { frames: state.head.frames, events: state.head.events };
    if (state.following !== null) state.following.atS = state.run.timeS();
    ports.post({ type: 'cut', frames: state.sent.frames, events: state.sent.events });
  }

  /** As far as real time and what was told ask; true while more is to come. */
  function tick(state: Held, following: Following): boolean {
    const nowMs = ports.nowMs();
    const elapsedS = Math.min(MAX_GAP_MS, nowMs - following.lastMs) / 1000;
    following.lastMs = nowMs;
    const { headS, speed, mode } = following;
    const behindS = headS - following.atS;
    const lagS = mode === 'paused' ? 0 : LAG_REAL_S * speed;
    if (behindS > FAR_REAL_S * speed + lagS) catchUp(state, headS - lagS, nowMs);
    else if (behindS > 0) {
      const rate =
        mode === 'paused'
          ? Math.max(speed, behindS / CLOSE_UP_REAL_S)
          : speed * Math.min(3, 0.5 + (0.5 * behindS) / lagS);
      following.atS = Math.min(headS, following.atS + rate * elapsedS);
      const { frameS } = state.facts;
      const frames = Math.floor(following.atS / frameS + 1e-9) * frameS;
      goTo(state, following.atS >= headS ? headS : frames);
    }
    return settleMode(state);
  }

  function catchUp(state: Held, toS: number, startMs: number): void {
    while (state.following !== null && state.run.timeS() < toS) {
      goTo(state, Math.min(toS, state.run.timeS() + SLICE_S));
      if (ports.nowMs() - startMs > SLICE_MS) break;
    }
    if (state.following !== null) state.following.atS = state.run.timeS();
  }

  /** On to there, and to each moment before it whose hash was told. */
  function goTo(state: Held, tS: number): void {
    const { following } = state;
    if (following === null) return;
    const due = following.checks.filter(({ s }) => toStepS(s) <= toStepS(tS));
    following.checks = following.checks.filter((check) => !due.includes(check));
    for (const { s, hash } of due) {
      if (toStepS(s) < toStepS(state.run.timeS())) continue;
      state.run.advanceTo(toStepS(s));
      if (state.run.hash() !== hash) heal(state, following, { s, hash });
    }
    if (toStepS(tS) > toStepS(state.run.timeS())) state.run.advanceTo(toStepS(tS));
    state.head = headOf(state.run);
  }

  function heal(state: Held, following: Following, { s, hash }: Check): void {
    following.differed += 1;
    buildTo(state, 0);
    state.run.advanceTo(toStepS(s));
    state.watch.connectAnew(state.run);
    following.atS = state.run.timeS();
    if (state.run.hash() !== hash) fail('replay differs', `${s} s`);
  }

  /** What the page hears: it runs until it is where the other one rests. True while it is to be ticked. */
  function settleMode(state: Held): boolean {
    const { following } = state;
    if (following === null) return false;
    const there = toStepS(state.run.timeS()) >= toStepS(following.headS);
    const rests = following.mode === 'paused' && there;
    state.mode = rests ? 'paused' : 'playing';
    return !rests;
  }

  return { take, tick, check: goTo };
}

/** The time of the first act that is in one of them only, or in another place; null: none. */
function firstDifferenceS(one: readonly TimedAction[], other: readonly TimedAction[]) {
  const length = Math.max(one.length, other.length);
  for (let i = 0; i < length; i += 1) {
    const a = one[i];
    const b = other[i];
    if (a !== undefined && b !== undefined && textOf(a) === textOf(b)) continue;
    return Math.min(a?.t ?? Number.POSITIVE_INFINITY, b?.t ?? Number.POSITIVE_INFINITY);
  }
  return null;
}

function sameLog(one: readonly TimedAction[], other: readonly TimedAction[]): boolean {
  return one.length === other.length && firstDifferenceS(one, other) === null;
}

/** What came over a wire may name the fields of an act in another order. */
function textOf(action: TimedAction): string {
  return JSON.stringify(Object.entries(action).sort(([a], [b]) => (a < b ? -1 : 1)));
}
