/** Faults of limits and controls on level, pressure and temperature. */
import type { WaterCutOffParameters } from '../field/index.ts';
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { adjusting, by } from './mending.ts';
import {
  cutOffOf,
  type FaultSubject,
  switchOf,
  temperatureSwitchOf,
  transmitterOf,
  turnPoints,
} from './subject.ts';
import { SWITCH_POINT } from './switch-dials.ts';

const FAMILY = 'vessel and limits';

const firstCutOff = (s: FaultSubject) => cutOffOf(s, 'first');
const vesselTransmitter = (s: FaultSubject) => transmitterOf(s, 'vessel');
const highLimit = (s: FaultSubject) =>
  switchOf(s, 'highLimitMade') ?? temperatureSwitchOf(s, 'highLimitMade');

function cutOffTripped(
  id: string,
  component: string,
  stands: WaterCutOffParameters['stands'],
): Fault {
  return faultOf(
    (s) => {
      const cutOff = cutOffOf(s, stands);
      return cutOff?.manualReset === true ? cutOff : undefined;
    },
    {
      id,
      family: FAMILY,
      component,
      mechanism: 'it tripped at an earlier low water and stands latched until reset by hand',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'find out why the water was low, then reset it at the cut-off',
      remedies: by('second low-water cut-off', 'reset-limits', 'replace'),
      priorWeight: 2,
    },
    (cutOff) => {
      cutOff.contact = 'open';
    },
  );
}

const WATER_FAULTS: readonly Fault[] = [
  faultOf(
    firstCutOff,
    {
      id: 'low-water cut-off open',
      family: FAMILY,
      component: 'first low-water cut-off',
      mechanism: 'the contact stays open with water in the glass',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the cut-off, prove it by a slow drain test',
      remedies: by('first low-water cut-off', 'replace'),
      priorWeight: 2,
    },
    (cutOff) => {
      cutOff.contact = 'open';
    },
  ),
  faultOf(
    firstCutOff,
    {
      id: 'low-water cut-off stuck made',
      family: FAMILY,
      component: 'first low-water cut-off',
      mechanism: 'the contact stays made without water; only the second cut-off is left',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'replace the cut-off, prove it by a slow drain test',
      remedies: by('first low-water cut-off', 'replace'),
      priorWeight: 1,
    },
    (cutOff) => {
      cutOff.contact = 'welded';
    },
  ),
  faultOf(
    firstCutOff,
    {
      id: 'low-water cut-off probe fouled',
      family: FAMILY,
      component: 'first low-water cut-off',
      mechanism: 'scale on the probe feels like water after the level has left it',
      severity: {
        unit: 'm',
        means: 'senses this much too high',
        low: 0.02,
        typical: 0.08,
        high: 0.3,
      },
      onsets: NOT_INTERMITTENT,
      repair: 'clean or replace the probe, prove it by a slow drain test',
      remedies: by('first low-water cut-off', 'clean', 'replace'),
      priorWeight: 2,
    },
    (cutOff, severity) => {
      cutOff.offsetM = Math.min(3, cutOff.offsetM + severity);
    },
  ),
  cutOffTripped('second low-water cut-off tripped', 'second low-water cut-off', 'second'),
];

const PRESSURE_FAULTS: readonly Fault[] = [
  faultOf(
    (s) => switchOf(s, 'highLimitMade'),
    {
      id: 'high limit drifted down',
      family: FAMILY,
      component: 'high-pressure limit',
      mechanism: 'its switch point has moved below the working pressure',
      severity: share('fall, as a share of the switch point', 0.03, 0.25, 0.6),
      onsets: NOT_INTERMITTENT,
      repair: 'replace the limit, prove it against a test gauge',
      remedies: [...by('high limit', 'replace'), ...adjusting('high limit', SWITCH_POINT)],
      priorWeight: 1,
    },
    (limit, severity) => {
      limit.driftPa = Math.max(-2e6, limit.driftPa - severity * limit.breakPa);
    },
  ),
  faultOf(
    (s) => switchOf(s, 'callForHeat'),
    {
      id: 'operating setpoint below pressure',
      family: FAMILY,
      component: 'operating pressure control',
      mechanism: 'its switch point was turned down, so heat is never asked for',
      severity: share('fall, as a share of the switch point', 0.03, 0.4, 0.65),
      onsets: NOT_INTERMITTENT,
      repair: 'set the control from the commissioning sheet',
      remedies: [
        ...adjusting('operating control', SWITCH_POINT),
        ...by('operating control', 'replace'),
      ],
      priorWeight: 1,
    },
    (control, severity) => {
      turnPoints(control, -severity * control.breakPa);
    },
  ),
  faultOf(
    vesselTransmitter,
    {
      id: 'vessel pressure transmitter offset',
      family: FAMILY,
      component: 'vessel pressure transmitter',
      mechanism: 'its zero has moved, so it reads high and the burner is held down',
      severity: share('reads this share of its range too high', 0.005, 0.08, 0.3),
      onsets: NOT_INTERMITTENT,
      repair: 'compare with a test gauge, set the zero or replace the transmitter',
      remedies: by('vessel pressure transmitter', 'reset', 'replace'),
      priorWeight: 1,
    },
    (transmitter, severity) => {
      const rangePa = transmitter.highPa - transmitter.lowPa;
      transmitter.offsetPa = Math.min(2e6, transmitter.offsetPa + severity * rangePa);
    },
  ),
  faultOf(
    vesselTransmitter,
    {
      id: 'vessel impulse line blocked',
      family: FAMILY,
      component: 'vessel pressure transmitter',
      mechanism: 'scale in the syphon makes the pressure arrive late, so the burner hunts',
      severity: { unit: 's', means: 'lag of the line', low: 20, typical: 200, high: 7200 },
      onsets: ANY_ONSET,
      repair: 'isolate, clear the syphon, fill it with water',
      remedies: by('vessel impulse line', 'clean', 'replace'),
      priorWeight: 1,
    },
    (transmitter, severity) => {
      transmitter.lineLagS = Math.min(36000, transmitter.lineLagS + severity);
    },
  ),
];

