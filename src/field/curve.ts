import { type CurveTable, createLinearTable, readTable } from '../numeric/index.ts';
import { type ParameterTable, series, type Values } from '../quantity/index.ts';

/** The commissioned positions of air, speed and fuel by firing rate; straight lines between points. */
export const curveParameters = {
  rates: series('1', 0, 1, 2, 20, 'firing rates, rising; the first is low fire'),
  damperDeg: series('°', 0, 90, 2, 20, 'damper at each rate'),
  fanRpm: series('rpm', 0, 10000, 2, 20, 'fan speed at each rate'),
  fuelValveDeg: series('°', 0, 90, 2, 20, 'fuel valve at each rate'),
} as const satisfies ParameterTable;
export type CurveParameters = Values<typeof curveParameters>;

export interface Curve {
  readonly parameters: CurveParameters;
  lowFireRate: number;
  fullRate: number;
  damper: CurveTable;
  fan: CurveTable;
  fuelValve: CurveTable;
}

/** Where air, speed and fuel are to stand. */
export interface Positions {
  damperDeg: number;
  fanRpm: number;
  fuelValveDeg: number;
}

export function createCurve(parameters: CurveParameters): Curve {
  const { rates, damperDeg, fanRpm, fuelValveDeg } = parameters;
  const curve: Curve = {
    parameters,
    lowFireRate: 0,
    fullRate: 1,
    damper: createLinearTable(rates, damperDeg),
    fan: createLinearTable(rates, fanRpm),
    fuelValve: createLinearTable(rates, fuelValveDeg),
  };
  prepareCurve(curve);
  return curve;
}

export function prepareCurve(curve: Curve): void {
  const { rates, damperDeg, fanRpm, fuelValveDeg } = curve.parameters;
  curve.lowFireRate = rates[0] as number;
  curve.fullRate = rates[rates.length - 1] as number;
  curve.damper = createLinearTable(rates, damperDeg);
  curve.fan = createLinearTable(rates, fanRpm);
  curve.fuelValve = createLinearTable(rates, fuelValveDeg);
}

export function readCurve(curve: Curve, rate: number, into: Positions): void {
  into.damperDeg = readTable(curve.damper, rate);
  into.fanRpm = readTable(curve.fan, rate);
  into.fuelValveDeg = readTable(curve.fuelValve, rate);
}
