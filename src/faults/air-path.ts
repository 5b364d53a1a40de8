/** Faults of the air path: damper, servo, fan, drive, airflow switch, what the air goes through. */
import { ANY_ONSET, BROKEN, type Fault, isBroken, NOT_INTERMITTENT, share } from './fault.ts';
import { driveOf, type FaultSubject, servoOf, switchOf } from './subject.ts';

const FAMILY = 'air path';
const FULL_STROKE_DEG = 90;

const hasDamper = (s: FaultSubject): boolean => servoOf(s, 'damper') !== undefined;
const hasAirSwitch = (s: FaultSubject): boolean => switchOf(s, 'airProved') !== undefined;
const hasDrive = (s: FaultSubject): boolean => driveOf(s) !== undefined;
const hasVariableSpeed = (s: FaultSubject): boolean => driveOf(s)?.kind === 'variable speed';

export const AIR_PATH_FAULTS: readonly Fault[] = [
  {
    id: 'damper jammed short of purge',
    family: FAMILY,
    component: 'air damper',
    mechanism:
      'something solid in the duct or linkage stops the shaft before the end of its stroke',
    severity: { unit: '°', means: 'short of the full stroke', low: 5, typical: 25, high: 80 },
    onsets: ANY_ONSET,
    repair: 'isolate, lock off, free the damper, stroke it by hand',
    priorWeight: 3,
    appliesTo: hasDamper,
    apply: (s, severity) => {
      const servo = servoOf(s, 'damper');
      if (servo !== undefined) {
        servo.jamMaxDeg = Math.min(servo.jamMaxDeg, FULL_STROKE_DEG - severity);
      }
    },
  },
  {
    id: 'damper shaft slipped',
    family: FAMILY,
    component: 'air damper',
    mechanism: 'the blade has turned on its shaft; the feedback still looks right',
    severity: { unit: '°', means: 'blade behind its shaft', low: 5, typical: 30, high: 80 },
    onsets: NOT_INTERMITTENT,
    repair: 'refit and pin the blade, check blade against feedback over the stroke',
    priorWeight: 2,
    appliesTo: hasDamper,
    apply: (s, severity) => {
      const servo = servoOf(s, 'damper');
      if (servo !== undefined) servo.slipDeg -= severity;
    },
  },
  {
    id: 'damper servo slow',
    family: FAMILY,
    component: 'damper servo',
    mechanism: 'dry bearings or low torque slow the stroke',
    severity: share('share of the speed that is lost', 0.3, 0.75, 0.95),
    onsets: ANY_ONSET,
    repair: 'free the linkage, replace the servo',
    priorWeight: 1,
    appliesTo: hasDamper,
    apply: (s, severity) => {
      const servo = servoOf(s, 'damper');
      if (servo !== undefined) servo.motorHealth *= 1 - severity;
    },
  },
  {
    id: 'damper servo motor dead',
    family: FAMILY,
    component: 'damper servo',
    mechanism: 'the winding or the motor output has failed',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the servo, set its points again',
    priorWeight: 2,
    appliesTo: hasDamper,
    apply: (s, severity) => {
      const servo = servoOf(s, 'damper');
      if (servo !== undefined && isBroken(severity)) servo.motorHealth = 0;
    },
  },
  {
    id: 'damper feedback offset',
    family: FAMILY,
    component: 'damper servo',
    mechanism: 'the feedback track has turned on the shaft, so it reads high',
    severity: { unit: '°', means: 'reads this much too high', low: 3, typical: 10, high: 40 },
    onsets: NOT_INTERMITTENT,
    repair: 'set the feedback against the blade',
    priorWeight: 1,
    appliesTo: hasDamper,
    apply: (s, severity) => {
      const servo = servoOf(s, 'damper');
      if (servo !== undefined) servo.feedbackOffsetDeg += severity;
    },
  },
  {
    id: 'damper feedback track worn',
    family: FAMILY,
    component: 'damper servo',
    mechanism: 'the wiper jumps on a worn track',
    severity: { unit: '°', means: 'scatter of the feedback', low: 0.5, typical: 4, high: 15 },
    onsets: NOT_INTERMITTENT,
    repair: 'replace the feedback element',
    priorWeight: 1,
    appliesTo: hasDamper,
    apply: (s, severity) => {
      const servo = servoOf(s, 'damper');
      if (servo !== undefined) servo.feedbackNoiseDeg += severity;
    },
  },
  {
    id: 'damper feedback open circuit',
    family: FAMILY,
    component: 'damper servo',
    mechanism: 'the feedback wire is broken',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'make good the wire',
    priorWeight: 1,
    appliesTo: hasDamper,
    apply: (s, severity) => {
      const servo = servoOf(s, 'damper');
      if (servo !== undefined && isBroken(severity)) servo.feedback = 'open';
    },
  },
  {
    id: 'purge end switch out of adjustment',
    family: FAMILY,
    component: 'damper servo',
    mechanism: 'the cam of the end switch has moved past the end of the stroke',
    severity: { unit: '°', means: 'switch point moved up', low: 2, typical: 5, high: 20 },
    onsets: NOT_INTERMITTENT,
    repair: 'set the cam and prove it by stroking',
    priorWeight: 1,
    appliesTo: (s) => servoOf(s, 'damper')?.endSwitch === 'fitted',
    apply: (s, severity) => {
      const servo = servoOf(s, 'damper');
      if (servo !== undefined) servo.endSwitchDeg += severity;
    },
  },
  {
    id: 'drive in current limit',
    family: FAMILY,
    component: 'fan drive',
    mechanism: 'the limit is set too low for the load, so the drive never reaches purge speed',
    severity: { unit: 'A', means: 'taken off the current limit', low: 2, typical: 16, high: 30 },
    onsets: NOT_INTERMITTENT,
    repair: 'set the limit from the commissioning sheet; find out who changed it',
    priorWeight: 2,
    appliesTo: hasVariableSpeed,
    apply: (s, severity) => {
      const drive = driveOf(s);
      if (drive?.kind === 'variable speed') {
        drive.currentLimitA = Math.max(0.1, drive.currentLimitA - severity);
      }
    },
  },
  {
    id: 'drive ramp too long',
    family: FAMILY,
    component: 'fan drive',
    mechanism: 'the run-up time was set too long',
    severity: { unit: 's', means: 'added to the run-up', low: 10, typical: 60, high: 200 },
    onsets: NOT_INTERMITTENT,
    repair: 'set the ramp from the commissioning sheet',
    priorWeight: 1,
    appliesTo: hasVariableSpeed,
    apply: (s, severity) => {
      const drive = driveOf(s);
      if (drive?.kind === 'variable speed') drive.rampUpS += severity;
    },
  },
  {
    id: 'fan contactor coil open',
    family: FAMILY,
    component: 'fan contactor',
    mechanism: 'the coil is broken, so the motor gets no supply',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the contactor',
    priorWeight: 2,
    appliesTo: hasDrive,
    apply: (s, severity) => {
      const drive = driveOf(s);
      if (drive !== undefined && isBroken(severity)) drive.contactorCoil = 'open';
    },
  },
  {
    id: 'fan contactor contacts burnt',
    family: FAMILY,
    component: 'fan contactor',
    mechanism: 'the contacts no longer carry the motor current',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the contactor',
    priorWeight: 1,
    appliesTo: hasDrive,
    apply: (s, severity) => {
      const drive = driveOf(s);
      if (drive !== undefined && isBroken(severity)) drive.contactorContacts = 'burnt';
    },
  },
  {
    id: 'fan turning backwards',
    family: FAMILY,
    component: 'fan motor',
    mechanism: 'two phases were swapped at the last work on the motor',
    severity: BROKEN,
    onsets: NOT_INTERMITTENT,
    repair: 'swap two phases, prove the turning direction',
    priorWeight: 1,
    appliesTo: hasDrive,
    apply: (s, severity) => {
      const drive = driveOf(s);
      if (drive !== undefined && isBroken(severity)) drive.rotation = 'backward';
    },
  },
  {
    id: 'belt slipping',
    family: FAMILY,
    component: 'fan belt',
    mechanism: 'a slack or glazed belt loses speed',
    severity: share('share of the speed that is lost', 0.05, 0.35, 0.9),
    onsets: ANY_ONSET,
    repair: 'isolate, lock off, replace and tension the belt',
    priorWeight: 1,
    appliesTo: hasDrive,
    apply: (s, severity) => {
      const drive = driveOf(s);
      if (drive !== undefined) drive.beltSlip = Math.max(drive.beltSlip, severity);
    },
  },
  {
    id: 'speed feedback lost',
    family: FAMILY,
    component: 'fan speed pick-up',
    mechanism: 'the pick-up has failed or lost its gap',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'set the gap or replace the pick-up',
    priorWeight: 1,
    appliesTo: hasVariableSpeed,
    apply: (s, severity) => {
      const drive = driveOf(s);
      if (drive !== undefined && isBroken(severity)) drive.feedback = 'lost';
    },
  },
  {
    id: 'airflow switch welded',
    family: FAMILY,
    component: 'airflow switch',
    mechanism: 'the contact stays made without air',
    severity: BROKEN,
    onsets: NOT_INTERMITTENT,
    repair: 'replace the switch',
    priorWeight: 2,
    appliesTo: hasAirSwitch,
    apply: (s, severity) => {
      const air = switchOf(s, 'airProved');
      if (air !== undefined && isBroken(severity)) air.contact = 'welded';
    },
  },
  {
    id: 'airflow switch tube off',
    family: FAMILY,
    component: 'airflow switch',
    mechanism: 'the sensing tube has come off its nipple',
    severity: share('share of the pressure that no longer arrives', 0.8, 1, 1),
    onsets: ANY_ONSET,
    repair: 'refit and secure the tube',
    priorWeight: 2,
    appliesTo: hasAirSwitch,
    apply: (s, severity) => {
      const air = switchOf(s, 'airProved');
      if (air !== undefined) air.tubeShare = Math.min(air.tubeShare, 1 - severity);
    },
  },
  {
    id: 'airflow switch tube blocked',
    family: FAMILY,
    component: 'airflow switch',
    mechanism: 'water or dirt in the tube makes the pressure arrive late',
    severity: { unit: 's', means: 'lag of the tube', low: 30, typical: 600, high: 7200 },
    onsets: ANY_ONSET,
    repair: 'clear the tube and its low point',
    priorWeight: 1,
    appliesTo: hasAirSwitch,
    apply: (s, severity) => {
      const air = switchOf(s, 'airProved');
      if (air !== undefined) air.tubeLagS += severity;
    },
  },
  {
    id: 'airflow switch set too high',
    family: FAMILY,
    component: 'airflow switch',
    mechanism: 'its switch point stands above what the air makes',
    severity: { unit: 'Pa', means: 'rise of the switch point', low: 50, typical: 2000, high: 4000 },
    onsets: NOT_INTERMITTENT,
    repair: 'set the switch from the commissioning sheet, with a manometer',
    priorWeight: 2,
    appliesTo: hasAirSwitch,
    apply: (s, severity) => {
      const air = switchOf(s, 'airProved');
      if (air !== undefined) air.driftPa += severity;
    },
  },
  {
    id: 'inlet screen blocked',
    family: FAMILY,
    component: 'air inlet screen',
    mechanism: 'dust, leaves or a bag cover the screen',
    severity: share('share of the screen that is covered', 0.3, 0.95, 0.98),
    onsets: ANY_ONSET,
    repair: 'stop the fan, clean the screen',
    priorWeight: 2,
    appliesTo: () => true,
    apply: (s, severity) => {
      const air = s.airPath.passages;
      air.screenBlockage = Math.max(air.screenBlockage, Math.min(0.98, severity));
    },
  },
  {
    id: 'flue blocked',
    family: FAMILY,
    component: 'flue',
    mechanism: 'a shut stack damper or a fall of brick closes the way out',
    severity: share('share of the flue that is closed', 0.3, 0.9, 0.98),
    onsets: NOT_INTERMITTENT,
    repair: 'isolate, inspect and clear the flue before any further start',
    priorWeight: 1,
    appliesTo: () => true,
    apply: (s, severity) => {
      const stack = s.airPath.stack;
      stack.blockage = Math.max(stack.blockage, Math.min(0.98, severity));
    },
  },
  {
    id: 'room starved of air',
    family: FAMILY,
    component: 'boiler house',
    mechanism: 'the openings that let air into the room are closed off',
    severity: share('share of the openings that is closed', 0.5, 0.95, 0.98),
    onsets: NOT_INTERMITTENT,
    repair: 'open the louvres; ask who closed them and why',
    priorWeight: 1,
    appliesTo: () => true,
    apply: (s, severity) => {
      const air = s.airPath.passages;
      air.roomBlockage = Math.max(air.roomBlockage, Math.min(0.98, severity));
    },
  },
];
