import { nextNormal, type RandomState } from '../numeric/index.ts';
import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type AnalogueInput, arrive, createAnalogueInput } from './analogue-input.ts';
import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';
import {
  createPointProof,
  isProofAtRest,
  type PointProof,
  preparePointProof,
  stepPointProof,
} from './point-proof.ts';
import { CONTACT_CONDITIONS } from './snap-switch.ts';

/**
 * A servo that turns a damper or a fuel valve, from its motor to the blade.
 *
 * The motor runs at constant speed towards the target as its own feedback shows it, so a wrong
 * feedback makes a wrong position. Behind the motor: a coupling with backlash, a shaft with
 * stiction and a mechanical stop, and a blade that may have slipped on the shaft.
 *   motor:  dθ/dt = ±slew·health, until |target − feedback| = 0; restarts beyond the deadband
 *   shaft:  drags behind the motor by half the backlash; leaves rest only when the coupling is
 *           wound up by the stiction as well, then jumps by it
 *   blade = shaft + slip, 0…90°
 * A hand on the declutched motor shaft moves it instead, whatever the motor wants; all that hangs
 * behind the motor follows as it does behind the motor itself.
 * Left out: acceleration (milliseconds against a stroke of 30 s), torque (a jam simply stalls).
 * Source: backlash and stick-slip of actuators as in control-valve practice (EnTech, ISA-75.25).
 */
export const servoParameters = {
  id: name('name of the servo'),
  moves: choice(['damper', 'fuel valve', 'damper and fuel valve'], 'what hangs on its shaft'),
  slewDegS: number('°/s', 0.1, 90, 'speed of the motor'),
  motorHealth: number('1', 0, 1, 'share of its speed the motor still makes; 0 dead', 1),
  minDeg: number('°', 0, 90, 'lower end stop', 0),
  maxDeg: number('°', 0, 90, 'upper end stop', 90),
  deadbandDeg: number('°', 0, 5, 'error below which a resting motor does not start', 0.3),
  backlashDeg: number('°', 0, 20, 'play of the coupling', 0.2),
  stictionDeg: number('°', 0, 20, 'wind-up before a resting shaft breaks away', 0),
  jamMinDeg: number('°', 0, 90, 'the shaft meets something solid below this', 0),
  jamMaxDeg: number('°', 0, 90, 'the shaft meets something solid above this', 90),
  slipDeg: number('°', -90, 90, 'blade ahead of its shaft', 0),
  feedbackOffsetDeg: number('°', -90, 90, 'feedback reads this much too high', 0),
  feedbackNoiseDeg: number('°', 0, 30, 'scatter of a worn feedback track, one deviation', 0),
  feedback: choice(['sound', 'open'], 'circuit of the feedback', 'sound'),
  proofMakeDeg: number('°', 0.1, 10, 'at a point: within this of it', 1.5),
  proofBreakDeg: number('°', 0.1, 20, 'no longer at a point: beyond this', 2.5),
  proofDwellS: number('s', 0, 30, 'how long it must stand there, steady', 1),
  endSwitch: choice(['none', 'fitted'], 'a mechanical switch for the purge position', 'none'),
  endSwitchDeg: number(
    '°',
    0,
    120,
    'motor angle at which the end switch makes; past 90 it never does',
    87,
  ),
  endSwitchHysteresisDeg: number('°', 0.1, 20, 'how far below that it breaks', 2),
  endSwitchContact: choice(CONTACT_CONDITIONS, 'contact of the end switch', 'sound'),
} as const satisfies ParameterTable;
export type ServoParameters = Values<typeof servoParameters>;

/** What the positioner reads from an open feedback: a dead 4–20 mA loop over 0–90°. */
export const OPEN_FEEDBACK_DEG = -22.5;
/** How fast a hand turns a shaft. */
const HAND_DEG_S = 45;

