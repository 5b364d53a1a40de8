/** The dials on the devices of a plant: springs, switch points, servos, drive, amplifier, clock. */
import {
  closedProofParameters,
  flameRelayParameters,
  servoParameters,
  timeClockParameters,
  variableSpeedParameters,
} from '../field/index.ts';
import { regulatorParameters } from '../plant/gas/index.ts';
import { type Dial, dialOn } from './dial.ts';
import type { PartName } from './parts.ts';
import {
  type FaultSubject,
  pilotRegulatorOf,
  regulatorOf,
  servoOf,
  variableDriveOf,
} from './subject.ts';
import { highestGasPa, SWITCH_POINT, switchDials } from './switch-dials.ts';

export const OUTLET_PRESSURE = 'outlet pressure';
export const END_SWITCH_CAM = 'end switch cam';
export const CLOCK_AHEAD = 'hours ahead of the day';

export function fieldDials(s: FaultSubject): readonly Dial[] {
  return [
    ...regulatorDials(s),
    ...switchDials(s),
    ...proofDials(s),
    ...servoDials(s, 'damper', 'damper servo'),
    ...(servoOf(s, 'fuel valve') === servoOf(s, 'damper')
      ? []
      : servoDials(s, 'fuel valve', 'fuel valve servo')),
    ...driveDials(s),
    ...s.field.flameRelays
      .slice(0, 1)
      .flatMap((relay) => [
        dialOn('flame amplifier', 'threshold', flameRelayParameters, relay, 'thresholdMicroamps'),
        dialOn('flame amplifier', 'drop-out', flameRelayParameters, relay, 'dropOutMicroamps'),
      ]),
    ...s.field.timeClocks
      .slice(0, 1)
      .flatMap((clock) => [
        dialOn('time clock', 'on hour', timeClockParameters, clock, 'onHour'),
        dialOn('time clock', 'off hour', timeClockParameters, clock, 'offHour'),
        dialOn('time clock', CLOCK_AHEAD, timeClockParameters, clock, 'aheadHours'),
      ]),
  ];
}

function regulatorDials(s: FaultSubject): Dial[] {
  const range = { max: 2 * highestGasPa(s) };
  const main = regulatorOf(s);
  const pilot = pilotRegulatorOf(s);
  const dial = (part: PartName, regulator: NonNullable<typeof main>) =>
    dialOn(part, OUTLET_PRESSURE, regulatorParameters, regulator, 'setpointPa', range);
  return [
    ...(main === undefined ? [] : [dial('gas regulator', main)]),
    ...(pilot === undefined ? [] : [dial('pilot regulator', pilot)]),
  ];
}

function proofDials(s: FaultSubject): Dial[] {
  return s.field.closedProofs.map((proof) =>
    dialOn(
      proof.valve === 'upstream valve'
        ? 'upstream valve proof of closure'
        : 'downstream valve proof of closure',
      SWITCH_POINT,
      closedProofParameters,
      proof,
      'adjustment',
      { max: 5 },
    ),
  );
}

function servoDials(s: FaultSubject, moves: 'damper' | 'fuel valve', part: PartName): Dial[] {
  const servo = servoOf(s, moves);
  if (servo === undefined) return [];
  const dials = [dialOn(part, 'deadband', servoParameters, servo, 'deadbandDeg')];
  if (servo.endSwitch === 'fitted') {
    dials.push(dialOn(part, END_SWITCH_CAM, servoParameters, servo, 'endSwitchDeg'));
  }
  return dials;
}

function driveDials(s: FaultSubject): Dial[] {
  const drive = variableDriveOf(s);
  if (drive === undefined) return [];
  const max = 2 * drive.ratedCurrentA;
  return [
    dialOn('fan drive', 'current limit', variableSpeedParameters, drive, 'currentLimitA', { max }),
    dialOn('fan drive', 'run-up time', variableSpeedParameters, drive, 'rampUpS'),
    dialOn('fan drive', 'run-down time', variableSpeedParameters, drive, 'rampDownS'),
  ];
}
