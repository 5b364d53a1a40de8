export {
  type Burner,
  type BurnerChange,
  type BurnerOptions,
  createBurner,
} from './burner.ts';
export {
  type BurnerContext,
  type BurnerInput,
  NO_RESETS,
  type ResetRecord,
  type SavedLockout,
} from './context.ts';
export {
  describePhase,
  describeStep,
  type PhaseDescription,
  type StepDescription,
} from './describe.ts';
export { guardsFor } from './guards.ts';
export { INPUT_BITS, type ReadInput, readInput } from './inputs.ts';
export { burnerMachine } from './machine.ts';
export type { StateMeta } from './meta.ts';
export { type Outputs, outputsFor, outputsOf } from './outputs.ts';
export { PHASES, type Phase, STEP_INFO } from './phases.ts';
export {
  bitOf,
  CAUSES,
  type Cause,
  COMMANDS,
  type CommandName,
  has,
  INPUTS,
  type InputName,
  STEPS,
  type StepName,
  TARGETS,
  type TargetName,
  type Variant,
} from './terminals.ts';
export {
  DURATIONS,
  type DurationName,
  type TimingName,
  type Timings,
  timingParameters,
} from './timings.ts';
export { WATCHES, type Watch, type WatchName } from './watches.ts';
