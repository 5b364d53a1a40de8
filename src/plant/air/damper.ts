import { createLinearTable, exactExp, exactLog, readTable } from '../../numeric/index.ts';
import { choice, number, type ParameterTable, type Values } from '../../quantity/index.ts';

export const damperParameters = {
  form: choice(
    ['opposed blades', 'round disc', 'square disc'],
    'kind of damper, which decides its loss by angle',
    'opposed blades',
  ),
  faceAreaM2: number('m²', 0.005, 10, 'area of the duct at the damper'),
  leakShare: number(
    '1',
    0,
    0.2,
    'air that passes the shut blades, as a share of that past the open ones',
    0.005,
  ),
} as const satisfies ParameterTable;
export type DamperParameters = Values<typeof damperParameters>;
export type DamperForm = DamperParameters['form'];

/** Blade angle is 0° shut to 90° open. */
export const DAMPER_STROKE_DEG = 90;
const TABLE_STEPS_PER_DEG = 4;
const TABLE_LAST = DAMPER_STROKE_DEG * TABLE_STEPS_PER_DEG;

const EXPONENT_AT_OPEN = -1.51;
const EXPONENT_SLOPE = 9.45;
const LOSS_OPEN = 0.45;
const LOSS_SHUT = 4.5e7;
const EXPONENTIAL_FROM = 15 / 90;
const EXPONENTIAL_TO = 55 / 90;

/** Loss coefficients of a disc turned out of the stream, by degrees from open. */
const DISC_DEG = [0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 90];
const ROUND_DISC_LOSS = [
  0.12,
  0.24,
  0.52,
  0.9,
  1.54,
  2.51,
  3.91,
  6.22,
  10.8,
  18.7,
  32.6,
  58.8,
  118,
  256,
  751,
  LOSS_SHUT,
];
const SQUARE_DISC_LOSS = [
  0.16,
  0.28,
  0.45,
  0.77,
  1.34,
  2.16,
  3.54,
  5.72,
  9.27,
  15.07,
  24.9,
  42.7,
  77.4,
  158,
  368,
  LOSS_SHUT,
];

/**
 * Loss coefficient of opposed blades at opening y = angle / 90°.
 *
 * Equation: ln K = −1.51 + 9.45 (1 − y) for 15/90 ≤ y ≤ 55/90; outside, the parabola in ln K
 *   that joins with the same value and slope and ends at K = 4.5e7 shut, 0.45 open.
 * Valid for: blades in a duct of their own size; ± 20 % against experiment.
 * Source: exponential form of ASHRAE RP-825, as coded in the open Modelica Buildings library.
 */
export function opposedBladeLoss(opening: number): number {
  const y = opening < 0 ? 0 : Math.min(opening, 1);
  const at = (z: number) => EXPONENT_AT_OPEN + EXPONENT_SLOPE * (1 - z);
  if (y < EXPONENTIAL_FROM) {
    const end = exactLog(LOSS_SHUT);
    return exactExp(parabola(y, EXPONENTIAL_FROM, end, at(EXPONENTIAL_FROM), -EXPONENT_SLOPE));
  }
  if (y > EXPONENTIAL_TO) {
    const span = 1 - EXPONENTIAL_TO;
    const end = exactLog(LOSS_OPEN);
    return exactExp(parabola(1 - y, span, end, at(EXPONENTIAL_TO), EXPONENT_SLOPE));
  }
  return exactExp(at(y));
}

/**
 * Loss coefficient of a single disc at opening y = angle / 90°: the classical table of Weisbach,
 * straight in ln K between its rows; above 70° from open carried on to a leak-tight shut disc.
 */
export function discLoss(opening: number, round: boolean): number {
  const y = opening < 0 ? 0 : Math.min(opening, 1);
  const table = createLinearTable(
    DISC_DEG,
    (round ? ROUND_DISC_LOSS : SQUARE_DISC_LOSS).map(exactLog),
  );
  return exactExp(readTable(table, DAMPER_STROKE_DEG * (1 - y)));
}

/**
 * Table of 1/√K by blade angle, so that the flow area it stands for is near straight between rows;
 * the leak past shut blades is added in parallel.
 */
export function damperFlowTable(p: DamperParameters): Float64Array {
  const table = new Float64Array(TABLE_LAST + 1);
  const leak = p.leakShare / Math.sqrt(lossOf(p.form, 1));
  for (let i = 0; i <= TABLE_LAST; i++) {
    table[i] = 1 / Math.sqrt(lossOf(p.form, i / TABLE_LAST)) + leak;
  }
  return table;
}

/** Reads the table of damperFlowTable; beyond the stops the nearest stop. */
export function readDamperFlow(table: Float64Array, bladeDeg: number): number {
  const place = bladeDeg * TABLE_STEPS_PER_DEG;
  if (!(place > 0)) return table[0] as number;
  if (place >= TABLE_LAST) return table[TABLE_LAST] as number;
  const row = Math.floor(place);
  const low = table[row] as number;
  return low + ((table[row + 1] as number) - low) * (place - row);
}

function lossOf(form: DamperForm, opening: number): number {
  return form === 'opposed blades'
    ? opposedBladeLoss(opening)
    : discLoss(opening, form === 'round disc');
}

/** The parabola with value `end` at 0, and `join` with slope `slope` at x1. */
function parabola(x: number, x1: number, end: number, join: number, slope: number): number {
  const bend = (slope * x1 - (join - end)) / (x1 * x1);
  return end + (slope - 2 * bend * x1) * x + bend * x * x;
}
