/** Faults of what the air goes through and of the switch that proves it. */
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { adjusting, by } from './mending.ts';
import { type FaultSubject, switchOf, turnPoints } from './subject.ts';
import { SWITCH_POINT } from './switch-dials.ts';

const FAMILY = 'air path';
/** Nothing is ever quite tight: what still gets through a passage that is called shut. */
const MOST_BLOCKED = 0.98;

const airSwitch = (s: FaultSubject) => switchOf(s, 'airProved');
const passagesOf = (s: FaultSubject) => s.airPath.passages;
const stackOf = (s: FaultSubject) => s.airPath.stack;

const AIR_SWITCH_FAULTS: readonly Fault[] = [
  faultOf(
    airSwitch,
    {
      id: 'airflow switch welded',
      family: FAMILY,
      component: 'airflow switch',
      mechanism: 'the contact stays made without air',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'replace the switch',
      remedies: by('airflow switch', 'replace'),
      priorWeight: 2,
    },
    (air) => {
      air.contact = 'welded';
    },
  ),
  faultOf(
    airSwitch,
    {
      id: 'airflow switch tube off',
      family: FAMILY,
      component: 'airflow switch',
      mechanism: 'the sensing tube has come off its nipple',
      severity: share('share of the pressure that no longer arrives', 0.3, 1, 1),
      onsets: ANY_ONSET,
      repair: 'refit and secure the tube',
      remedies: by('airflow switch tube', 'refit', 'replace'),
      priorWeight: 2,
    },
    (air, severity) => {
      air.tubeShare = Math.min(air.tubeShare, 1 - severity);
    },
  ),
  faultOf(
    airSwitch,
    {
      id: 'airflow switch tube blocked',
      family: FAMILY,
      component: 'airflow switch',
      mechanism: 'water or dirt in the tube makes the pressure arrive late',
      severity: { unit: 's', means: 'lag of the tube', low: 30, typical: 600, high: 7200 },
      onsets: ANY_ONSET,
      repair: 'clear the tube and its low point',
      remedies: by('airflow switch tube', 'clean', 'replace'),
      priorWeight: 1,
    },
    (air, severity) => {
      air.tubeLagS = Math.min(36000, air.tubeLagS + severity);
    },
  ),
  faultOf(
    airSwitch,
    {
      id: 'airflow switch set too high',
      family: FAMILY,
      component: 'airflow switch',
      mechanism: 'its switch point stands above what the air makes',
      severity: share('rise, in switch points', 0.2, 3, 20),
      onsets: NOT_INTERMITTENT,
      repair: 'set the switch from the commissioning sheet, with a manometer',
      remedies: [...adjusting('airflow switch', SWITCH_POINT), ...by('airflow switch', 'replace')],
      priorWeight: 2,
    },
    (air, severity) => {
      turnPoints(air, severity * air.makePa);
    },
  ),
];

export const AIRFLOW_FAULTS: readonly Fault[] = [
  ...AIR_SWITCH_FAULTS,
  faultOf(
    passagesOf,
    {
      id: 'inlet screen blocked',
      family: FAMILY,
      component: 'air inlet screen',
      mechanism: 'dust, leaves or a bag cover the screen',
      severity: share('share of the screen that is covered', 0.3, 0.95, MOST_BLOCKED),
      onsets: ANY_ONSET,
      repair: 'stop the fan, clean the screen',
      remedies: by('air inlet screen', 'clean', 'replace'),
      priorWeight: 2,
    },
    (air, severity) => {
      air.screenBlockage = Math.max(air.screenBlockage, Math.min(MOST_BLOCKED, severity));
    },
  ),
  faultOf(
    stackOf,
    {
      id: 'flue blocked',
      family: FAMILY,
      component: 'flue',
      mechanism: 'a fall of brick or a nest closes the way out',
      severity: share('share of the flue that is closed', 0.3, 0.9, MOST_BLOCKED),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, inspect and clear the flue before any further start',
      remedies: by('flue', 'clean'),
      priorWeight: 1,
    },
    (stack, severity) => {
      stack.blockage = Math.max(stack.blockage, Math.min(MOST_BLOCKED, severity));
    },
  ),
  faultOf(
    stackOf,
    {
      id: 'stack damper part shut',
      family: FAMILY,
      component: 'stack damper',
      mechanism: 'the damper was left off its open stop, or its clamp has let it fall',
      severity: share('share of the flue that it closes', 0.3, 0.8, 0.95),
      onsets: NOT_INTERMITTENT,
      repair: 'open and secure the damper, prove the draught before any further start',
      remedies: by('stack damper', 'open'),
      priorWeight: 1,
    },
    (stack, severity) => {
      stack.damperShut = Math.max(stack.damperShut, Math.min(MOST_BLOCKED, severity));
    },
  ),
  faultOf(
    passagesOf,
    {
      id: 'room starved of air',
      family: FAMILY,
      component: 'boiler house',
      mechanism: 'the openings that let air into the room are closed off',
      severity: share('share of the openings that is closed', 0.5, 0.9, MOST_BLOCKED),
      onsets: NOT_INTERMITTENT,
      repair: 'open the louvres; ask who closed them and why',
      remedies: by('boiler room openings', 'open'),
      priorWeight: 1,
    },
    (air, severity) => {
      air.roomBlockage = Math.max(air.roomBlockage, Math.min(MOST_BLOCKED, severity));
    },
  ),
  faultOf(
    passagesOf,
    {
      id: 'passes sooted up',
      family: FAMILY,
      component: 'boiler passes',
      mechanism: 'soot narrows the ways of the flue gas',
      severity: share('share of the ways that is closed', 0.2, 0.6, 0.85),
      onsets: NOT_INTERMITTENT,
      repair: 'clean the passes, find out what made the soot',
      remedies: by('boiler passes', 'clean'),
      priorWeight: 1,
    },
    (air, severity) => {
      air.passBlockage = Math.max(air.passBlockage, severity);
    },
  ),
];
