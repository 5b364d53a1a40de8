import { type AnalogueInput, arrive, createAnalogueInput } from './analogue-input.ts';
import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';
import type { DriveParameters } from './drive-parameters.ts';
import { followWithLag, lagGain } from './lag.ts';
import { RAD_S_PER_RPM, rotorGain, stepRotor, TWO_PI } from './motor.ts';
import {
  createPointProof,
  isProofAtRest,
  type PointProof,
  preparePointProof,
  stepPointProof,
} from './point-proof.ts';

/**
 * The fan's drive, fixed speed (a contactor) or variable speed (a frequency converter).
 *
 * Variable speed: V/f constant, so torque is linear in slip, T = Tr·(ωs − ω)/Δωr, up to a limit
 * set by current: I² = Im² + (Ia·T/Tr)², Ia² = Ir² − Im². The frequency ramps towards the speed
 * asked for plus the slip at the present torque, but is held where slip would pass that limit
 * (stall prevention): a fan too heavy for the limit never gets there.
 * Fixed speed: Kloss's formula, T = 2·Tb/(s/sb + sb/s), times the square of the volts' share.
 * Valid for: steady flux; slip below a third of breakdown for the linear law.
 * Left out: electrical transients (milliseconds), field weakening, losses of drive and belt.
 * Source: any electrical machines text, e.g. A. E. Fitzgerald, Electric Machinery.
 */
export interface Drive {
  readonly parameters: DriveParameters;
  readonly variable: boolean;
  /** The contactor or the run circuit. */
  readonly contactor: Contact;
  readonly atPurge: PointProof;
  readonly atLightOff: PointProof;
  readonly referenceInput: AnalogueInput;
  readonly feedbackInput: AnalogueInput;
  /** The contactor's coil, or the run circuit, has volts. */
  running: boolean;
  /** What arrives of the speed asked for. */
  targetRpm: number;
  /** Torque the fan asks for at its own shaft and present speed. */
  loadNm: number;
  /** Mains volts over nominal. */
  voltsShare: number;
  mainsHz: number;
  frequencyHz: number;
  /** Slip compensation now in force. */
  compensationHz: number;
  motorRadS: number;
  torqueNm: number;
  fanRpm: number;
  /** What the pick-up and its smoothing make of the speed, and what arrives of that. */
  sensedRpm: number;
  feedbackRpm: number;
  /** Speed, slip and feedback have settled; held until target or load move. */
  steady: boolean;
  /** What the derived constants were made from: the same again disturbs nothing. */
  preparedFor: string;
  heldTargetRpm: number;
  heldLoadNm: number;
  coilSound: boolean;
  burnt: boolean;
  welded: boolean;
  backward: boolean;
  frictionNm: number;
  inertiaKgM2: number;
  beltRatio: number;
  fanRpmPerRadS: number;
  feedbackRpmPerRadS: number;
  hzPerRadS: number;
  hzPerFanRpm: number;
  torquePerHz: number;
  feedbackGain: number;
  compensationGain: number;
  compensationHzPerNm: number;
  rampUpHz: number;
  rampDownHz: number;
  maxHz: number;
  motoringSlipHz: number;
  brakingSlipHz: number;
  fedGain: number;
  coastGain: number;
  activeCurrentA: number;
  breakdownNm: number;
  breakdownSlip: number;
  rotorCurrentA: number;
}

/** Below this share of the nominal volts a drive trips and a contactor lets go. */
const UNDERVOLTAGE_SHARE = 0.6;
/** Slower than the rotor, because adding slip back at once would feed on itself. */
const COMPENSATION_LAG_S = 1;
/**
 * A drive stands still when speed, rad/s, and output, Hz, change by less than this in a step, the
 * reading, rpm, lags by less, and the load, N·m, has not moved by more: each under 1e-5 of rated.
 */
const STEADY_RADS = 1e-6;
const STEADY_HZ = 1e-6;
const STEADY_RPM = 1e-3;
const LOAD_NOTICED_NM = 1e-3;

export function createDrive(
  parameters: DriveParameters,
  purgeRpm: number,
  lightOffRpm: number,
  stepS: number,
  board: ContactBoard,
): Drive {
  const drive: Drive = {
    parameters,
    variable: parameters.kind === 'variable speed',
    contactor: createContact(board, false),
    atPurge: createPointProof(board),
    atLightOff: createPointProof(board),
    referenceInput: createAnalogueInput(),
    feedbackInput: createAnalogueInput(),
    running: false,
    targetRpm: 0,
    loadNm: 0,
    voltsShare: 0,
    mainsHz: 0,
    frequencyHz: 0,
    compensationHz: 0,
    motorRadS: 0,
    torqueNm: 0,
    fanRpm: 0,
    sensedRpm: 0,
    feedbackRpm: 0,
    steady: false,
    preparedFor: '',
    heldTargetRpm: 0,
    heldLoadNm: 0,
    coilSound: true,
    burnt: false,
    welded: false,
    backward: false,
    frictionNm: 0,
    inertiaKgM2: 1,
    beltRatio: 1,
    fanRpmPerRadS: 0,
    feedbackRpmPerRadS: 0,
    hzPerRadS: 0,
    hzPerFanRpm: 0,
    torquePerHz: 0,
    feedbackGain: 0,
    compensationGain: 0,
    compensationHzPerNm: 0,
    rampUpHz: 0,
    rampDownHz: 0,
    maxHz: 0,
    motoringSlipHz: 0,
    brakingSlipHz: 0,
    fedGain: 0,
    coastGain: 0,
    activeCurrentA: 0,
    breakdownNm: 0,
    breakdownSlip: 0,
    rotorCurrentA: 0,
  };
  prepareDrive(drive, purgeRpm, lightOffRpm, stepS);
  return drive;
}

