/** Faults of the mixture: what was set at commissioning, and what has changed since. */

import { LIGHT_OFF_DAMPER, MID_CURVE_DAMPERS } from './control-dials.ts';
import {
  type Fault,
  type FaultWords,
  faultOf,
  NOT_INTERMITTENT,
  type SeverityRange,
  share,
} from './fault.ts';
import { adjusting, by } from './mending.ts';
import { type FaultSubject, servoOf } from './subject.ts';

const FAMILY = 'burner and combustion';
const CHECK_AGAIN = 'set the point from the commissioning sheet, check with an analyser';

/** With fuel valve and damper on one shaft, a point moves both and the mixture stays. */
const setsAirAlone = (s: FaultSubject) => {
  const damper = servoOf(s, 'damper');
  return damper !== undefined && damper !== servoOf(s, 'fuel valve');
};

function lightOffPoint(
  id: string,
  mechanism: string,
  severity: SeverityRange,
  priorWeight: number,
  towardsOpen: 1 | -1,
): Fault {
  const words: FaultWords = {
    id,
    family: FAMILY,
    component: 'fuel and air points',
    mechanism,
    severity,
    onsets: NOT_INTERMITTENT,
    repair: CHECK_AGAIN,
    remedies: adjusting('fuel and air points', LIGHT_OFF_DAMPER),
    priorWeight,
  };
  return faultOf(
    (s) => (setsAirAlone(s) ? s.control.points : undefined),
    words,
    (points, deg) => {
      points.lightOffDamperDeg = damperAt(points.lightOffDamperDeg + towardsOpen * deg);
    },
  );
}

/** Bends the curve between its ends: there low and full fire were checked, and are as they were. */
function midCurve(id: string, mechanism: string, priorWeight: number, towardsOpen: 1 | -1): Fault {
  return faultOf(
    (s) => (setsAirAlone(s) && s.control.curve.rates.length > 2 ? s.control.curve : undefined),
    {
      id,
      family: FAMILY,
      component: 'fuel-air curve',
      mechanism,
      severity: { unit: '°', means: 'damper off at mid range', low: 1, typical: 5, high: 12 },
      onsets: NOT_INTERMITTENT,
      repair: 'set the curve anew over the whole range with an analyser in the flue',
      remedies: [
        ...by('fuel-air curve', 'reset'),
        ...adjusting('fuel-air curve', ...MID_CURVE_DAMPERS),
      ],
      priorWeight,
    },
    (curve, deg) => {
      for (let i = 1; i < curve.damperDeg.length - 1; i++) {
        curve.damperDeg[i] = damperAt((curve.damperDeg[i] as number) + towardsOpen * deg);
      }
    },
  );
}

function burnerAir(id: string, mechanism: string, direction: 1 | -1): Fault {
  return faultOf(
    (s) => s.ambient,
    {
      id,
      family: FAMILY,
      component: 'combustion air',
      mechanism,
      severity: {
        unit: 'K',
        means: 'against the day of commissioning',
        low: 5,
        typical: 15,
        high: 30,
      },
      onsets: NOT_INTERMITTENT,
      repair: 'commission again for the season, or with enough air to spare for both',
      remedies: by('combustion air', 'report'),
      priorWeight: 1,
    },
    (ambient, kelvin) => {
      const to = ambient.temperatureC + direction * kelvin;
      ambient.temperatureC = Math.min(50, Math.max(-40, to));
    },
  );
}

const mixtureOf = (s: FaultSubject) => s.gasTrain.mixture;

export const COMBUSTION_FAULTS: readonly Fault[] = [
  lightOffPoint(
    'light-off point set lean',
    'the light-off damper point was opened up at the last visit',
    { unit: '°', means: 'damper further open at light-off', low: 2, typical: 20, high: 50 },
    2,
    1,
  ),
  lightOffPoint(
    'light-off point set rich',
    'the light-off damper point was closed in at the last visit',
    { unit: '°', means: 'damper further shut at light-off', low: 2, typical: 12, high: 30 },
    1,
    -1,
  ),
  midCurve(
    'curve detuned rich at mid range',
    'the damper points between low and full fire were closed in, so air runs short there',
    2,
    -1,
  ),
  midCurve(
    'curve detuned lean at mid range',
    'the damper points between low and full fire were opened up, so heat goes up the stack',
    1,
    1,
  ),
  burnerAir(
    'air warmer than at commissioning',
    'summer air is lighter: the same volume brings less oxygen',
    1,
  ),
  burnerAir(
    'air colder than at commissioning',
    'winter air is heavier: the same volume brings more oxygen',
    -1,
  ),
  faultOf(
    mixtureOf,
    {
      id: 'gas richer than at commissioning',
      family: FAMILY,
      component: 'gas supply',
      mechanism: 'the supplier adds propane, so each cubic metre asks for more air',
      severity: share('parts of propane to one of the gas before', 0.03, 0.12, 0.3),
      onsets: NOT_INTERMITTENT,
      repair: 'ask the supplier for the gas quality, commission again for the range it may have',
      remedies: by('gas supply', 'report'),
      priorWeight: 0.5,
    },
    (mixture, parts) => {
      mixture.propane = Math.min(1, mixture.propane + parts);
    },
  ),
  faultOf(
    mixtureOf,
    {
      id: 'gas leaner than at commissioning',
      family: FAMILY,
      component: 'gas supply',
      mechanism: 'the supply carries more nitrogen, so each cubic metre brings less heat',
      severity: share('parts of nitrogen to one of the gas before', 0.03, 0.12, 0.3),
      onsets: NOT_INTERMITTENT,
      repair: 'ask the supplier for the gas quality, commission again for the range it may have',
      remedies: by('gas supply', 'report'),
      priorWeight: 0.5,
    },
    (mixture, parts) => {
      mixture.nitrogen = Math.min(1, mixture.nitrogen + parts);
    },
  ),
  faultOf(
    mixtureOf,
    {
      id: 'hydrogen in the gas',
      family: FAMILY,
      component: 'gas supply',
      mechanism: 'the supplier blends hydrogen in: a faster flame and less heat a cubic metre',
      severity: share('parts of hydrogen to one of the gas before', 0.05, 0.2, 0.5),
      onsets: NOT_INTERMITTENT,
      repair: 'ask the supplier for the gas quality, commission again for the range it may have',
      remedies: by('gas supply', 'report'),
      priorWeight: 0.3,
    },
    (mixture, parts) => {
      mixture.hydrogen = Math.min(1, mixture.hydrogen + parts);
    },
  ),
];

function damperAt(deg: number): number {
  return Math.min(90, Math.max(0, deg));
}
