import { type AirChangeCounter, clearAir, countAir } from './air-change-counter.ts';
import { arrive } from './analogue-input.ts';
import { type ClosedProof, stepClosedProof } from './closed-proof.ts';
import { moveContact } from './contact.ts';
import { readLogic } from './controller-logic.ts';
import { stepCurveSupervision } from './curve-supervision.ts';
import { type Drive, isDriveProved, proveDrive } from './drive.ts';
import { driveField } from './drive-field.ts';
import { type FeedControl, stepFeedControl } from './feed-control.ts';
import { type Field, SLOW_STEP_S } from './field.ts';
import { type FlameRelay, stepFlameRelay } from './flame-relay.ts';
import { type FlameSensor, refreshFlameSensor, stepFlameSensor } from './flame-sensor.ts';
import { holdTerminals } from './hold-terminals.ts';
import { type InterspaceComparator, stepInterspaceComparator } from './interspace-comparator.ts';
import { type LevelProbe, stepLevelProbe } from './level-probe.ts';
import { type PressureSwitch, stepPressureSwitch } from './pressure-switch.ts';
import { isServoProved, proveServo, type Servo } from './servo.ts';
import { type FieldReadings, readSignal } from './signals.ts';
import { watchSupply } from './supply.ts';
import { takeWiring } from './take-wiring.ts';
import { readTemperature } from './temperature-signals.ts';
import { stepTemperatureSwitch } from './temperature-switch.ts';
import { TARGET_INDEX } from './terminals.ts';
import { stepRemoteContact, stepTimeClock } from './time-clock.ts';
import { refreshTransmitterNoise, stepTransmitter, type Transmitter } from './transmitter.ts';
import { stepWaterCutOff } from './water-cut-off.ts';
import { isWiringStale, isWorking } from './wiring/index.ts';

const ROUNDING_S = 1e-9;
const SETTLING_STEPS = 600;
/** Nothing has moved for this long: longer than any dwell of a device at rest, 10 s. */
const SETTLED_STEPS = 100;

/**
 * Phase 4 of a step: every sensor reads the plant; the contacts at the machine's input terminals
 * come back as one word.
 */
export function readField(field: Field, readings: FieldReadings, stepS: number): number {
  const { panel, supply, wiring, logic } = field;
  field.slowReadS += stepS;
  if (field.slowReadS >= SLOW_STEP_S - ROUNDING_S) {
    field.slowReadS -= SLOW_STEP_S;
    readSlow(field, readings);
  }
  readPressures(field, readings);
  readPositions(field, readings);
  readFlame(field, readings, field.powered);
  watchSupply(supply, stepS);
  moveContact(field.panelHeat, panel.callForHeat);
  moveContact(field.panelReset, panel.resetPressed);
  moveContact(field.panelEmergency, !panel.emergencyStopPressed);
  moveContact(field.panelSetback, panel.secondSetpoint);
  if (isWiringStale(wiring)) takeWiring(field);
  return holdTerminals(field, readLogic(logic), wiring.inputWord);
}

/**
 * Before a run: lets every device come to where it stands after a minute with these readings, no
 * command and the panel as it is, so that a run does not begin with a supply that has just come on.
 */
export function settleField(field: Field, readings: FieldReadings): number {
  const { dayS } = field;
  // A line that is blocked by hours holds what it had when it blocked.
  for (const t of field.transmitters) t.sensedPa = readSignal(readings, t.signal);
  let word = 0;
  let settled = 0;
  for (let i = 0; i < SETTLING_STEPS && settled < SETTLED_STEPS; i++) {
    const before = word;
    driveField(field, 0, TARGET_INDEX.rest, readings, SLOW_STEP_S);
    word = readField(field, readings, SLOW_STEP_S);
    settled = word === before ? settled + 1 : 0;
  }
  field.dayS = dayS;
  return word;
}

function readPressures(field: Field, readings: FieldReadings): void {
  const { airSwitches, fastTransmitters, interspaceComparators, stepS } = field;
  for (let i = 0; i < airSwitches.length; i++) {
    const s = airSwitches[i] as PressureSwitch;
    const { limitResetPressed } = field.panel;
    stepPressureSwitch(s, readSignal(readings, s.signal), limitResetPressed, stepS);
  }
  for (let i = 0; i < fastTransmitters.length; i++) {
    const transmitter = fastTransmitters[i] as Transmitter;
    stepTransmitter(transmitter, readSignal(readings, transmitter.signal));
  }
  for (let i = 0; i < interspaceComparators.length; i++) {
    const { interspaceTransmitter, supplyGasTransmitter } = field;
    stepInterspaceComparator(
      interspaceComparators[i] as InterspaceComparator,
      interspaceTransmitter === null ? readings.interspacePa : interspaceTransmitter.readingPa,
      supplyGasTransmitter === null ? readings.regulatedPa : supplyGasTransmitter.readingPa,
      stepS,
    );
  }
}

