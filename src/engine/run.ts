/** A run: scenario, seed and action log, stepped at 10 ms. */
import { type Cause, STEPS, type StepName } from '../../machines/burner/index.ts';
import { createSimulatedClock } from '../../machines/index.ts';
import { type PlantPart, partsOf, type Setting } from '../faults/index.ts';
import { type MeterQuestion, type MeterReading, readMeter } from '../field/index.ts';
import { digest } from '../numeric/index.ts';
import type { Action, TimedAction } from './actions.ts';
import { type Bench, benchOf } from './bench.ts';
import type { ChannelInfo } from './channels.ts';
import { checkOrders } from './check-orders.ts';
import type { RunEvent } from './events.ts';
import { firstFrame, frameAt } from './frame-store.ts';
import { type Heard, listen } from './looks/listen.ts';
import { look, lookPlacesOf } from './looks/look.ts';
import type { LookOptions, LookReading, LookWhat } from './looks/look-reading.ts';
import { smell } from './looks/smell.ts';
import { dialsAsTheyStand } from './mend.ts';
import { createRunState, type RunState } from './run-state.ts';
import type { RunSetup } from './setup.ts';
import type { StandingFault } from './standing-faults.ts';
import { beginRun, FRAME_S, noteBurner, STEP_MS, stepRun } from './step-run.ts';
import { putAction, putOrders, takeAllDue } from './take-due.ts';

export interface RunStatus {
  readonly step: StepName;
  /** When the step was entered, s. */
  readonly sinceS: number;
  readonly lockout: Cause | null;
  readonly lockoutStep: StepName | null;
  readonly resets: number;
}

export interface Run {
  readonly setup: RunSetup;
  readonly channels: readonly ChannelInfo[];
  readonly frameS: number;
  timeS(): number;
  /** Steps on until the time is reached; a time already passed changes nothing. */
  advanceTo(timeS: number): void;
  /** Does it now, that is before the next step; returns it as the log keeps it. */
  act(action: Action): TimedAction;
  /**
   * Puts an act of a log at its own time, behind what is there for the same instant.
   *
   * @returns false where its time has passed, so that the run would have to be built anew
   */
  put(action: TimedAction): boolean;
  /** All actions with their times: those taken, then those still to come. */
  log(): readonly TimedAction[];
  events(): readonly RunEvent[];
  /** Frames recorded so far; frame k is at k · frameS. Those before `firstFrame` are gone. */
  frameCount(): number;
  firstFrame(): number;
  frame(k: number): Float64Array;
  /** Over every recorded quantity and every event so far. */
  hash(): string;
  status(): RunStatus;
  /** What a meter shows at this moment, without disturbing the run; null where there is no such place. */
  meter(question: MeterQuestion): MeterReading | null;
  /** Every part that a person may act on, whatever is wrong. */
  parts(): readonly PlantPart[];
  /** Every dial as it stands now. */
  settings(): readonly Setting[];
  /** What hands have left: locks, jumpers, servos held, gas parts opened. */
  bench(): Bench;
  /** What can be looked at on this plant. */
  lookPlaces(): readonly LookWhat[];
  /** What eyes find there now; null where this plant has no such thing. */
  look(what: LookWhat, options?: LookOptions): LookReading | null;
  /** What ears find, the loudest first. */
  listen(): readonly Heard[];
  /** Gas in the air of the boiler room as a nose has it: share of its lower explosive limit, roughly. */
  smell(): number;
  /** Hidden from a learner's tools: what stands. */
  standingFaults(): readonly StandingFault[];
}

export interface RunOptions {
  /** `hash only` records into one frame that is overwritten: for checking a log. */
  readonly keep?: 'all' | 'hash only';
  /** 10 unless it is to be proved that the step does not matter; the log's times must be multiples. */
  readonly stepMs?: 5 | 10;
  /** Called after each phase of a step (0 due, 1 drive, 2 plant, 3 read, 4 machine, 5 record), for the bench. */
  readonly probe?: (phase: number) => void;
}

/**
 * @throws RangeError when the plant's data contradict themselves, or a fault's onset has no time; a
 *   checked library never does
 */
export function createRun(setup: RunSetup, options: RunOptions = {}): Run {
  checkOrders(setup.faults);
  const probe = options.probe ?? null;
  const keep = options.keep === 'hash only' ? 'last frame' : 'all';
  const stepMs = options.stepMs ?? STEP_MS;
  const clock = createSimulatedClock();
  const run: RunState = createRunState(setup, clock, keep, stepMs, (change) =>
    noteBurner(run, change),
  );
  const { burner, store } = run;
  putOrders(run);
  takeAllDue(run, 0);
  // Behind loads and faults of the same instant, as an act of that instant would come.
  for (const action of setup.actions) putAction(run, action);
  beginRun(run);

  const timeS = () => (run.steps * stepMs) / 1000;
  return {
    setup,
    channels: run.channels,
    frameS: FRAME_S,
    timeS,
    advanceTo(timeS) {
      const until = Math.round((timeS * 1000) / stepMs);
      while (run.steps < until) stepRun(run, probe);
    },
    act(action) {
      const timed: TimedAction = { t: timeS(), ...action };
      putAction(run, timed);
      return timed;
    },
    put(action) {
      if (Math.round(action.t * 1000) < run.steps * stepMs) return false;
      putAction(run, action);
      return true;
    },
    log: () => [
      ...run.taken,
      ...run.due.entries.flatMap(({ what }) => (what.kind === 'action' ? [what.action] : [])),
    ],
    events: () => run.events,
    frameCount: () => store.count,
    firstFrame: () => firstFrame(store),
    frame: (k) => frameAt(store, k),
    hash: () => digest(run.hash),
    status: () => ({
      step: STEPS[run.logic.step] as StepName,
      sinceS: run.stepSinceMs / 1000,
      lockout: burner.cause,
      lockoutStep: burner.lockoutStep,
      resets: burner.resets.accepted,
    }),
    meter: (question) => readMeter(run.field.wiring, question),
    parts: () => partsOf(run.faults.sound),
    settings: () => dialsAsTheyStand(run),
    bench: () => benchOf(run),
    lookPlaces: () => lookPlacesOf(run),
    look: (what, options) => look(run, what, options),
    listen: () => listen(run),
    smell: () => smell(run),
    standingFaults: () => run.faults.standing,
  };
}
