import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';

/**
 * An ultraviolet discharge tube (190–260 nm): it fires once per seen photon and must recover.
 *
 * Equation: r = sight · lens · age · (flame counts + spark counts) + runaway counts, each second;
 * I = Isat · r·τ / (1 + r·τ), τ the recovery time after a firing (non-paralysable counter,
 * G. F. Knoll, Radiation Detection).
 * A hot wall is invisible to it: a black body radiates 1e-9 W/(m²·sr) in this band at 1400 K.
 * Left out: cosmic background counts (under 1 a second), shutter, wear with use.
 */
export const uvSensorParameters = {
  id: name('name of the sensor'),
  kind: choice(['uv'], 'ultraviolet tube'),
  flameCountsPerS: number('1/s', 1, 5000, 'firings a second by the full main flame', 400),
  pilotShare: number('1', 0, 1, 'the pilot alone against the full main flame', 0.3),
  liftLoss: number('1', 0, 1, 'share of a lifted flame that leaves the sight line', 0.6),
  lineOfSight: number('1', 0, 1, 'share of the flame on the sight line', 1),
  lensTransmission: number('1', 0, 1, 'share the lens lets through', 1),
  tubeAge: number('1', 0, 1, 'sensitivity left; 1 new', 1),
  sparkCountsPerW: number('1/s', 0, 1000, 'firings a second for each watt of spark in sight', 8),
  sparkShare: number('1', 0, 1, 'share of the spark on the sight line', 0),
  runawayCountsPerS: number('1/s', 0, 5000, 'firings a second with no light at all', 0),
  recoveryS: number('s', 1e-5, 0.1, 'dead time after a firing', 0.002),
  saturationMicroamps: number('µA', 0.1, 100, 'signal of a tube that fires without pause', 12),
  responseS: number('s', 0, 5, 'smoothing of the signal', 0.1),
  noiseMicroamps: number('µA', 0, 50, 'scatter of the signal, one deviation', 0.05),
} as const satisfies ParameterTable;
export type UvSensorParameters = Values<typeof uvSensorParameters>;

/** The sensor as it stands: firings within one recovery time, for each thing it may see. */
export interface UvSight {
  readonly kind: 'uv';
  readonly pilot: number;
  readonly main: number;
  readonly liftLoss: number;
  readonly sparkPerW: number;
  readonly runaway: number;
  readonly saturationMicroamps: number;
}

export function aimUv(p: UvSensorParameters): UvSight {
  const sensitivity = p.lensTransmission * p.tubeAge * p.recoveryS;
  const main = sensitivity * p.lineOfSight * p.flameCountsPerS;
  return {
    kind: 'uv',
    pilot: main * p.pilotShare,
    main,
    liftLoss: p.liftLoss,
    sparkPerW: sensitivity * p.sparkShare * p.sparkCountsPerW,
    runaway: p.runawayCountsPerS * p.recoveryS,
    saturationMicroamps: p.saturationMicroamps,
  };
}

export function uvMicroamps(
  sight: UvSight,
  pilotIntensity: number,
  mainIntensity: number,
  mainLift: number,
  sparkW: number,
): number {
  const busy =
    sight.pilot * pilotIntensity +
    sight.main * mainIntensity * (1 - sight.liftLoss * mainLift) +
    sight.sparkPerW * sparkW +
    sight.runaway;
  return (sight.saturationMicroamps * busy) / (1 + busy);
}
