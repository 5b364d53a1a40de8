import { number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type Curve, type Positions, readCurve } from './curve.ts';
import { TARGET_INDEX } from './terminals.ts';

/** The fixed points of a start; low fire is the first point of the curve. */
export const pointsParameters = {
  restDamperDeg: number('°', 0, 90, 'damper at rest', 0),
  restFuelValveDeg: number('°', 0, 90, 'fuel valve at rest', 0),
  purgeDamperDeg: number('°', 0, 90, 'damper at purge'),
  purgeFanRpm: number('rpm', 0, 10000, 'fan speed at purge'),
  purgeFuelValveDeg: number('°', 0, 90, 'fuel valve at purge', 0),
  lightOffDamperDeg: number('°', 0, 90, 'damper at light-off'),
  lightOffFanRpm: number('rpm', 0, 10000, 'fan speed at light-off'),
  lightOffFuelValveDeg: number('°', 0, 90, 'fuel valve at light-off'),
} as const satisfies ParameterTable;
export type PointsParameters = Values<typeof pointsParameters>;

export function resolveTarget(
  targetIndex: number,
  points: PointsParameters,
  curve: Curve,
  rate: number,
  into: Positions,
): void {
  switch (targetIndex) {
    case TARGET_INDEX.purge:
      into.damperDeg = points.purgeDamperDeg;
      into.fanRpm = points.purgeFanRpm;
      into.fuelValveDeg = points.purgeFuelValveDeg;
      break;
    case TARGET_INDEX['light-off']:
      into.damperDeg = points.lightOffDamperDeg;
      into.fanRpm = points.lightOffFanRpm;
      into.fuelValveDeg = points.lightOffFuelValveDeg;
      break;
    case TARGET_INDEX['low-fire']:
    case TARGET_INDEX.curve:
      readCurve(curve, rate, into);
      break;
    default:
      into.damperDeg = points.restDamperDeg;
      into.fanRpm = 0;
      into.fuelValveDeg = points.restFuelValveDeg;
  }
}