export interface Servo {
  readonly parameters: ServoParameters;
  readonly random: RandomState;
  readonly input: AnalogueInput;
  /** The motor has volts. */
  powered: boolean;
  targetDeg: number;
  motorDeg: number;
  shaftDeg: number;
  bladeDeg: number;
  feedbackDeg: number;
  noiseDeg: number;
  moving: boolean;
  /** Where a hand holds the motor shaft; NaN while no hand is on it. */
  heldDeg: number;
  /** At rest: with the same target and supply a step changes nothing. */
  resting: boolean;
  /** The feedback for which the proofs have come to rest; none while they have not. */
  provedDeg: number;
  readonly endSwitch: Contact;
  /** What the controller sees of the end switch; itself where no input is wired to it. */
  endMade: boolean;
  endWired: boolean;
  /** The cam is on the end switch. */
  endPushed: boolean;
  readonly atPurge: PointProof;
  readonly atLightOff: PointProof;
  slewDegS: number;
  deadbandDeg: number;
  minDeg: number;
  maxDeg: number;
  jamMinDeg: number;
  jamMaxDeg: number;
  slipDeg: number;
  offsetDeg: number;
  deviationDeg: number;
  halfBacklashDeg: number;
  reachDeg: number;
  feedbackOpen: boolean;
  endSwitchFitted: boolean;
  endMakeDeg: number;
  endBreakDeg: number;
  endSwitchWelded: boolean;
  endSwitchOpen: boolean;
}

export function createServo(
  parameters: ServoParameters,
  purgeDeg: number,
  lightOffDeg: number,
  random: RandomState,
  board: ContactBoard,
  logicBoard: ContactBoard = board,
): Servo {
  const servo: Servo = {
    parameters,
    random,
    input: createAnalogueInput(),
    powered: false,
    targetDeg: 0,
    motorDeg: parameters.minDeg,
    shaftDeg: parameters.minDeg,
    bladeDeg: parameters.minDeg,
    feedbackDeg: parameters.minDeg,
    noiseDeg: 0,
    moving: false,
    heldDeg: Number.NaN,
    resting: false,
    provedDeg: Number.NaN,
    endSwitch: createContact(board, false),
    endMade: false,
    endWired: false,
    endPushed: false,
    atPurge: createPointProof(logicBoard),
    atLightOff: createPointProof(logicBoard),
    slewDegS: 0,
    deadbandDeg: 0,
    minDeg: 0,
    maxDeg: 90,
    jamMinDeg: 0,
    jamMaxDeg: 90,
    slipDeg: 0,
    offsetDeg: 0,
    deviationDeg: 0,
    halfBacklashDeg: 0,
    reachDeg: 0,
    feedbackOpen: false,
    endSwitchFitted: false,
    endMakeDeg: 90,
    endBreakDeg: 90,
    endSwitchWelded: false,
    endSwitchOpen: false,
  };
  prepareServo(servo, purgeDeg, lightOffDeg);
  return servo;
}

export function prepareServo(servo: Servo, purgeDeg: number, lightOffDeg: number): void {
  const p = servo.parameters;
  servo.slewDegS = p.slewDegS * p.motorHealth;
  servo.deadbandDeg = p.deadbandDeg;
  servo.minDeg = p.minDeg;
  servo.maxDeg = p.maxDeg;
  servo.jamMinDeg = p.jamMinDeg;
  servo.jamMaxDeg = p.jamMaxDeg;
  servo.slipDeg = p.slipDeg;
  servo.offsetDeg = p.feedbackOffsetDeg;
  servo.deviationDeg = p.feedbackNoiseDeg;
  servo.halfBacklashDeg = 0.5 * p.backlashDeg;
  servo.reachDeg = 0.5 * p.backlashDeg + p.stictionDeg;
  servo.feedbackOpen = p.feedback === 'open';
  servo.endSwitchFitted = p.endSwitch === 'fitted';
  servo.endMakeDeg = p.endSwitchDeg;
  servo.endBreakDeg = p.endSwitchDeg - p.endSwitchHysteresisDeg;
  servo.endSwitchWelded = p.endSwitchContact === 'welded';
  servo.endSwitchOpen = p.endSwitchContact === 'open';
  preparePointProof(servo.atPurge, purgeDeg, p.proofMakeDeg, p.proofBreakDeg, p.proofDwellS);
  preparePointProof(servo.atLightOff, lightOffDeg, p.proofMakeDeg, p.proofBreakDeg, p.proofDwellS);
  servo.resting = false;
  servo.provedDeg = Number.NaN;
}

