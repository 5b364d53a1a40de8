import { REGION_4 } from './if97-coefficients.ts';

const [N1, N2, N3, N4, N5, N6, N7, N8, N9, N10] = REGION_4;
const PA_PER_MPA = 1e6;

/**
 * Pressure of boiling water, Pa.
 *
 * Equation: θ = T + n₉/(T − n₁₀); p/MPa = [2C/(−B + √(B² − 4AC))]⁴ with A, B, C quadratic in θ.
 * Valid for: 273.15 to 647.096 K.
 * Source: IAPWS R7-97(2012), equation 30.
 */
export function saturationPressure(kelvin: number): number {
  const theta = kelvin + N9 / (kelvin - N10);
  const a = theta * theta + N1 * theta + N2;
  const b = N3 * theta * theta + N4 * theta + N5;
  const c = N6 * theta * theta + N7 * theta + N8;
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  return PA_PER_MPA * root * root * root * root;
}

/** Its change with temperature, Pa/K: the implicit derivative of Aβ² + Bβ + C = 0, p = β⁴. */
export function saturationPressureSlope(kelvin: number): number {
  const apart = kelvin - N10;
  const theta = kelvin + N9 / apart;
  const thetaSlope = 1 - N9 / (apart * apart);
  const beta = Math.sqrt(Math.sqrt(saturationPressure(kelvin) / PA_PER_MPA));
  const byTheta =
    beta * beta * (2 * theta + N1) + beta * (2 * N3 * theta + N4) + 2 * N6 * theta + N7;
  const byBeta =
    2 * beta * (theta * theta + N1 * theta + N2) + N3 * theta * theta + N4 * theta + N5;
  return PA_PER_MPA * 4 * beta * beta * beta * ((-byTheta / byBeta) * thetaSlope);
}

/**
 * Temperature at which water boils, K.
 *
 * Equation: the same quadratic solved for θ, then for T.
 * Valid for: 611.213 Pa to 22.064 MPa.
 * Source: IAPWS R7-97(2012), equation 31.
 */
export function saturationTemperature(pascal: number): number {
  const beta = Math.sqrt(Math.sqrt(pascal / PA_PER_MPA));
  const e = beta * beta + N3 * beta + N6;
  const f = N1 * beta * beta + N4 * beta + N7;
  const g = N2 * beta * beta + N5 * beta + N8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = N10 + d;
  return 0.5 * (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d)));
}
