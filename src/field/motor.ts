import { choice, number, type ParameterTable } from '../quantity/index.ts';

/** What a fan's induction motor, contactor and belt have in common, with or without a drive. */
export const motorParameters = {
  ratedTorqueNm: number('N·m', 0.1, 5000, 'rated torque of the motor'),
  ratedSlipRpm: number('rpm', 5, 200, 'below synchronous speed at rated torque', 40),
  poles: number('1', 2, 12, 'number of poles', 4),
  nominalHz: number('Hz', 40, 70, 'rated frequency', 60),
  ratedCurrentA: number('A', 0.1, 1000, 'current at rated torque'),
  magnetisingCurrentA: number('A', 0.05, 500, 'current at no load'),
  inertiaKgM2: number('kg·m²', 0.001, 500, 'rotor, belt and fan wheel at the motor shaft'),
  frictionNm: number('N·m', 0, 100, 'bearings and seals', 1),
  beltRatio: number('1', 0.2, 5, 'fan speed over motor speed with a tight belt', 1),
  beltSlip: number('1', 0, 1, 'share of the speed lost in the belt', 0),
  rotation: choice(
    ['forward', 'backward'],
    'which way two of the three phases make it turn',
    'forward',
  ),
  contactorCoil: choice(['sound', 'open'], 'coil of the contactor', 'sound'),
  contactorContacts: choice(['sound', 'burnt', 'welded'], 'contacts of the contactor', 'sound'),
  feedback: choice(['sound', 'lost'], 'speed pick-up', 'sound'),
  feedbackOn: choice(['fan shaft', 'motor shaft'], 'where the pick-up looks', 'fan shaft'),
  feedbackLagS: number('s', 0, 5, 'smoothing of the speed reading', 0.2),
} as const satisfies ParameterTable;

export const RAD_S_PER_RPM = 0.10471975511965977;
export const TWO_PI = 6.283185307179586;

/**
 * One step of the rotor's speed, rad/s: J·dω/dt = T_motor(ω) − T_load − T_friction.
 *
 * The motor is linearised about the old speed and solved implicitly, so a stiff motor on a light
 * rotor stays stable at any step; a fan's load is soft against it and is taken at the old speed.
 *
 * @param gain `rotorGain` of the motor's slope
 */
export function stepRotor(speedRadS: number, surplusNm: number, gain: number): number {
  return Math.max(0, speedRadS + surplusNm * gain);
}

/** @param slope −dT/dω of the motor, N·m·s, ≥ 0 where it resists a change of speed */
export function rotorGain(slope: number, inertiaKgM2: number, stepS: number): number {
  return stepS / (inertiaKgM2 + stepS * slope);
}
