import type { ToolRun } from '../../bench/index.ts';
import { FRAME_S, type Run } from '../../engine/index.ts';
import { AFTER_LOCKOUT_S, CALL_S, IN_SERVICE_S, type Plan } from '../atlas/plan.ts';
import { AT_REST, ISOLATED, LOCKED_OUT } from '../observe/moment.ts';
import { durationReading, historyReadings, panelReadings } from '../observe/panel-readings.ts';
import type { Reading } from '../observe/reading.ts';
import type { Seen } from '../score/decision.ts';
import { momentAsked } from './check-asked.ts';
import { createFrameTail } from './frame-tail.ts';
import { EYES, type Hanging } from './hanging.ts';
import {
  endsIn,
  isOfTool,
  isStep,
  isWatching,
  lastLockoutS,
  type Situation,
  situationNow,
} from './situation.ts';

/** Eyes and meters are asked every so many frames, as an atlas asks eyes. */
const GLANCE_FRAMES = 5;
const IN_SERVICE = 'modulation';
/** What has not come to rest by then is read as it is, s. */
const PATIENCE_S = 150;

interface Hung {
  readonly hanging: Hanging;
  /** What is told with its own decision. */
  readonly seen: Seen[];
  /** Its first reading is still to come. */
  isNew: boolean;
  /** It was put there for the start that is to come or is on. */
  forStart: boolean;
  /** Steps of that start that it has been through. */
  steps: number;
  /** The situation that it has been read in, for good. */
  readIn: Situation | null;
}

/** Eyes on the panel and on what hangs at the plant, from step to step. */
export interface PlantFollowed {
  /** On to a moment; what comes to its end on the way is told. */
  goTo(t: number): void;
  /** Again after the plant has answered to hands. */
  refresh(): void;
  moment(): string;
  /** The newest frames, for tools. */
  readonly tail: ToolRun;
  /** What the panel shows whoever comes. */
  arrive(): readonly Seen[];
  /**
   * @returns where its first reading is written, once it has settled or its step has ended; then, without
   *   readings, each step of the first start in which it is kept up
   */
  hang(hanging: Hanging): readonly Seen[];
  /** Eyes go to what is seen at once. */
  takeEyesOff(): void;
  /** What can be read now is read, whatever would come of it later. */
  readNow(): void;
  /** The same, because somebody draws a conclusion: what comes later was not asked for it. */
  conclude(): void;
  /** The plant is about to be worked on. */
  work(): void;
  /** What stands now was so before the last work. */
  isOfBefore(): boolean;
  /** Hands were at the plant. */
  disturb(): void;
  /**
   * What the steps passed since have told; nothing before there were any.
   *
   * @param forGood there may be no start to come: what tools have told at rest is told without
   */
  takeWatched(forGood: boolean): readonly Seen[];
}

