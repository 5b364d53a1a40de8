export { faultsOf as faultsFor } from '../faults/index.ts';
export { ACTION_TABLES, type Action, type ActionType, type TimedAction } from './actions.ts';
export type { ChannelInfo } from './channels.ts';
export type { RunEvent } from './events.ts';
export { type InputReading, inputReadings } from './input-readings.ts';
export type { PlantFile, Profile } from './plant-file.ts';
export {
  createRun,
  FRAME_S,
  type Run,
  type RunOptions,
  type RunStatus,
  STEP_S,
} from './run.ts';
export type { InitialCondition, LoadPoint, RunSetup } from './setup.ts';
export type { FaultOnset, FaultOrder, StandingFault } from './standing-faults.ts';
export { DEVICE_WORDS, PROOF_WORDS } from './words.ts';
