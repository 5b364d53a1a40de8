import { arrive } from './analogue-input.ts';
import type { Field } from './field.ts';
import { stepIgnitionTransformer } from './ignition-transformer.ts';
import type { Relay } from './relay.ts';
import type { Servo } from './servo.ts';
import { feedSupply } from './supply.ts';
import { COMMAND_BITS } from './terminals.ts';
import {
  isWorking,
  SECOND_SETPOINT_BIT,
  setOutputs,
  solveWiring,
  voltsAt,
} from './wiring/index.ts';

/** Something in the wiring has moved: solves it, and hands every device its volts. */
export function takeWiring(field: Field): void {
  const { wiring, places, outputs } = field;
  if (!solveWiring(wiring)) return;
  field.aimsRest = false;
  field.positionsRest = false;
  feedSupply(field.supply, voltsAt(wiring, places.monitor));
  const powered = isWorking(wiring, places.controller);
  if (powered !== field.powered) {
    field.powered = powered;
    command(field, field.commanded);
  }
  takeRelays(field);
  takeMotors(field);
  outputs.upstreamValve = isWorking(wiring, places.upstreamValve);
  outputs.downstreamValve = isWorking(wiring, places.downstreamValve);
  outputs.ventValve = isWorking(wiring, places.ventValve);
  outputs.pilotValve = isWorking(wiring, places.pilotValve);
  outputs.alarm = isWorking(wiring, places.alarmLamp);
  takeSpark(field);
  if (places.secondSetpoint >= 0) {
    field.setback = (wiring.inputWord & SECOND_SETPOINT_BIT) !== 0;
  }
  if (wiring.analogueMoved) takeAnalogue(field);
}

/** The controller's outputs and its count; one without power lets go of everything. */
export function command(field: Field, commandsWord: number): void {
  field.commanded = commandsWord;
  field.positionsRest = false;
  if (field.powered) setOutputs(field.wiring, commandsWord, field.invertedOutputs);
  else setOutputs(field.wiring, 0, 0);
  field.countingAir = field.powered && (field.commanded & COMMAND_BITS.countAir) !== 0;
}

function takeRelays(field: Field): void {
  const { relays, wiring, places } = field;
  for (let i = 0; i < relays.length; i++) {
    const relay = relays[i] as Relay;
    const energised = isWorking(wiring, places.relayCoils[i] as number);
    if (energised === relay.energised) continue;
    relay.energised = energised;
    field.relaysMoving = true;
  }
}

function takeMotors(field: Field): void {
  const { servos, drives, wiring, places, supply } = field;
  for (let i = 0; i < servos.length; i++) {
    const servo = servos[i] as Servo;
    servo.powered = isWorking(wiring, places.servoMotors[i] as number);
    const end = places.servoEnds[i] as number;
    if (end < 0) continue;
    const made = isWorking(wiring, end);
    if (made !== servo.endMade) servo.provedDeg = Number.NaN;
    servo.endMade = made;
  }
  for (let i = 0; i < drives.length; i++) {
    const drive = drives[i] as (typeof drives)[number];
    drive.running = isWorking(wiring, places.contactors[i] as number);
    const volts = field.isolator.made ? supply.lineVolts : 0;
    drive.voltsShare = volts * supply.perNominalVolt;
    drive.mainsHz = supply.lineHz;
  }
}

function takeSpark(field: Field): void {
  const { ignitionTransformers, wiring, places, supply, outputs } = field;
  let sparkW = 0;
  for (let i = 0; i < ignitionTransformers.length; i++) {
    const transformer = ignitionTransformers[i] as (typeof ignitionTransformers)[number];
    const place = places.transformers[i] as number;
    const share = voltsAt(wiring, place) * supply.perNominalVolt;
    stepIgnitionTransformer(transformer, isWorking(wiring, place), share);
    sparkW += transformer.outputW;
  }
  outputs.sparkW = sparkW;
}

/** A signal's circuit has changed: what rested on its reading looks again. */
function takeAnalogue(field: Field): void {
  field.wiring.analogueMoved = false;
  field.targetStale = true;
  for (const servo of field.servos) {
    servo.resting = false;
    servo.provedDeg = Number.NaN;
  }
  for (const drive of field.drives) {
    drive.steady = false;
    drive.feedbackRpm = arrive(drive.feedbackInput, drive.sensedRpm);
  }
}
