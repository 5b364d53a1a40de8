import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { bandRadiance } from './black-body-band.ts';

/**
 * An infrared cell (1–3 µm) behind a filter that passes only the flicker of a flame, 10–40 Hz.
 *
 * Equation, with radiances relative to the full main flame: F = lens · sight · flame,
 * B = lens · view · L(T_furnace) / L(T_flame); I = I₁ · (1 + k) · (F + s·B) / (1 + k·(F + B)).
 * The steady background itself is filtered out, but hot gas in front of it makes a share s of it
 * shimmer in the band (a false flame), and all of it loads the cell (k), so a weak flame is lost.
 * L is the black-body radiance of the band; T_flame the black body as bright as the full flame
 * (a gas flame of emissivity 0.1–0.2 at 2000 K looks like 1200–1350 K).
 * Left out: the flicker spectrum, colour of soot, cell temperature.
 */
export const irSensorParameters = {
  id: name('name of the sensor'),
  kind: choice(['ir'], 'infrared flicker cell'),
  fullMicroamps: number('µA', 0.1, 100, 'signal of the full main flame in a cold furnace', 5),
  flameEquivalentK: number('K', 900, 2000, 'black body as bright as the full flame', 1300),
  pilotShare: number('1', 0, 1, 'the pilot alone against the full main flame', 0.4),
  liftLoss: number('1', 0, 1, 'share of a lifted flame that leaves the sight line', 0.6),
  lineOfSight: number('1', 0, 1, 'share of the flame on the sight line', 1),
  lensTransmission: number('1', 0, 1, 'share the lens lets through', 1),
  backgroundView: number('1', 0, 1, 'share of the sight that ends on hot wall', 0.1),
  shimmerShare: number('1', 0, 1, 'share of the background that flickers in the band', 0.02),
  loading: number('1', 0, 5, 'how much light loads the cell', 0.2),
  darkMicroamps: number('µA', 0, 50, 'signal with no light: a leaky cell, a swinging amplifier', 0),
  responseS: number('s', 0, 5, 'smoothing of the signal', 0.15),
  noiseMicroamps: number('µA', 0, 50, 'scatter of the signal, one deviation', 0.05),
} as const satisfies ParameterTable;
export type IrSensorParameters = Values<typeof irSensorParameters>;

/** The sensor as it stands. */
export interface IrSight {
  readonly kind: 'ir';
  readonly pilot: number;
  readonly main: number;
  readonly liftLoss: number;
  /** Background for each W/(m²·sr) of the furnace. */
  readonly backgroundPerRadiance: number;
  readonly shimmerShare: number;
  readonly loading: number;
  readonly fullMicroamps: number;
  readonly darkMicroamps: number;
}

export function aimIr(p: IrSensorParameters): IrSight {
  const main = p.lensTransmission * p.lineOfSight;
  return {
    kind: 'ir',
    pilot: main * p.pilotShare,
    main,
    liftLoss: p.liftLoss,
    backgroundPerRadiance:
      (p.lensTransmission * p.backgroundView) / bandRadiance(p.flameEquivalentK),
    shimmerShare: p.shimmerShare,
    loading: p.loading,
    fullMicroamps: p.fullMicroamps * (1 + p.loading),
    darkMicroamps: p.darkMicroamps,
  };
}

/** @param furnaceRadiance black-body radiance of the furnace in the band, W/(m²·sr) */
export function irMicroamps(
  sight: IrSight,
  pilotIntensity: number,
  mainIntensity: number,
  mainLift: number,
  furnaceRadiance: number,
): number {
  const flame =
    sight.pilot * pilotIntensity + sight.main * mainIntensity * (1 - sight.liftLoss * mainLift);
  const background = sight.backgroundPerRadiance * furnaceRadiance;
  return (
    sight.darkMicroamps +
    (sight.fullMicroamps * (flame + sight.shimmerShare * background)) /
      (1 + sight.loading * (flame + background))
  );
}
