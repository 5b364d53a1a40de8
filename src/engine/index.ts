export {
  faultsOf as faultsFor,
  leakPlacesOf,
  type PlantPart,
  partsOf,
  REPAIR_WAYS,
  type Remedy,
  type RepairWay,
  type Setting,
  settingsOf,
} from '../faults/index.ts';
export {
  BITS_A_WORD,
  type DescribedElement,
  describeWiring,
  type ElementKind,
  METER_KINDS,
  type MeterKind,
  type MeterQuestion,
  type MeterReading,
  type WiringDescription,
} from '../field/index.ts';
export {
  ACTION_TABLES,
  type Action,
  type ActionType,
  FAULT_ACTS,
  INSTRUCTOR_ACTS,
  type TimedAction,
} from './actions.ts';
export type { Bench } from './bench.ts';
export type { ChannelInfo } from './channels.ts';
export type { RunEvent } from './events.ts';
export { type InputReading, inputReadings } from './input-readings.ts';
export { HEARD_WHATS, type Heard, type HeardWhat } from './looks/listen.ts';
export { JOINED_BY } from './looks/look-at-terminals.ts';
export {
  LOOK_WHATS,
  LOOK_WORDS,
  type LookOptions,
  type LookReading,
  type LookWhat,
  type LookWord,
} from './looks/look-reading.ts';
export type { PlantFile, Profile } from './plant-file.ts';
export { createRun, type Run, type RunOptions, type RunStatus } from './run.ts';
export type { InitialCondition, LoadPoint, RunSetup } from './setup.ts';
export type { FaultOnset, FaultOrder, StandingFault } from './standing-faults.ts';
export { FRAME_S, STEP_S } from './step-run.ts';
export { DEVICE_WORDS, PROOF_WORDS } from './words.ts';
