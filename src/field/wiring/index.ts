export { isAcrossContact, wireAt } from './across.ts';
export { createWiring } from './create-wiring.ts';
export { type DescribedElement, describeWiring, type WiringDescription } from './describe.ts';
export { type ElementKind, SECOND_SETPOINT_BIT, type WiredParameters } from './elements.ts';
export { findWiringIssues, WIRING_ISSUE_CODES, type WiringIssue } from './issues.ts';
export {
  METER_KINDS,
  type MeterKind,
  type MeterQuestion,
  type MeterReading,
  readMeter,
} from './meter.ts';
export * from './parameters.ts';
export { prepareWiring } from './prepare-wiring.ts';
export {
  heatFuses,
  isFuseWhole,
  isWiringStale,
  readWiringWords,
  renewFuse,
  renewFuses,
  setOutputs,
  solveWiring,
} from './solve-wiring.ts';
export {
  BITS_A_WORD,
  elementPlace,
  isWorking,
  voltsAt,
  type Wiring,
  wordsFor,
} from './wiring.ts';
