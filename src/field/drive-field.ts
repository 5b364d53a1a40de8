import { arrive } from './analogue-input.ts';
import { moveContact } from './contact.ts';
import { readDriveCurrent, stepDrive } from './drive.ts';
import { type Field, SLOW_STEP_S } from './field.ts';
import { type FiringDemand, stepFiringRate } from './firing-rate.ts';
import { prepareField } from './prepare-field.ts';
import { type Relay, stepRelay } from './relay.ts';
import { refreshServoNoise, type Servo, stepServo } from './servo.ts';
import type { FieldReadings } from './signals.ts';
import { command, takeWiring } from './take-wiring.ts';
import { resolveTarget } from './targets.ts';
import { readTemperature, ZERO_CELSIUS_K } from './temperature-signals.ts';
import { TARGET_INDEX } from './terminals.ts';
import { stepThermometer, type Thermometer } from './thermometer.ts';
import { refreshTransmitterNoise, stepTransmitter } from './transmitter.ts';
import { heatFuses, isWiringStale } from './wiring/index.ts';

const ROUNDING_S = 1e-9;

/**
 * Phase 2 of a step: the machine's commands through supply, relays, servos, drive and transformer.
 * Results are in `field.outputs`.
 *
 * @param readings of the step before; needed are what the fan asks for at its shaft, and the true
 *   vessel pressure for the firing-rate control's transmitter
 */
export function driveField(
  field: Field,
  commandsWord: number,
  targetIndex: number,
  readings: FieldReadings,
  stepS: number,
): void {
  const { panel, wiring, outputs, target } = field;
  const onSecond = panel.secondSetpoint || field.setback;
  if (stepS !== field.stepS || onSecond !== field.onSecondSetpoint) {
    field.stepS = stepS;
    field.onSecondSetpoint = onSecond;
    prepareField(field);
  }

  // Asked for at the start of a tenth of a second, shown at its end: no frame cuts a move in two.
  if (field.slowDriveS >= SLOW_STEP_S - ROUNDING_S) {
    field.slowDriveS -= SLOW_STEP_S;
    setFiringRate(field, targetIndex, readings);
  }
  field.slowDriveS += stepS;
  if (targetIndex !== field.targetIndex || field.targetStale) {
    field.targetIndex = targetIndex;
    field.targetStale = false;
    const { points } = field.parameters.control;
    resolveTarget(targetIndex, points, field.curve, field.firingRate.rate, target);
    field.aimsRest = false;
  }
  moveContact(field.isolator, panel.supplyOn);
  if (commandsWord !== field.commanded) {
    command(field, commandsWord);
  }
  if (wiring.melting) heatFuses(wiring, stepS);
  if (isWiringStale(wiring)) takeWiring(field);
  if (field.relaysMoving) {
    stepRelays(field, stepS);
    if (isWiringStale(wiring)) takeWiring(field);
  }

  if (!field.aimsRest) aimServosAndDrive(field, stepS);
  const { drive } = field;
  if (drive !== null) {
    drive.loadNm = readings.loadTorqueNm;
    stepDrive(drive, drive.running, stepS);
    outputs.fanRpm = drive.fanRpm;
  }
  if (field.slowDriveS >= SLOW_STEP_S - ROUNDING_S) showDrives(field);
}

function aimServosAndDrive(field: Field, stepS: number): void {
  const { servos, damper, drive, target } = field;
  let turned = false;
  for (let i = 0; i < servos.length; i++) {
    const servo = servos[i] as Servo;
    const targetDeg = servo === damper ? target.damperDeg : target.fuelValveDeg;
    if (servo.resting && servo.powered && targetDeg === servo.targetDeg) continue;
    stepServo(servo, targetDeg, servo.powered, stepS);
    turned = true;
  }
  if (turned) {
    showBlades(field);
    field.positionsRest = false;
  }
  field.aimsRest = !turned;
  if (drive !== null) {
    drive.targetRpm = Math.max(0, arrive(drive.referenceInput, target.fanRpm));
  }
}

