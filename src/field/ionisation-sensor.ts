import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';

/** √2/π, in microamps for each volt over an ohm. */
const HALF_WAVE_MICROAMPS = 450158.158078553;

/**
 * A flame rod: the flame conducts, and rectifies because the burner is so much larger than the rod.
 *
 * Equation: I_dc = V·√2 / (π·R), the mean of a half-wave rectified sine; R = R_flame/immersion + R_fouling.
 * A path to earth takes no direct current itself but loads the source to V = Vs · Re/(Re + Rs). Both
 * resistances stand in the wiring, Re at the sensor and Rs at the amplifier's input, and the network
 * divides there: so that a meter finds what takes the signal. Here V is that of the unloaded source.
 * Valid for: perfect rectification; R far above the source's resistance.
 * Left out: reverse conduction, capacitance of the cable.
 * Source: half-wave rectifier, any circuits text; magnitudes J. Lawton, F. Weinberg, Electrical
 * Aspects of Combustion.
 */
export const ionisationSensorParameters = {
  id: name('name of the sensor'),
  kind: choice(['ionisation'], 'flame rod'),
  sourceVolts: number('V', 24, 400, 'alternating volts on the rod, r.m.s.', 230),
  sourceOhm: number('Ω', 0, 1e8, "resistance of the amplifier's source", 1e6),
  flameOhm: number('Ω', 1e5, 1e9, 'resistance of the full flame, rod wholly immersed', 2e7),
  pilotImmersion: number('1', 0, 1, "share of the rod in the pilot's flame", 0.4),
  mainImmersion: number('1', 0, 1, 'share of the rod in the main flame', 1),
  liftLoss: number('1', 0, 1, 'share of that which a lifted flame leaves', 0.9),
  foulingOhm: number('Ω', 0, 1e10, 'film on the rod, in series', 0),
  earthOhm: number('Ω', 0, 1e12, 'path to earth over wet or cracked insulation', 1e10),
  responseS: number('s', 0, 5, 'smoothing of the signal', 0.1),
  noiseMicroamps: number('µA', 0, 50, 'scatter of the signal, one deviation', 0.05),
} as const satisfies ParameterTable;
export type IonisationSensorParameters = Values<typeof ionisationSensorParameters>;

export function rectifiedMicroamps(voltsRms: number, resistanceOhm: number): number {
  return (HALF_WAVE_MICROAMPS * voltsRms) / resistanceOhm;
}

/** The rod as it stands. */
export interface RodSight {
  readonly kind: 'ionisation';
  readonly pilot: number;
  readonly main: number;
  readonly liftLoss: number;
  readonly volts: number;
  readonly flameOhm: number;
  readonly foulingOhm: number;
}

export function aimRod(p: IonisationSensorParameters): RodSight {
  return {
    kind: 'ionisation',
    pilot: p.pilotImmersion,
    main: p.mainImmersion,
    liftLoss: p.liftLoss,
    volts: p.sourceVolts,
    flameOhm: p.flameOhm,
    foulingOhm: p.foulingOhm,
  };
}

const SMALLEST_IMMERSION = 1e-6;

export function ionisationMicroamps(
  rod: RodSight,
  pilotIntensity: number,
  mainIntensity: number,
  mainLift: number,
): number {
  const immersion =
    rod.pilot * pilotIntensity + rod.main * mainIntensity * (1 - rod.liftLoss * mainLift);
  if (immersion < SMALLEST_IMMERSION) return 0;
  return rectifiedMicroamps(rod.volts, rod.flameOhm / immersion + rod.foulingOhm);
}
