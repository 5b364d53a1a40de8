export {
  type AirChangeCounterParameters,
  airChangeCounterParameters,
} from './air-change-counter.ts';
export { type ClosedProofParameters, closedProofParameters } from './closed-proof.ts';
export type { Contact } from './contact.ts';
export { createField } from './create-field.ts';
export { type CurveParameters, curveParameters } from './curve.ts';
export {
  type CurveSupervisionParameters,
  curveSupervisionParameters,
} from './curve-supervision.ts';
export { driveField } from './drive-field.ts';
export {
  type DriveParameters,
  type FixedSpeedParameters,
  fixedSpeedParameters,
  type VariableSpeedParameters,
  variableSpeedParameters,
} from './drive-parameters.ts';
export {
  type FeedControlParameters,
  modulatingFeedParameters,
  onOffFeedParameters,
} from './feed-control.ts';
export type { Field } from './field.ts';
export type { FieldParameters } from './field-parameters.ts';
export {
  type FiringRateParameters,
  type PressureFiringRateParameters,
  pressureFiringRateParameters,
  type TemperatureFiringRateParameters,
  temperatureFiringRateParameters,
} from './firing-rate.ts';
export { type FlameRelayParameters, flameRelayParameters } from './flame-relay.ts';
export type { FlameSensorParameters } from './flame-sensor.ts';
export { holdServo } from './hold-servo.ts';
export {
  type IgnitionTransformerParameters,
  ignitionTransformerParameters,
} from './ignition-transformer.ts';
export {
  type InterspaceComparatorParameters,
  interspaceComparatorParameters,
} from './interspace-comparator.ts';
export {
  type IonisationSensorParameters,
  ionisationSensorParameters,
} from './ionisation-sensor.ts';
export { type IrSensorParameters, irSensorParameters } from './ir-sensor.ts';
export { type FieldIssue, findFieldIssues } from './issues.ts';
export { type LevelProbeParameters, levelProbeParameters } from './level-probe.ts';
export { type DriveSight, lookAtDrive } from './look-at-drive.ts';
export type { FieldOutputs } from './outputs.ts';
export type { FiringMode, Panel } from './panel.ts';
export { prepareField } from './prepare-field.ts';
export { type PressureSwitchParameters, pressureSwitchParameters } from './pressure-switch.ts';
export { readField, settleField } from './read-field.ts';
export { type RelayParameters, relayParameters } from './relay.ts';
export {
  CONTROL_SECTIONS,
  type ControlParameters,
  FIELD_SECTIONS,
  type FieldDevices,
  type Section,
} from './sections.ts';
export { type ServoParameters, servoParameters } from './servo.ts';
export { createReadings, type FieldReadings, SIGNALS, type Signal } from './signals.ts';
export { type SupplyParameters, supplyParameters } from './supply.ts';
export { type PointsParameters, pointsParameters } from './targets.ts';
export { TEMPERATURES, type TemperatureSignal } from './temperature-signals.ts';
export {
  type TemperatureSwitchParameters,
  temperatureSwitchParameters,
} from './temperature-switch.ts';
export { ALL_INPUTS, COMMAND_BITS, INPUT_BITS, TARGET_INDEX } from './terminals.ts';
export { type ThermometerParameters, thermometerParameters } from './thermometer.ts';
export {
  type RemoteContactParameters,
  remoteContactParameters,
  type TimeClockParameters,
  timeClockParameters,
} from './time-clock.ts';
export { type TransmitterParameters, transmitterParameters } from './transmitter.ts';
export { type UvSensorParameters, uvSensorParameters } from './uv-sensor.ts';
export { type WaterCutOffParameters, waterCutOffParameters } from './water-cut-off.ts';
export {
  BITS_A_WORD,
  type BridgeParameters,
  bridgeParameters,
  type CableParameters,
  cableParameters,
  controllerInputParameters,
  type DescribedElement,
  describeWiring,
  type ElementKind,
  type FuseParameters,
  findWiringIssues,
  fuseParameters,
  isAcrossContact,
  isFuseWhole,
  type JointParameters,
  jointParameters,
  type LoadParameters,
  loadParameters,
  METER_KINDS,
  type MeterKind,
  type MeterQuestion,
  type MeterReading,
  readMeter,
  readWiringWords,
  renewFuse,
  renewFuses,
  type SiteContactParameters,
  type SourceParameters,
  type SwapParameters,
  siteContactParameters,
  sourceParameters,
  WIRING_ISSUE_CODES,
  type WiringDescription,
  type WiringIssue,
  type WiringParameters,
  wireAt,
} from './wiring/index.ts';
