import { readDriveCurrent, stepDrive } from './drive.ts';
import { type Field, SLOW_STEP_S } from './field.ts';
import { type FiringDemand, stepFiringRate } from './firing-rate.ts';
import { stepIgnitionTransformer } from './ignition-transformer.ts';
import { prepareField } from './prepare-field.ts';
import { type Relay, stepRelay } from './relay.ts';
import { refreshServoNoise, type Servo, stepServo } from './servo.ts';
import type { FieldReadings } from './signals.ts';
import { feedSupply } from './supply.ts';
import { resolveTarget } from './targets.ts';
import { COMMAND_BITS, TARGET_INDEX } from './terminals.ts';
import { refreshTransmitterNoise, stepTransmitter } from './transmitter.ts';

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
  const { panel, supply, outputs, target } = field;
  if (stepS !== field.stepS || panel.secondSetpoint !== field.onSecondSetpoint) {
    field.stepS = stepS;
    field.onSecondSetpoint = panel.secondSetpoint;
    prepareField(field);
  }
  if (feedSupply(supply, panel.supplyOn)) feedDrives(field);
  const controlVolts = supply.controlVolts;

  field.slowDriveS += stepS;
  const slow = field.slowDriveS >= SLOW_STEP_S - ROUNDING_S;
  if (slow) {
    field.slowDriveS -= SLOW_STEP_S;
    setFiringRate(field, targetIndex, readings.vesselPa);
  }
  if (targetIndex !== field.targetIndex || field.targetStale) {
    field.targetIndex = targetIndex;
    field.targetStale = false;
    const { points } = field.parameters.control;
    resolveTarget(targetIndex, points, field.curve, field.firingRate.rate, target);
  }
  if (
    commandsWord !== field.relaysCommanded ||
    controlVolts !== field.relaysFedVolts ||
    field.relaysMoving
  ) {
    stepRelays(field, commandsWord, controlVolts, stepS);
  }

  const powered = controlVolts > 0;
  const { servos, damper, drive } = field;
  let turned = false;
  for (let i = 0; i < servos.length; i++) {
    const servo = servos[i] as Servo;
    const targetDeg = servo === damper ? target.damperDeg : target.fuelValveDeg;
    if (servo.resting && powered && targetDeg === servo.targetDeg) continue;
    stepServo(servo, targetDeg, powered, stepS);
    turned = true;
  }
  if (turned) showBlades(field);
  if (drive !== null) {
    drive.targetRpm = target.fanRpm;
    drive.loadNm = readings.loadTorqueNm;
    stepDrive(drive, isFed(field.fanRelay), stepS);
    outputs.fanRpm = drive.fanRpm;
  }
  if (slow) showDrives(field);
}

function feedDrives(field: Field): void {
  const { supply } = field;
  for (const drive of field.drives) {
    drive.voltsShare = supply.mainsVolts * supply.perNominalVolt;
    drive.mainsHz = supply.lineHz;
  }
}

/** While no command, no volts and no armature moves, nothing here would change. */
function stepRelays(field: Field, commandsWord: number, controlVolts: number, stepS: number): void {
  const { relays, relayBits, safetyContact, outputs } = field;
  field.relaysCommanded = commandsWord;
  field.relaysFedVolts = controlVolts;
  field.relaysMoving = false;
  field.countingAir = controlVolts > 0 && (commandsWord & COMMAND_BITS.countAir) !== 0;
  for (let i = 0; i < relays.length; i++) {
    const commanded = (commandsWord & (relayBits[i] as number)) !== 0;
    const relay = relays[i] as Relay;
    if (stepRelay(relay, commanded, controlVolts, safetyContact.made, stepS)) {
      field.relaysMoving = true;
    }
  }
  outputs.upstreamValve = isFed(field.upstreamRelay);
  outputs.downstreamValve = isFed(field.downstreamRelay);
  outputs.ventValve = isFed(field.ventRelay);
  outputs.pilotValve = isFed(field.pilotRelay);
  outputs.alarm = isFed(field.alarmRelay);

  const sparking = isFed(field.sparkRelay);
  const voltsShare = controlVolts * field.supply.perNominalVolt;
  let sparkW = 0;
  for (const transformer of field.ignitionTransformers) {
    stepIgnitionTransformer(transformer, sparking, voltsShare);
    sparkW += transformer.outputW;
  }
  outputs.sparkW = sparkW;
}

function showBlades(field: Field): void {
  const { outputs, damper, fuelValve } = field;
  if (damper !== null) outputs.damperBladeDeg = damper.bladeDeg;
  if (fuelValve !== null) outputs.fuelValveBladeDeg = fuelValve.bladeDeg;
}

function isFed(relay: Relay | null): boolean {
  return relay?.load.energised === true;
}

function demandOf(targetIndex: number): FiringDemand {
  if (targetIndex === TARGET_INDEX.curve) return 'released';
  return targetIndex === TARGET_INDEX['low-fire'] ? 'low fire' : 'wait';
}

function setFiringRate(field: Field, targetIndex: number, vesselGaugePa: number): void {
  const { panel, curve, firingRate, vesselTransmitter } = field;
  for (const servo of field.servos) refreshServoNoise(servo);
  let measuredPa = vesselGaugePa;
  if (vesselTransmitter !== null) {
    refreshTransmitterNoise(vesselTransmitter);
    stepTransmitter(vesselTransmitter, vesselGaugePa);
    measuredPa = vesselTransmitter.readingPa;
  }
  stepFiringRate(
    firingRate,
    measuredPa,
    demandOf(targetIndex),
    panel.firingMode,
    panel.handRate,
    panel.secondSetpoint,
    curve.lowFireRate,
    curve.fullRate,
    SLOW_STEP_S,
  );
  if (firingRate.rate !== field.outputs.firingRate) field.targetStale = true;
  field.outputs.firingRate = firingRate.rate;
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
    outputs.fanTargetRpm = drive.targetRpm;
    outputs.fanFeedbackRpm = drive.feedbackRpm;
    outputs.fanFrequencyHz = drive.frequencyHz;
    outputs.fanCurrentA = readDriveCurrent(drive);
  }
}