export function prepareDrive(
  drive: Drive,
  purgeRpm: number,
  lightOffRpm: number,
  stepS: number,
): void {
  const p = drive.parameters;
  const wanted = JSON.stringify([p, purgeRpm, lightOffRpm, stepS]);
  if (wanted !== drive.preparedFor) drive.steady = false;
  drive.preparedFor = wanted;
  const polePairs = 0.5 * p.poles;
  drive.coilSound = p.contactorCoil === 'sound';
  drive.burnt = p.contactorContacts === 'burnt';
  drive.welded = p.contactorContacts === 'welded';
  drive.backward = p.rotation === 'backward';
  drive.frictionNm = p.frictionNm;
  drive.inertiaKgM2 = p.inertiaKgM2;
  drive.beltRatio = p.beltRatio;
  drive.fanRpmPerRadS = (p.beltRatio * (1 - p.beltSlip)) / RAD_S_PER_RPM;
  const seen = p.feedbackOn === 'fan shaft' ? drive.fanRpmPerRadS : p.beltRatio / RAD_S_PER_RPM;
  drive.feedbackRpmPerRadS = p.feedback === 'sound' ? seen : 0;
  drive.hzPerRadS = polePairs / TWO_PI;
  drive.feedbackGain = lagGain(p.feedbackLagS, stepS);
  drive.coastGain = rotorGain(0, p.inertiaKgM2, stepS);
  const magnetisingSquared = p.magnetisingCurrentA * p.magnetisingCurrentA;
  drive.activeCurrentA = Math.sqrt(
    Math.max(1e-6, p.ratedCurrentA * p.ratedCurrentA - magnetisingSquared),
  );
  if (p.kind === 'variable speed') {
    const ratedSlipHz = (p.ratedSlipRpm / 60) * polePairs;
    const limitActiveA = Math.sqrt(
      Math.max(0, p.currentLimitA * p.currentLimitA - magnetisingSquared),
    );
    drive.torquePerHz = p.ratedTorqueNm / ratedSlipHz;
    drive.hzPerFanRpm = polePairs / (60 * p.beltRatio);
    drive.compensationHzPerNm = (p.slipCompensation * ratedSlipHz) / p.ratedTorqueNm;
    drive.compensationGain = lagGain(COMPENSATION_LAG_S, stepS);
    drive.rampUpHz = (p.maxHz / p.rampUpS) * stepS;
    drive.rampDownHz = (p.maxHz / p.rampDownS) * stepS;
    drive.maxHz = p.maxHz;
    drive.motoringSlipHz = (ratedSlipHz * limitActiveA) / drive.activeCurrentA;
    drive.brakingSlipHz = ratedSlipHz * p.brakingShare;
    drive.fedGain = rotorGain(drive.torquePerHz * drive.hzPerRadS, p.inertiaKgM2, stepS);
    preparePointProof(drive.atPurge, purgeRpm, p.proofMakeRpm, p.proofBreakRpm, p.proofDwellS);
    preparePointProof(
      drive.atLightOff,
      lightOffRpm,
      p.proofMakeRpm,
      p.proofBreakRpm,
      p.proofDwellS,
    );
  } else {
    const ratedSlip = (p.ratedSlipRpm * polePairs) / (60 * p.nominalHz);
    const share = p.breakdownShare;
    drive.breakdownNm = share * p.ratedTorqueNm;
    drive.breakdownSlip = ratedSlip * (share + Math.sqrt(share * share - 1));
    const span = ratedSlip * ratedSlip + drive.breakdownSlip * drive.breakdownSlip;
    drive.rotorCurrentA = (drive.activeCurrentA * Math.sqrt(span)) / ratedSlip;
  }
}

/**
 * The numbers a step needs (`targetRpm`, `loadNm`, `voltsShare`, `mainsHz`) are set on the drive
 * beforehand; passed as arguments they would cost an allocation each.
 *
 * @param running the fan relay's load is energised
 */