/** A worn track reads anew ten times a second; a sound one draws no random number. */
export function refreshServoNoise(servo: Servo): void {
  const deviation = servo.deviationDeg;
  const noise = deviation > 0 ? deviation * nextNormal(servo.random) : 0;
  if (noise !== servo.noiseDeg) servo.resting = false;
  servo.noiseDeg = noise;
}

/** A servo that rests, with supply and the same target, need not be stepped. */
export function stepServo(servo: Servo, targetDeg: number, powered: boolean, stepS: number): void {
  servo.targetDeg = targetDeg;
  if (servo.heldDeg >= 0) {
    turnByHand(servo, stepS);
  } else {
    const error = targetDeg - servo.feedbackDeg;
    if (!powered) servo.moving = false;
    else if (error > servo.deadbandDeg || error < -servo.deadbandDeg) servo.moving = true;
    if (servo.moving) turnServo(servo, error, servo.slewDegS * stepS);
  }
  servo.bladeDeg = Math.max(0, Math.min(90, servo.shaftDeg + servo.slipDeg));
  const feedback = servo.feedbackOpen
    ? OPEN_FEEDBACK_DEG
    : arrive(servo.input, servo.motorDeg + servo.offsetDeg + servo.noiseDeg);
  servo.resting = powered && !servo.moving && feedback === servo.feedbackDeg;
  servo.feedbackDeg = feedback;
}

function turnServo(servo: Servo, errorDeg: number, travelDeg: number): void {
  if (errorDeg <= travelDeg && errorDeg >= -travelDeg) servo.moving = false;
  moveMotor(servo, servo.motorDeg + Math.max(-travelDeg, Math.min(travelDeg, errorDeg)));
}

/** A hand goes to its place at its own pace and stays there; it feels the same stops as the motor. */
function turnByHand(servo: Servo, stepS: number): void {
  const travel = HAND_DEG_S * stepS;
  const error = servo.heldDeg - servo.motorDeg;
  const before = servo.motorDeg;
  moveMotor(servo, before + Math.max(-travel, Math.min(travel, error)));
  servo.moving = servo.motorDeg !== before;
}

function moveMotor(servo: Servo, wantedDeg: number): void {
  const shaft = servo.shaftDeg;
  const reach = servo.reachDeg;
  // A stop is solid from the side the shaft is on: one that appears behind it does not push it.
  const top = Math.max(servo.jamMaxDeg, shaft);
  const bottom = Math.min(servo.jamMinDeg, shaft);
  const motor = Math.max(
    Math.max(servo.minDeg, bottom - reach),
    Math.min(Math.min(servo.maxDeg, top + reach), wantedDeg),
  );
  servo.motorDeg = motor;
  const ahead = motor - shaft;
  if (ahead > reach) servo.shaftDeg = Math.min(top, motor - servo.halfBacklashDeg);
  else if (ahead < -reach) servo.shaftDeg = Math.max(bottom, motor + servo.halfBacklashDeg);
}

/** The proofs read the feedback; at purge the end switch, where fitted, must be made too. */
export function proveServo(servo: Servo, stepS: number): void {
  if (servo.feedbackDeg !== servo.provedDeg) proveFeedback(servo, stepS);
}

/** Nothing more to prove while the feedback stays what it is. */
export function isServoProved(servo: Servo): boolean {
  return servo.feedbackDeg === servo.provedDeg;
}

function proveFeedback(servo: Servo, stepS: number): void {
  const feedback = servo.feedbackDeg;
  if (servo.endSwitchFitted) turnCam(servo);
  const endMade = !servo.endSwitchFitted || servo.endMade;
  stepPointProof(servo.atPurge, feedback, endMade, stepS);
  stepPointProof(servo.atLightOff, feedback, true, stepS);
  const atRest = isProofAtRest(servo.atPurge) && isProofAtRest(servo.atLightOff);
  servo.provedDeg = atRest && servo.resting ? feedback : Number.NaN;
}

function turnCam(servo: Servo): void {
  servo.endPushed = servo.motorDeg > (servo.endPushed ? servo.endBreakDeg : servo.endMakeDeg);
  moveContact(servo.endSwitch, servo.endSwitchWelded || (servo.endPushed && !servo.endSwitchOpen));
  if (!servo.endWired) servo.endMade = servo.endSwitch.made;
}
