/** What a run holds between steps: plant, field, controller, what is due, what was noted. */
import {
  type Burner,
  type BurnerChange,
  createBurner,
  type SimulatedClock,
} from '../../machines/index.ts';
import type { FaultSubject } from '../faults/index.ts';
import { createField, createReadings, type Field, type FieldReadings } from '../field/index.ts';
import { addText, createHash, type HashState, type RandomState } from '../numeric/index.ts';
import type { TimedAction } from './actions.ts';
import { type ChannelInfo, channelsOf, type LogicWords, movingPlaces } from './channels.ts';
import type { DrivenFault } from './driven-fault.ts';
import type { RunEvent } from './events.ts';
import { createFrameStore, type FrameStore } from './frame-store.ts';
import { createHands, type Hands } from './hands.ts';
import { copyData } from './live-parameters.ts';
import { createPlant, type PlantState } from './plant-state.ts';
import { createSchedule, type Schedule } from './schedule.ts';
import type { RunSetup } from './setup.ts';
import {
  createStandingFaults,
  type FaultOrder,
  intermittentChance,
  type StandingFaults,
} from './standing-faults.ts';

/** What comes at its time: from the log, from the scenario, from the plant by itself. */
export type Due =
  | { readonly kind: 'action'; readonly action: TimedAction }
  | { readonly kind: 'load'; readonly load: number }
  | { readonly kind: 'fault'; readonly order: FaultOrder; readonly place: number }
  | { readonly kind: 'driven'; readonly driven: DrivenFault };

export const FRAME_MS = 100;

export interface RunState {
  readonly setup: RunSetup;
  readonly stepMs: number;
  readonly stepS: number;
  readonly stepsPerFrame: number;
  readonly faults: StandingFaults;
  readonly plant: PlantState;
  readonly field: Field;
  readonly readings: FieldReadings;
  readonly clock: SimulatedClock;
  readonly burner: Burner;
  readonly logic: LogicWords;
  readonly due: Schedule<Due>;
  /** One for each ordered fault that is intermittent. */
  readonly chances: readonly RandomState[];
  /** Ordered faults, by their place, that a repair has ended for good. */
  readonly mended: boolean[];
  /** Set going by an act, and not at its end yet. */
  readonly driven: DrivenFault[];
  readonly hands: Hands;
  /** Actions already done. */
  readonly taken: TimedAction[];
  readonly events: RunEvent[];
  readonly channels: readonly ChannelInfo[];
  /** Edges of the gas train whose opening is recorded. */
  readonly moving: Int32Array;
  readonly store: FrameStore;
  readonly hash: HashState;
  steps: number;
  /** When the first of `due` comes, ms. */
  dueMs: number;
  /** When the controller's first timer falls due, ms. */
  clockDueMs: number;
  /** When the present step of the sequence was entered, ms. */
  stepSinceMs: number;
}

export function createRunState(
  setup: RunSetup,
  clock: SimulatedClock,
  keep: 'all' | 'last frame',
  stepMs: number,
  changes: (change: BurnerChange) => void,
): RunState {
  const sound = subjectOf(setup);
  const live = copyData(sound);
  const plant = createPlant(live, setup.initial, setup.seed);
  const field = createField(live, setup.seed, setup.initial.hour);
  const channels = channelsOf(plant, field);
  return {
    setup,
    stepMs,
    stepS: stepMs / 1000,
    stepsPerFrame: FRAME_MS / stepMs,
    faults: createStandingFaults(sound, live),
    plant,
    field,
    readings: createReadings(),
    clock,
    burner: createBurner({
      variant: setup.plant.variant,
      timings: setup.profile.timings,
      clock,
      changes,
    }),
    logic: { inputs: 0, commands: 0, step: 0, target: 0 },
    due: createSchedule<Due>(),
    chances: setup.faults.map((order, place) => intermittentChance(setup.seed, order, place)),
    mended: setup.faults.map(() => false),
    driven: [],
    hands: createHands(),
    taken: [],
    events: [],
    channels,
    moving: movingPlaces(plant),
    store: createFrameStore(channels.length, keep),
    hash: createHash(),
    steps: 0,
    dueMs: 0,
    clockDueMs: 0,
    stepSinceMs: 0,
  };
}

export function note(run: RunState, event: RunEvent): void {
  run.events.push(event);
  addText(run.hash, JSON.stringify(event));
}

/** A copy of the plant's data with what the profile decides about its devices filled in. */
function subjectOf(setup: RunSetup): FaultSubject {
  const copy = copyData<FaultSubject>(setup.plant);
  const { flameFailureResponseS, requiredAirChanges } = setup.profile.timings;
  for (const relay of copy.field.flameRelays) relay.responseS = flameFailureResponseS;
  for (const counter of copy.field.airChangeCounters) counter.changesRequired = requiredAirChanges;
  return copy;
}