export function stepDrive(drive: Drive, running: boolean, stepS: number): void {
  const made = drive.welded || (running && drive.coilSound && !drive.burnt);
  moveContact(drive.contactor, made);
  const fed = made && drive.voltsShare >= UNDERVOLTAGE_SHARE;
  if (!fed && drive.motorRadS === 0 && drive.sensedRpm === 0) {
    drive.frequencyHz = 0;
    drive.torqueNm = 0;
    drive.fanRpm = 0;
    return;
  }
  if (
    fed &&
    drive.steady &&
    drive.targetRpm === drive.heldTargetRpm &&
    Math.abs(drive.loadNm - drive.heldLoadNm) < LOAD_NOTICED_NM
  ) {
    return;
  }
  const before = drive.motorRadS;
  const hzBefore = drive.frequencyHz;
  if (fed) {
    if (drive.variable) turnFromConverter(drive);
    else turnFromMains(drive, stepS);
  } else {
    coast(drive);
  }
  const speed = drive.motorRadS;
  drive.steady =
    fed &&
    drive.variable &&
    Math.abs(speed - before) < STEADY_RADS &&
    Math.abs(drive.frequencyHz - hzBefore) < STEADY_HZ &&
    Math.abs(drive.sensedRpm - speed * drive.feedbackRpmPerRadS) < STEADY_RPM;
  drive.heldTargetRpm = drive.targetRpm;
  drive.heldLoadNm = drive.loadNm;
  drive.fanRpm = speed * drive.fanRpmPerRadS;
  drive.sensedRpm = followWithLag(
    drive.sensedRpm,
    speed * drive.feedbackRpmPerRadS,
    drive.feedbackGain,
  );
  drive.feedbackRpm = arrive(drive.feedbackInput, drive.sensedRpm);
}

/** The proofs at speed; only a variable-speed fan has them. */
export function proveDrive(drive: Drive, stepS: number): void {
  stepPointProof(drive.atPurge, drive.feedbackRpm, true, stepS);
  stepPointProof(drive.atLightOff, drive.feedbackRpm, true, stepS);
}

/** Nothing more to prove while the speed stays what it is. */
export function isDriveProved(drive: Drive): boolean {
  return isProofAtRest(drive.atPurge) && isProofAtRest(drive.atLightOff);
}

/** Current in the motor's lines, A, for the drive's display or a clamp meter. */
export function readDriveCurrent(drive: Drive): number {
  if (drive.frequencyHz === 0) return 0;
  const p = drive.parameters;
  let activeA = (drive.activeCurrentA * drive.torqueNm) / p.ratedTorqueNm;
  if (!drive.variable) {
    const synchronous = drive.frequencyHz / drive.hzPerRadS;
    const slip = (synchronous - drive.motorRadS) / synchronous;
    const span = slip * slip + drive.breakdownSlip * drive.breakdownSlip;
    activeA = (drive.rotorCurrentA * slip * drive.voltsShare) / Math.sqrt(span);
  }
  return Math.sqrt(p.magnetisingCurrentA * p.magnetisingCurrentA + activeA * activeA);
}

function turnFromConverter(drive: Drive): void {
  const targetRpm = drive.targetRpm;
  const shaftHz = drive.motorRadS * drive.hzPerRadS;
  let hz = drive.frequencyHz;
  let wantedHz = 0;
  if (targetRpm > 0) {
    const slipHz = drive.torqueNm * drive.compensationHzPerNm;
    const compensationHz = followWithLag(drive.compensationHz, slipHz, drive.compensationGain);
    drive.compensationHz = compensationHz;
    wantedHz = Math.min(drive.maxHz, targetRpm * drive.hzPerFanRpm + compensationHz);
  }
  hz = Math.max(hz - drive.rampDownHz, Math.min(hz + drive.rampUpHz, wantedHz));
  hz = Math.max(shaftHz - drive.brakingSlipHz, Math.min(shaftHz + drive.motoringSlipHz, hz));
  drive.frequencyHz = hz;
  drive.motorRadS = stepRotor(
    drive.motorRadS,
    drive.torquePerHz * (hz - shaftHz) - drive.loadNm * drive.beltRatio - drive.frictionNm,
    drive.fedGain,
  );
  // At the speed after the step: the ramp has run ahead of the speed before it by a step.
  drive.torqueNm = drive.torquePerHz * (hz - drive.motorRadS * drive.hzPerRadS);
}

function turnFromMains(drive: Drive, stepS: number): void {
  const { voltsShare, mainsHz } = drive;
  const synchronous = mainsHz / drive.hzPerRadS;
  const slip = (synchronous - drive.motorRadS) / synchronous;
  const breakdown = drive.breakdownSlip;
  const span = slip * slip + breakdown * breakdown;
  const scale = 2 * drive.breakdownNm * breakdown * voltsShare * voltsShare;
  const slope = (scale * (breakdown * breakdown - slip * slip)) / (span * span * synchronous);
  drive.frequencyHz = mainsHz;
  drive.torqueNm = (scale * slip) / span;
  drive.motorRadS = stepRotor(
    drive.motorRadS,
    drive.torqueNm - drive.loadNm * drive.beltRatio - drive.frictionNm,
    rotorGain(Math.max(0, slope), drive.inertiaKgM2, stepS),
  );
}

function coast(drive: Drive): void {
  drive.frequencyHz = 0;
  drive.compensationHz = 0;
  drive.torqueNm = 0;
  const surplus = -drive.loadNm * drive.beltRatio - drive.frictionNm;
  drive.motorRadS = stepRotor(drive.motorRadS, surplus, drive.coastGain);
}