function stepRelays(field: Field, stepS: number): void {
  const { relays } = field;
  field.relaysMoving = false;
  for (let i = 0; i < relays.length; i++) {
    if (stepRelay(relays[i] as Relay, stepS)) field.relaysMoving = true;
  }
}

function showBlades(field: Field): void {
  const { outputs, damper, fuelValve } = field;
  if (damper !== null) outputs.damperBladeDeg = damper.bladeDeg;
  if (fuelValve === null) return;
  // On one shaft it is the damper's blade that slips; the fuel valve has a slip of its own.
  outputs.fuelValveBladeDeg = fuelValve === damper ? fuelValve.shaftDeg : fuelValve.bladeDeg;
}

function demandOf(targetIndex: number): FiringDemand {
  if (targetIndex === TARGET_INDEX.curve) return 'released';
  return targetIndex === TARGET_INDEX['low-fire'] ? 'low fire' : 'wait';
}

function setFiringRate(field: Field, targetIndex: number, readings: FieldReadings): void {
  const { panel, curve, firingRate } = field;
  const left = firingRate.parameters.leftIn;
  for (const servo of field.servos) {
    refreshServoNoise(servo);
    if (!servo.resting) field.aimsRest = false;
  }
  const measuredPa = measurePressure(field, readings);
  const measuredC = measureTemperature(field, readings);
  stepFiringRate(
    firingRate,
    firingRate.onTemperature ? measuredC : measuredPa,
    demandOf(targetIndex),
    left === 'automatic' ? panel.firingMode : left,
    left === 'automatic' ? panel.handRate : firingRate.parameters.leftAtRate,
    field.onSecondSetpoint,
    curve.lowFireRate,
    curve.fullRate,
    SLOW_STEP_S,
  );
  if (firingRate.rate !== field.outputs.firingRate) field.targetStale = true;
  field.outputs.firingRate = firingRate.rate;
}

function measurePressure(field: Field, readings: FieldReadings): number {
  const { vesselTransmitter, outputs } = field;
  let measuredPa = readings.vesselPa;
  if (vesselTransmitter !== null) {
    refreshTransmitterNoise(vesselTransmitter);
    stepTransmitter(vesselTransmitter, measuredPa);
    measuredPa = vesselTransmitter.readingPa;
  }
  outputs.vesselPa = measuredPa;
  return measuredPa;
}

function measureTemperature(field: Field, readings: FieldReadings): number {
  const { thermometers, vesselThermometer, outputs } = field;
  for (let i = 0; i < thermometers.length; i++) {
    const thermometer = thermometers[i] as Thermometer;
    stepThermometer(thermometer, readTemperature(readings, thermometer.signal));
  }
  const measuredC =
    vesselThermometer === null ? readings.vesselK - ZERO_CELSIUS_K : vesselThermometer.readingC;
  outputs.waterC = measuredC;
  return measuredC;
}

function showDrives(field: Field): void {
  const { outputs, damper, fuelValve, drive } = field;
  if (damper !== null) {
    outputs.damperTargetDeg = damper.targetDeg;
    outputs.damperFeedbackDeg = damper.feedbackDeg;
    outputs.damperShaftDeg = damper.shaftDeg;
  }
  if (fuelValve !== null) {
    outputs.fuelValveTargetDeg = fuelValve.targetDeg;
    outputs.fuelValveFeedbackDeg = fuelValve.feedbackDeg;
  }
  if (drive !== null) {
    outputs.fanBackward = drive.backward;
    outputs.fanTargetRpm = field.target.fanRpm;
    outputs.fanFeedbackRpm = drive.feedbackRpm;
    outputs.fanFrequencyHz = drive.frequencyHz;
    outputs.fanCurrentA = readDriveCurrent(drive);
  }
}