const TEMPERATURE_FAULTS: readonly Fault[] = [
  faultOf(
    (s) => temperatureSwitchOf(s, 'highLimitMade'),
    {
      id: 'high temperature limit drifted down',
      family: FAMILY,
      component: 'high-temperature limit',
      mechanism: 'its switch point has moved below the working temperature',
      severity: { unit: 'K', means: 'fall of the switch point', low: 3, typical: 20, high: 90 },
      onsets: NOT_INTERMITTENT,
      repair: 'replace the limit, prove it against a test thermometer',
      remedies: [...by('high limit', 'replace'), ...adjusting('high limit', SWITCH_POINT)],
      priorWeight: 1,
    },
    (limit, severity) => {
      limit.driftK = Math.max(-150, limit.driftK - severity);
    },
  ),
  faultOf(
    (s) => temperatureSwitchOf(s, 'callForHeat'),
    {
      id: 'operating setpoint below water temperature',
      family: FAMILY,
      component: 'operating temperature control',
      mechanism: 'its switch point was turned down, so heat is never asked for',
      severity: { unit: 'K', means: 'fall of the switch point', low: 3, typical: 30, high: 80 },
      onsets: NOT_INTERMITTENT,
      repair: 'set the control from the commissioning sheet',
      remedies: [
        ...adjusting('operating control', SWITCH_POINT),
        ...by('operating control', 'replace'),
      ],
      priorWeight: 1,
    },
    (control, severity) => {
      control.makeC = Math.max(-20, control.makeC - severity);
      control.breakC = Math.max(-20, control.breakC - severity);
    },
  ),
  faultOf(
    (s) => temperatureSwitchOf(s, 'callForHeat'),
    {
      id: 'temperature bulb out of its pocket',
      family: FAMILY,
      component: 'operating temperature control',
      mechanism: 'the bulb hangs in the room, so the water is taken for cold',
      severity: share('share of the water that it no longer feels', 0.2, 0.8, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'push the bulb home and clip it',
      remedies: by('operating control', 'refit', 'replace'),
      priorWeight: 1,
    },
    (control, severity) => {
      control.pocketShare *= 1 - severity;
    },
  ),
  faultOf(
    (s) => s.field.thermometers[0],
    {
      id: 'water temperature transmitter offset',
      family: FAMILY,
      component: 'water temperature transmitter',
      mechanism: 'it reads high, so the burner is held down',
      severity: { unit: 'K', means: 'reads this much high', low: 1, typical: 8, high: 40 },
      onsets: NOT_INTERMITTENT,
      repair: 'compare with a test thermometer, replace the element',
      remedies: by('water temperature transmitter', 'reset', 'replace'),
      priorWeight: 1,
    },
    (thermometer, severity) => {
      thermometer.offsetK = Math.min(100, thermometer.offsetK + severity);
    },
  ),
];

export const LIMIT_FAULTS: readonly Fault[] = [
  ...WATER_FAULTS,
  faultOf(
    (s) => {
      const limit = highLimit(s);
      return limit?.manualReset === true ? limit : undefined;
    },
    {
      id: 'high limit tripped',
      family: FAMILY,
      component: 'high limit',
      mechanism: 'it tripped at an earlier overshoot and stands latched until reset by hand',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'find out what went too high, then reset it at the limit',
      remedies: by('high limit', 'reset-limits', 'replace'),
      priorWeight: 3,
    },
    (limit) => {
      limit.contact = 'open';
    },
  ),
  ...PRESSURE_FAULTS,
  ...TEMPERATURE_FAULTS,
];
