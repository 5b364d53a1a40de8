/** What is set in the controller: points of a start, fuel-air curve, firing-rate control. */
import {
  curveParameters,
  modulatingFeedParameters,
  onOffFeedParameters,
  pointsParameters,
  pressureFiringRateParameters,
  temperatureFiringRateParameters,
} from '../field/index.ts';
import { type Dial, dialOn } from './dial.ts';
import { type FaultSubject, servoOf, variableDriveOf } from './subject.ts';

export const PURGE_FAN_SPEED = 'fan speed at purge';
export const LIGHT_OFF_DAMPER = 'damper at light-off';
export const PROPORTIONAL_BAND = 'proportional band';

/** The points of the curve between its ends, as many as a curve may have. */
export const MID_CURVE_DAMPERS: readonly string[] = Array.from(
  { length: curveParameters.damperDeg.maxLength - 2 },
  (_, i) => `damper at point ${i + 2}`,
);

export function controlDials(s: FaultSubject): readonly Dial[] {
  return [...pointDials(s), ...curveDials(s), ...firingRateDials(s), ...feedDials(s)];
}

/** Where one shaft turns damper and fuel valve, its angle is that of the damper. */
const hasFuelServo = (s: FaultSubject) => {
  const servo = servoOf(s, 'fuel valve');
  return servo !== undefined && servo !== servoOf(s, 'damper');
};

function pointDials(s: FaultSubject): Dial[] {
  const { points } = s.control;
  const dial = (setting: string, key: keyof typeof points) =>
    dialOn('fuel and air points', setting, pointsParameters, points, key);
  return [
    dial('damper at purge', 'purgeDamperDeg'),
    dial(LIGHT_OFF_DAMPER, 'lightOffDamperDeg'),
    ...(variableDriveOf(s) === undefined
      ? []
      : [dial(PURGE_FAN_SPEED, 'purgeFanRpm'), dial('fan speed at light-off', 'lightOffFanRpm')]),
    ...(hasFuelServo(s) ? [dial('fuel valve at light-off', 'lightOffFuelValveDeg')] : []),
  ];
}

function curveDials(s: FaultSubject): Dial[] {
  const { curve } = s.control;
  const last = curve.rates.length - 1;
  const place = (i: number) => (i === 0 ? 'low fire' : i === last ? 'full fire' : `point ${i + 1}`);
  const dials = (what: string, key: 'damperDeg' | 'fanRpm' | 'fuelValveDeg'): Dial[] =>
    curve[key].map((_, i) => ({
      part: 'fuel-air curve',
      setting: `${what} at ${place(i)}`,
      unit: curveParameters[key].unit,
      min: curveParameters[key].min,
      max: curveParameters[key].max,
      read: () => curve[key][i] as number,
      write: (value) => {
        curve[key][i] = value;
      },
    }));
  return [
    ...dials('damper', 'damperDeg'),
    ...(variableDriveOf(s) === undefined ? [] : dials('fan speed', 'fanRpm')),
    ...(hasFuelServo(s) ? dials('fuel valve', 'fuelValveDeg') : []),
  ];
}

function feedDials(s: FaultSubject): Dial[] {
  const control = s.field.feedControls[0];
  if (control === undefined) return [];
  const part = 'feed control';
  if (control.kind === 'modulating') {
    const table = modulatingFeedParameters;
    return [
      dialOn(part, 'level setpoint', table, control, 'setpointM'),
      dialOn(part, 'level band', table, control, 'bandM'),
    ];
  }
  const { min, max, unit } = onOffFeedParameters.onM;
  return [
    {
      part,
      setting: 'pump on',
      unit,
      min,
      max,
      read: () => control.onM,
      write: (value) => {
        const band = control.offM - control.onM;
        control.onM = value;
        control.offM = value + band;
      },
    },
    {
      part,
      setting: 'level band',
      unit,
      min: LEAST_BAND_M,
      max: 1,
      read: () => control.offM - control.onM,
      write: (value) => {
        control.offM = control.onM + value;
      },
    },
  ];
}

/** A pump that stops where it starts would never stop starting. */
const LEAST_BAND_M = 0.005;

function firingRateDials(s: FaultSubject): Dial[] {
  const control = s.control.firingRate;
  const part = 'firing-rate control';
  if (control.kind === 'temperature') {
    const table = temperatureFiringRateParameters;
    return [
      dialOn(part, 'setpoint', table, control, 'setpointC'),
      dialOn(part, 'second setpoint', table, control, 'secondSetpointC'),
      dialOn(part, PROPORTIONAL_BAND, table, control, 'proportionalBandK'),
      dialOn(part, 'integral time', table, control, 'integralS'),
      dialOn(part, 'derivative time', table, control, 'derivativeS'),
    ];
  }
  const table = pressureFiringRateParameters;
  const range = { max: 1.5 * s.vessel.safetyValvePa };
  return [
    dialOn(part, 'setpoint', table, control, 'setpointPa', range),
    dialOn(part, 'second setpoint', table, control, 'secondSetpointPa', range),
    dialOn(part, PROPORTIONAL_BAND, table, control, 'proportionalBandPa', range),
    dialOn(part, 'integral time', table, control, 'integralS'),
    dialOn(part, 'derivative time', table, control, 'derivativeS'),
  ];
}
