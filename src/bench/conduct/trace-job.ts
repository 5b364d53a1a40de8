import type { DeskEntry } from '../../../machines/index.ts';
import {
  createRun,
  FRAME_S,
  type PlantPart,
  type Run,
  type RunSetup,
  STEP_S,
  type TimedAction,
} from '../../engine/index.ts';
import { arrivedS } from './arrived.ts';
import { handsAfter } from './hands-on.ts';
import { isLive, voltsBetween, type WireBits, wireBitsOf } from './leads.ts';
import { lookedAt } from './looked-at.ts';
import { momentOf, type Reader, readerOf } from './read-moment.ts';
import type { Act, JobTrace, LeadState, Moment } from './trace-types.ts';
import { createWatch, leakChecksOf, pressedOf, type Watch, watchFrame } from './watch-frames.ts';
import { wholeLog } from './whole-log.ts';

type CheckAction = Extract<TimedAction, { type: 'check' }>;

/** The setup again with everything that was done, ready to be run. */
interface Replay {
  readonly run: Run;
  readonly reader: Reader;
  readonly bits: WireBits;
  readonly parts: readonly PlantPart[];
  readonly watch: Watch;
  readonly acts: Act[];
  /** Pairs of places that a multimeter was on at any time, and their volts before the isolator went off. */
  readonly pairs: readonly CheckAction[];
  readonly voltsBefore: Map<string, number>;
}

/**
 * Runs a log again, once, and keeps what judging needs: how the plant stood at each act of the learner,
 * at each handover and when fuel was let in.
 *
 * @param log everything done, with or without what the setup itself brings
 * @param untilS how far to look; left out: to the last thing done
 */
export function traceJob(
  setup: RunSetup,
  log: readonly TimedAction[],
  desk: readonly DeskEntry[],
  untilS?: number,
): JobTrace {
  const fromS = arrivedS(desk);
  const endS = untilS ?? Math.max(fromS, log.at(-1)?.t ?? 0, desk.at(-1)?.t ?? 0);
  const actions = wholeLog(setup.actions, log);
  const mine = actions.filter(({ t }) => t >= fromS && t <= endS);
  const replay = createReplay({ ...setup, actions }, mine);
  const { run, reader, watch, parts } = replay;

  run.advanceTo(fromS);
  const arrival = momentOf(run, reader);
  const settingsAtArrival = run.settings();
  const handovers: Moment[] = [];
  const given = desk.filter(({ type }) => type === 'hand over').map(({ t }) => t);
  let at = 0;
  while (at < mine.length) {
    const t = (mine[at] as TimedAction).t;
    for (const s of given) if (s < t) takeHandover(replay, s, handovers);
    goTo(replay, t);
    at = takeInstant(replay, mine, at);
  }
  for (const s of given) if (s <= endS) takeHandover(replay, s, handovers);
  goTo(replay, endS);
  // What was done in the last instant is done.
  run.advanceTo(endS + STEP_S);

  return {
    plant: setup.plant,
    parts,
    arrivedS: fromS,
    endS,
    arrival,
    end: momentOf(run, reader),
    acts: replay.acts,
    leakChecks: leakChecksOf(watch),
    pressed: pressedOf(watch),
    firings: watch.firings,
    lightOffs: watch.lightOffs,
    handovers,
    // Tools, and those who judge by them, do not see faults.
    events: run.events().filter(({ type }) => type !== 'fault'),
    sheetSettings: createRun(soundSetup(setup), { keep: 'hash only' }).settings(),
    settingsAtArrival,
    settingsAtEnd: run.settings(),
  };
}

/** The same plant with nothing wrong and nothing done. */
export function soundSetup(setup: RunSetup): RunSetup {
  return { ...setup, faults: [], actions: [] };
}

function createReplay(setup: RunSetup, mine: readonly TimedAction[]): Replay {
  const run = createRun(setup, { keep: 'hash only' });
  return {
    run,
    reader: readerOf(run),
    bits: wireBitsOf(run),
    parts: run.parts(),
    watch: createWatch(),
    acts: [],
    pairs: mine.filter(isLeads),
    voltsBefore: new Map(),
  };
}

/** On to a moment, ten looks a second. */
function goTo({ run, reader, watch }: Replay, t: number): void {
  for (;;) {
    const frameS = (Math.floor(run.timeS() / FRAME_S + 1e-6) + 1) * FRAME_S;
    if (frameS > t) break;
    run.advanceTo(frameS);
    watchFrame(watch, run, reader);
  }
  run.advanceTo(t);
}

/** All acts of one instant, each judged by what hands had done until then. */
function takeInstant(replay: Replay, mine: readonly TimedAction[], first: number): number {
  const { run, reader, parts, watch, voltsBefore, pairs } = replay;
  const { t } = mine[first] as TimedAction;
  let bench = run.bench();
  let touched = false;
  let at = first;
  for (; at < mine.length && (mine[at] as TimedAction).t === t; at++) {
    const action = mine[at] as TimedAction;
    // The plant must have gone on for a step to answer to what was done in the same instant.
    if (touched && action.type === 'check') run.advanceTo(t + STEP_S);
    if (action.type === 'supply' && !action.on && bench.supplyOn) {
      for (const pair of pairs)
        voltsBefore.set(keyOf(pair), voltsBetween(run, pair.place, pair.other));
    }
    replay.acts.push({
      action,
      before: { ...momentOf(run, reader, bench), t },
      leads:
        action.type === 'check' && isLeads(action) ? leadsOf(replay, action, bench.supplyOn) : null,
      inside: isInside(run, action),
    });
    if (action.type === 'check' && LEAK_CHECKS.has(action.what)) {
      watch.wet.push({ place: action.place, t, underPressureS: null });
    }
    if (action.type !== 'check') touched = true;
    bench = handsAfter(bench, action, parts);
  }
  return at;
}
const LEAK_CHECKS = new Set(['leak spray', 'leak test', 'decay test']);

function leadsOf(
  { run, bits, voltsBefore }: Replay,
  check: CheckAction,
  supplyOn: boolean,
): LeadState {
  const { place, other } = check;
  const frame = run.frame(run.frameCount() - 1);
  const volts = voltsBetween(run, place, other);
  const between = run.meter({ kind: 'ohms', from: place, to: other })?.live ?? false;
  return {
    live: between || (supplyOn && (isLive(bits, frame, place) || isLive(bits, frame, other))),
    volts,
    voltsBeforeIsolation: voltsBefore.get(keyOf(check)) ?? null,
  };
}

function isInside(run: Run, action: TimedAction): boolean {
  const seen = lookedAt({ action });
  const what = run.lookPlaces().find((one) => one === seen);
  return what !== undefined && (run.look(what)?.needsOpening ?? false);
}

function takeHandover(replay: Replay, t: number, handovers: Moment[]): void {
  if (handovers.some((moment) => moment.t >= t)) return;
  goTo(replay, t);
  // What was done in the same instant is done.
  replay.run.advanceTo(t + STEP_S);
  handovers.push({ ...momentOf(replay.run, replay.reader), t });
}

function isLeads(action: TimedAction): action is CheckAction {
  return (
    action.type === 'check' && action.what.startsWith('multimeter') && !action.what.endsWith('amps')
  );
}

function keyOf({ place, other }: CheckAction): string {
  return `${place}|${other}`;
}