/** @param onRest called where a start has come to its end and has been watched to it */
export function followPlant(run: Run, plan: Plan, onRest: () => void): PlantFollowed {
  const { channels } = run;
  const hung = new Map<string, Hung>();
  const tail = createFrameTail(run);
  /** Nobody was there to see what came before. */
  let present = false;
  let startS = 0;
  let actedS = 0;
  let workedS = -1;
  /** The last lockout that was read from the panel. */
  let readLockoutS = -1;
  let watched: Seen[] = [];
  let situation = situationNow(run, 0);

  /** Whether the plant stays as it is until somebody does something. */
  function rests(): boolean {
    const { moment, panelTold } = situation;
    if (moment === AT_REST || moment === ISOLATED) return true;
    if (moment === LOCKED_OUT || moment === IN_SERVICE) return panelTold;
    return isStuck();
  }
  function isStuck(): boolean {
    const { moment } = situation;
    return isStep(moment) && moment !== IN_SERVICE && run.timeS() - startS >= plan.untilS - CALL_S;
  }

  /** A lockout that stands since before the last work is none of the plant as it is now. */
  function isOfBefore(): boolean {
    return situation.moment === LOCKED_OUT && lastLockoutS(run) < workedS;
  }

  function readHistory(into: Seen[]): void {
    if (situation.historyTold) return;
    situation.historyTold = true;
    readLockoutS = lastLockoutS(run);
    into.push({ moment: LOCKED_OUT, readings: historyReadings(run.status()) });
    into.push(endsIn('lockout'));
  }

  function readPanel(into: Seen[], frame: Float64Array, durationS: number | null): void {
    const { moment } = situation;
    if (situation.panelTold || moment === ISOLATED) return;
    situation.panelTold = true;
    const duration = durationS === null ? [] : [durationReading(durationS)];
    into.push({ moment, readings: [...panelReadings(channels, frame), ...duration] });
  }

  function readHung(one: Hung, forGood: boolean): void {
    const hungS = run.timeS() - one.hanging.sinceS;
    if (one.readIn === situation || hungS < one.hanging.warmsUpS || isOfBefore()) return;
    const readings: readonly Reading[] = one.hanging.told();
    const moment = momentAsked(one.hanging.check, situation.moment);
    const isFirst = one.isNew;
    one.isNew = false;
    if (forGood) one.readIn = situation;
    if (isStep(moment)) one.steps += 1;
    if (readings.length === 0) return;
    if (isFirst) {
      one.seen.push({ moment, readings });
      return;
    }
    if (moment === ISOLATED) return;
    watched.push({ moment, readings });
    const isAsked = one.forStart && !one.seen.some((seen) => seen.moment === moment);
    if (isAsked) one.seen.push({ moment, readings: [] });
  }

  function takeOff(slot: string): void {
    const one = hung.get(slot);
    if (one?.isNew) readHung(one, false);
    hung.delete(slot);
  }

  /** A start is over: who leaves a tool on for the next one asks anew. */
  function endStart(): void {
    for (const one of hung.values()) if (one.steps > 0) one.forStart = false;
  }

  /** The last that was seen of a situation is what it told. */
  function close(endS: number): void {
    if (!present) return;
    const isWhole = isStep(situation.moment) && !situation.disturbed && !situation.panelTold;
    if (situation.moment === LOCKED_OUT) readHistory(watched);
    // A step that went on by itself was only slow.
    if (isStuck() && situation.disturbed && !situation.panelTold)
      watched.push(endsIn(situation.moment));
    readPanel(watched, tail.newest(), isWhole ? endS - situation.fromS : null);
    for (const one of hung.values()) readHung(one, true);
  }

  /** A start that has come to its end is watched for as long as an atlas watches it. */
  function readWhereItEnds(): void {
    const { moment, fromS, panelTold } = situation;
    if (!present || panelTold) return;
    const waitS = moment === LOCKED_OUT ? AFTER_LOCKOUT_S : IN_SERVICE_S;
    if (isStep(moment) && moment !== IN_SERVICE) return;
    if (moment === AT_REST || moment === ISOLATED || run.timeS() - fromS < waitS - 1e-6) return;
    if (moment === LOCKED_OUT) readHistory(watched);
    else watched.push(endsIn(moment));
    readPanel(watched, tail.newest(), null);
    for (const one of hung.values()) readHung(one, true);
    endStart();
    onRest();
  }

  function refresh(): void {
    const next = situationNow(run, Math.max(situation.fromS, actedS));
    if (next.moment === situation.moment) return;
    close(next.fromS);
    // A plant that leaves its service winds down and may begin again: that is not the same start.
    const begins = !isStep(situation.moment) || situation.moment === IN_SERVICE;
    if (begins || next.moment === AT_REST || next.moment === ISOLATED) endStart();
    situation = next;
    if (begins) startS = next.fromS;
    // A lockout that comes back with the supply is the one that was read before it went off.
    const lockoutS = next.moment === LOCKED_OUT ? lastLockoutS(run) : null;
    if (lockoutS === null) return;
    situation.panelTold = situation.historyTold = lockoutS === readLockoutS;
  }

  function glance(): void {
    tail.take();
    if (run.frameCount() % GLANCE_FRAMES !== 0) return;
    for (const one of hung.values()) {
      one.hanging.glance(run);
      if (!one.isNew || !rests()) continue;
      const waitedS = run.timeS() - one.hanging.sinceS;
      if (one.hanging.steady() || waitedS >= PATIENCE_S) readHung(one, true);
    }
  }

  return {
    goTo(t) {
      for (;;) {
        const frameS = (Math.floor(run.timeS() / FRAME_S + 1e-6) + 1) * FRAME_S;
        if (frameS > t + 1e-9) break;
        run.advanceTo(frameS);
        refresh();
        glance();
        readWhereItEnds();
      }
      run.advanceTo(t);
      refresh();
    },
    refresh,
    moment: () => situation.moment,
    tail: tail.view,
    arrive() {
      present = true;
      const seen: Seen[] = [];
      const { moment, fromS } = situation;
      const isInService = moment === IN_SERVICE && run.timeS() - fromS >= IN_SERVICE_S;
      if (moment === LOCKED_OUT) readHistory(seen);
      if (isInService || isStuck()) seen.push(endsIn(moment));
      // Nobody knows how long it has been so.
      situation.disturbed = true;
      if (isStep(moment) && !isInService && !isStuck()) return seen;
      readPanel(seen, tail.newest(), null);
      // What changes yet at rest is shown again when heat is called for.
      if (moment === AT_REST) situation.panelTold = false;
      return seen;
    },
    hang(hanging) {
      const seen: Seen[] = [];
      takeOff(hanging.slot);
      hung.set(hanging.slot, {
        hanging,
        seen,
        isNew: true,
        forStart: true,
        steps: 0,
        readIn: null,
      });
      return seen;
    },
    takeEyesOff: () => takeOff(EYES),
    readNow() {
      if (situation.moment === LOCKED_OUT) readHistory(watched);
      if (isStuck() && !situation.panelTold) {
        watched.push(endsIn(situation.moment));
        readPanel(watched, tail.newest(), null);
        for (const one of hung.values()) readHung(one, true);
      }
      for (const one of hung.values()) {
        if (one.isNew && (rests() || one.hanging.steady())) readHung(one, rests());
      }
    },
    conclude() {
      this.readNow();
      for (const one of hung.values()) one.forStart = false;
    },
    work() {
      this.conclude();
      workedS = run.timeS();
    },
    isOfBefore,
    disturb() {
      actedS = run.timeS();
      situation.disturbed = true;
    },
    takeWatched(forGood) {
      if (!watched.some(isWatching) && !(forGood && watched.some(isOfTool))) return [];
      const taken = watched;
      watched = [];
      return taken;
    },
  };
}
