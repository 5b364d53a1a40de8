/** What people leave behind: shut, switched over, set wrong. */

import { PROPORTIONAL_BAND, PURGE_FAN_SPEED } from './control-dials.ts';
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { CLOCK_AHEAD, OUTLET_PRESSURE } from './field-dials.ts';
import { adjusting, by } from './mending.ts';
import { edgeOf, type FaultSubject, regulatorOf, switchOf, turnPoints } from './subject.ts';
import { SWITCH_POINT } from './switch-dials.ts';

const FAMILY = 'people';
const FROM_THE_SHEET = 'set it from the commissioning sheet; note who changed it and why';

const clockOf = (s: FaultSubject) => s.field.timeClocks[0];
const heatContact = (s: FaultSubject) =>
  s.field.remoteContacts.find(({ switches }) => switches === 'call for heat');

function purgePointOf(s: FaultSubject) {
  const variable = s.field.drives.some(({ kind }) => kind === 'variable speed');
  return variable ? s.control.points : undefined;
}

const SETTING_FAULTS: readonly Fault[] = [
  faultOf(
    purgePointOf,
    {
      id: 'purge speed set too high',
      family: FAMILY,
      component: 'fuel and air points',
      mechanism: 'a parameter was set wrong at the last visit: the fan cannot turn that fast',
      severity: { unit: 'rpm', means: 'above the sound point', low: 30, typical: 200, high: 900 },
      onsets: NOT_INTERMITTENT,
      repair: 'set the point from the commissioning sheet',
      remedies: adjusting('fuel and air points', PURGE_FAN_SPEED),
      priorWeight: 1,
    },
    (points, severity) => {
      points.purgeFanRpm = Math.min(10000, points.purgeFanRpm + severity);
    },
  ),
  faultOf(
    regulatorOf,
    {
      id: 'gas regulator set too high',
      family: FAMILY,
      component: 'gas regulator',
      mechanism: 'someone screwed the spring in to get more out of the burner',
      severity: share('rise over the set pressure', 0.05, 0.25, 0.8),
      onsets: NOT_INTERMITTENT,
      repair: FROM_THE_SHEET,
      remedies: [...adjusting('gas regulator', OUTLET_PRESSURE), ...by('gas regulator', 'replace')],
      priorWeight: 1,
    },
    (regulator, severity) => {
      regulator.setpointPa = Math.min(500000, regulator.setpointPa * (1 + severity));
    },
  ),
  faultOf(
    (s) => s.control.firingRate,
    {
      id: 'firing band set too narrow',
      family: FAMILY,
      component: 'firing-rate control',
      mechanism: 'the proportional band was made narrow, so the burner swings between its ends',
      severity: share('share of the band that was taken away', 0.5, 0.9, 0.97),
      onsets: NOT_INTERMITTENT,
      repair: FROM_THE_SHEET,
      remedies: [
        ...adjusting('firing-rate control', PROPORTIONAL_BAND),
        ...by('firing-rate control', 'replace'),
      ],
      priorWeight: 1,
    },
    (control, severity) => {
      if (control.kind === 'temperature') {
        control.proportionalBandK = Math.max(0.5, control.proportionalBandK * (1 - severity));
      } else {
        control.proportionalBandPa = Math.max(1000, control.proportionalBandPa * (1 - severity));
      }
    },
  ),
  faultOf(
    (s) => switchOf(s, 'gasPressureBelowHigh'),
    {
      id: 'high-gas switch set too low',
      family: FAMILY,
      component: 'high-gas pressure switch',
      mechanism: 'it was set to the pressure under flow and not to that at lock-up',
      severity: share('share of the switch point that was taken away', 0.1, 0.3, 0.6),
      onsets: NOT_INTERMITTENT,
      repair: 'set the switch from the commissioning sheet, with a manometer',
      remedies: [
        ...adjusting('high-gas switch', SWITCH_POINT),
        ...by('high-gas switch', 'replace'),
      ],
      priorWeight: 1,
    },
    (high, severity) => {
      turnPoints(high, -severity * high.makePa);
    },
  ),
];

export const PEOPLE_FAULTS: readonly Fault[] = [
  faultOf(
    (s) => edgeOf(s, 'cock'),
    {
      id: 'manual cock left part shut',
      family: FAMILY,
      component: 'manual gas cock',
      mechanism: 'someone shut it for work and did not open it again',
      severity: share('share of the opening that is shut', 0.5, 0.95, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'open the cock; ask who shut it and why',
      remedies: by('manual gas cock', 'turn-cock'),
      priorWeight: 3,
    },
    (cock, severity) => {
      cock.opening = Math.min(cock.opening, 1 - severity);
    },
  ),
  ...SETTING_FAULTS,
  faultOf(
    (s) => s.control.firingRate,
    {
      id: 'hand control left on',
      family: FAMILY,
      component: 'firing-rate selector',
      mechanism: 'the selector was left in hand at a firing rate, so the load is not followed',
      severity: share('firing rate that was left', 0.3, 0.6, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'turn the selector to automatic; ask who left it and why',
      remedies: by('firing-rate selector', 'firing'),
      priorWeight: 2,
    },
    (control, severity) => {
      if (severity <= 0) return;
      control.leftIn = 'hand';
      control.leftAtRate = severity;
    },
  ),
  faultOf(
    (s) => s.control.firingRate,
    {
      id: 'low-fire hold left on',
      family: FAMILY,
      component: 'firing-rate selector',
      mechanism: 'the selector was left at low fire, so the load is not carried',
      severity: BROKEN,
      onsets: NOT_INTERMITTENT,
      repair: 'turn the selector to automatic; ask who left it and why',
      remedies: by('firing-rate selector', 'firing'),
      priorWeight: 1,
    },
    (control) => {
      control.leftIn = 'low fire';
    },
  ),
  faultOf(
    clockOf,
    {
      id: 'time clock set wrong',
      family: FAMILY,
      component: 'time clock',
      mechanism: 'it stood still while the power was off, so day is taken for night',
      severity: share('hours that it is behind', 1, 6, 12),
      onsets: ['start'],
      repair: 'set the clock; ask about summer time and power cuts',
      remedies: [...adjusting('time clock', CLOCK_AHEAD), ...by('time clock', 'reset', 'replace')],
      priorWeight: 1,
    },
    (clock, severity) => {
      const ahead = clock.aheadHours - severity;
      clock.aheadHours = ahead < -12 ? ahead + 24 : ahead;
    },
  ),
  faultOf(
    heatContact,
    {
      id: 'remote enable off',
      family: FAMILY,
      component: 'remote enable',
      mechanism: 'what is outside the boiler house does not allow the burner',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'find who holds it off and why before asking for heat',
      remedies: by('remote enable', 'report'),
      priorWeight: 2,
    },
    (contact) => {
      contact.contact = 'open';
    },
  ),
];