function readPositions(field: Field, readings: FieldReadings): void {
  const { closedProofs, servos, drives, airChangeCounters, drive: fan, stepS } = field;
  const fanRpm = fan === null ? 0 : fan.feedbackRpm;
  if (
    field.positionsRest &&
    !field.countingAir &&
    readings.upstreamStem === field.restUpstreamStem &&
    readings.downstreamStem === field.restDownstreamStem &&
    fanRpm === field.restFanRpm
  ) {
    return;
  }
  let rest = true;
  for (let i = 0; i < closedProofs.length; i++) {
    const proof = closedProofs[i] as ClosedProof;
    stepClosedProof(proof, proof.upstream ? readings.upstreamStem : readings.downstreamStem, stepS);
  }
  for (let i = 0; i < servos.length; i++) {
    const servo = servos[i] as Servo;
    proveServo(servo, stepS);
    if (!isServoProved(servo)) rest = false;
  }
  for (let i = 0; i < drives.length; i++) {
    const drive = drives[i] as Drive;
    if (!drive.variable) continue;
    proveDrive(drive, stepS);
    if (!isDriveProved(drive)) rest = false;
  }
  for (let i = 0; i < airChangeCounters.length; i++) {
    const counter = airChangeCounters[i] as AirChangeCounter;
    if (field.countingAir) countAir(counter, readings.headDifferentialPa, stepS);
    else if (counter.changes !== 0) clearAir(counter);
  }
  field.positionsRest = rest;
  field.restUpstreamStem = readings.upstreamStem;
  field.restDownstreamStem = readings.downstreamStem;
  field.restFanRpm = fanRpm;
}

function readFlame(field: Field, readings: FieldReadings, powered: boolean): void {
  const { flameSensors, flameRelays, listenedTo, stepS } = field;
  for (let i = 0; i < flameSensors.length; i++) {
    stepFlameSensor(flameSensors[i] as FlameSensor, readings, powered);
  }
  for (let i = 0; i < flameRelays.length; i++) {
    const { microamps } = listenedTo[i] as FlameSensor;
    stepFlameRelay(flameRelays[i] as FlameRelay, microamps, powered, stepS);
  }
}

function readSlow(field: Field, readings: FieldReadings): void {
  const { panel, vesselTransmitter, outputs } = field;
  for (const sensor of field.flameSensors) refreshFlameSensor(sensor, readings.furnaceK);
  for (const transmitter of field.fastTransmitters) refreshTransmitterNoise(transmitter);
  for (const transmitter of field.slowTransmitters) {
    // The one on the vessel belongs to the firing-rate control and is stepped with it.
    if (transmitter === vesselTransmitter) continue;
    refreshTransmitterNoise(transmitter);
    stepTransmitter(transmitter, readSignal(readings, transmitter.signal));
  }
  for (const s of field.slowSwitches) {
    const pressurePa = readSignal(readings, s.signal);
    stepPressureSwitch(s, pressurePa, panel.limitResetPressed, SLOW_STEP_S);
  }
  for (const s of field.temperatureSwitches) {
    const waterC = readTemperature(readings, s.signal);
    stepTemperatureSwitch(s, waterC, panel.limitResetPressed, SLOW_STEP_S);
  }
  readWater(field, readings);
  readClocks(field);
  for (const cutOff of field.waterCutOffs) {
    stepWaterCutOff(cutOff, readings.vesselLevelM, panel.limitResetPressed, SLOW_STEP_S);
  }
  superviseCurve(field);
  outputs.flameMicroamps = field.flameSensors[0]?.microamps ?? 0;
  outputs.airChanges = field.airChangeCounters[0]?.changes ?? 0;
}

/** Level and feed: the probe, then what the controller makes of it. */
function readWater(field: Field, readings: FieldReadings): void {
  const { levelProbes, feedControls, wiring, places, outputs } = field;
  for (let i = 0; i < levelProbes.length; i++) {
    stepLevelProbe(levelProbes[i] as LevelProbe, readings.vesselLevelM);
  }
  outputs.levelM = levelProbes.length > 0 ? (levelProbes[0] as LevelProbe).readingM : 0;
  let fed = field.isolator.made;
  if (feedControls.length > 0) {
    const control = feedControls[0] as FeedControl;
    stepFeedControl(control, readings.steamKgS, SLOW_STEP_S);
    const demand = arrive(control.valveInput, control.demand);
    outputs.feedDemand = Math.max(0, Math.min(1, demand));
    fed = fed && control.pump.contact.made;
  }
  outputs.feedPump = places.feedPump < 0 ? fed : isWorking(wiring, places.feedPump);
}

const DAY_S = 86400;

function readClocks(field: Field): void {
  const { timeClocks, remoteContacts, panel } = field;
  if (timeClocks.length === 0 && remoteContacts.length === 0) return;
  const dayS = field.dayS + SLOW_STEP_S;
  field.dayS = dayS >= DAY_S ? dayS - DAY_S : dayS;
  let setback = false;
  for (const clock of timeClocks) {
    stepTimeClock(clock, field.dayS / 3600);
    if (clock.parameters.switches === 'second setpoint' && clock.contact.made) setback = true;
  }
  for (const remote of remoteContacts) {
    const asksSetback = remote.parameters.switches === 'second setpoint';
    stepRemoteContact(remote, asksSetback ? panel.remoteSetback : panel.remoteEnable);
    if (asksSetback && remote.contact.made) setback = true;
  }
  if (field.places.secondSetpoint < 0) field.setback = setback;
}

function superviseCurve(field: Field): void {
  const { targetIndex, damper, fuelValve, drive } = field;
  const speedWatched = drive?.variable ?? false;
  stepCurveSupervision(
    field.curveSupervision,
    targetIndex === TARGET_INDEX.curve || targetIndex === TARGET_INDEX['low-fire'],
    damper?.targetDeg ?? 0,
    damper?.feedbackDeg ?? 0,
    fuelValve?.targetDeg ?? 0,
    fuelValve?.feedbackDeg ?? 0,
    speedWatched ? field.target.fanRpm : 0,
    speedWatched ? (drive?.feedbackRpm ?? 0) : 0,
    field.parameters.control.points.purgeFanRpm,
    SLOW_STEP_S,
  );
}
