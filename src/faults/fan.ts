/** Faults of the fan: contactor, motor, belt, drive, speed pick-up. */
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { adjusting, by } from './mending.ts';
import { driveOf, variableDriveOf } from './subject.ts';

const FAMILY = 'air path';

export const FAN_FAULTS: readonly Fault[] = [
  faultOf(
    variableDriveOf,
    {
      id: 'drive in current limit',
      family: FAMILY,
      component: 'fan drive',
      mechanism: 'the limit is set too low for the load, so the drive never reaches purge speed',
      severity: share('share of the current limit that was taken away', 0.1, 0.65, 0.9),
      onsets: NOT_INTERMITTENT,
      repair: 'set the limit from the commissioning sheet; find out who changed it',
      remedies: [...adjusting('fan drive', 'current limit'), ...by('fan drive', 'replace')],
      priorWeight: 2,
    },
    (drive, severity) => {
      drive.currentLimitA = Math.max(0.1, drive.currentLimitA * (1 - severity));
    },
  ),
  faultOf(
    variableDriveOf,
    {
      id: 'drive ramp too long',
      family: FAMILY,
      component: 'fan drive',
      mechanism: 'the run-up time was set too long',
      severity: { unit: 's', means: 'added to the run-up', low: 10, typical: 60, high: 200 },
      onsets: NOT_INTERMITTENT,
      repair: 'set the ramp from the commissioning sheet',
      remedies: [...adjusting('fan drive', 'run-up time'), ...by('fan drive', 'replace')],
      priorWeight: 1,
    },
    (drive, severity) => {
      drive.rampUpS = Math.min(300, drive.rampUpS + severity);
    },
  ),
  faultOf(
    driveOf,
    {
      id: 'fan contactor coil open',
      family: FAMILY,
      component: 'fan contactor',
      mechanism: 'the coil is broken, so the motor gets no supply',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the contactor',
      remedies: by('fan contactor', 'replace'),
      priorWeight: 2,
    },
    (drive) => {
      drive.contactorCoil = 'open';
    },
  ),
  faultOf(
    driveOf,
    {
      id: 'fan contactor contacts burnt',
      family: FAMILY,
      component: 'fan contactor',
      mechanism: 'the contacts no longer carry the motor current',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the contactor',
      remedies: by('fan contactor', 'replace'),
      priorWeight: 1,
    },
    (drive) => {
      drive.contactorContacts = 'burnt';
    },
  ),
  faultOf(
    driveOf,
    {
      id: 'fan contactor contacts welded',
      family: FAMILY,
      component: 'fan contactor',
      mechanism: 'the contacts have welded, so the fan runs whether it is told to or not',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'replace the contactor, find out what overloaded it',
      remedies: by('fan contactor', 'replace'),
      priorWeight: 0.5,
    },
    (drive) => {
      drive.contactorContacts = 'welded';
    },
  ),
  faultOf(
    driveOf,
    {
      id: 'fan turning backwards',
      family: FAMILY,
      component: 'fan motor',
      mechanism: 'two phases were swapped at the last work on the motor',
      severity: BROKEN,
      onsets: ['start'],
      repair: 'swap two phases, prove the turning direction',
      remedies: by('fan motor wiring', 'refit'),
      priorWeight: 1,
    },
    (drive) => {
      drive.rotation = 'backward';
    },
  ),
  faultOf(
    driveOf,
    {
      id: 'belt slipping',
      family: FAMILY,
      component: 'fan belt',
      mechanism: 'a slack or glazed belt loses speed',
      severity: share('share of the speed that is lost', 0.01, 0.35, 0.9),
      onsets: ANY_ONSET,
      repair: 'isolate, lock off, replace and tension the belt',
      remedies: by('fan belt', 'replace', 'tighten'),
      priorWeight: 1,
    },
    (drive, severity) => {
      drive.beltSlip = Math.max(drive.beltSlip, severity);
    },
  ),
  faultOf(
    variableDriveOf,
    {
      id: 'speed feedback lost',
      family: FAMILY,
      component: 'fan speed pick-up',
      mechanism: 'the pick-up has failed or lost its gap',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'set the gap or replace the pick-up',
      remedies: by('fan speed pick-up', 'realign', 'replace'),
      priorWeight: 1,
    },
    (drive) => {
      drive.feedback = 'lost';
    },
  ),
];
