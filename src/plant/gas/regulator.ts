import type { RegulatorParameters } from './edge-parameters.ts';

/** Rounding of the corners of stroke against pressure (stops, friction), in strokes. */
const CORNER_STROKE = 0.02;

/**
 * Spring-loaded pressure regulators, one entry each.
 *
 * Equations (gauge pressures):
 * - the diaphragm feels the outlet through two lags: τ·s₁' = p − s₁, τ·s₂' = s₁ − s₂,
 *   τ = lag / (1 − blocked share of the breather)
 * - force balance: y aims at (setpoint − s₂) / droop; friction holds y while it is within
 *   ±friction / droop of that; y is held between seat pressed tight and full stroke
 * - y moves no faster than the air behind the diaphragm leaves by the breather:
 *   |y'| ≤ (1 − blocked share) / (time of a whole stroke)
 * - area: in proportion to y, with a soft seat: a parabola from y = −lock-up / droop (pressed tight)
 *   to y = +lock-up / droop; plus the seat leak
 * - a moving diaphragm pushes gas into the outlet: ρ·V_d·y'. This is what damps a regulator that
 *   feeds a shut pipe. A blocked breather undoes it: two long lags and a slow stroke swing round the
 *   setpoint at part load, and let the outlet climb when a valve shuts faster than the stroke.
 * So droop, lock-up, creep, stickiness and hunting come from the numbers.
 * Valid for: direct-acting regulators at low and medium pressure.
 * Left out: inlet pressure on an unbalanced plug, spring mass, change of ρ in the displaced volume,
 * oscillations faster than the step, which the implicit step damps.
 * Source: textbook force balance; on displaced volume, lags and stability N. Zafer, G. R. Luecke,
 * Applied Mathematical Modelling 32 (2008) 61.
 */
export interface RegulatorBank {
  readonly count: number;
  readonly edge: Int32Array;
  readonly setPa: Float64Array;
  readonly perDroop: Float64Array;
  /** Friction and tightest seat, in strokes. */
  readonly friction: Float64Array;
  readonly lowest: Float64Array;
  readonly lagS: Float64Array;
  /** Fastest stroke, 1/s: the air behind the diaphragm must leave by the breather. */
  readonly speed: Float64Array;
  /** kg pushed into the outlet by a whole opening stroke. */
  readonly displacedKg: Float64Array;
  readonly fullConductance: Float64Array;
  readonly leakConductance: Float64Array;
  /** State: the two lagged pressures, Pa gauge, and the stroke. */
  readonly sensed1: Float64Array;
  readonly sensed2: Float64Array;
  readonly stroke: Float64Array;
  /** State: the stroke whose displaced gas is in the balance. */
  readonly booked: Float64Array;
  /** Change of the four state columns in one step of the last solve, side by side. */
  readonly pace: Float64Array;
  /** Of the step size: share of each lag passed, farthest move of the stroke. */
  readonly share: Float64Array;
  readonly farthest: Float64Array;
  /** Of the solve: stroke, its fall per Pa of outlet pressure, rise of conductance per stroke. */
  readonly aim: Float64Array;
  readonly slope: Float64Array;
  readonly gain: Float64Array;
}

export function createRegulatorBank(edges: readonly number[]): RegulatorBank {
  const column = () => new Float64Array(edges.length);
  return {
    count: edges.length,
    edge: Int32Array.from(edges),
    setPa: column(),
    perDroop: column(),
    friction: column(),
    lowest: column(),
    lagS: column(),
    speed: column(),
    displacedKg: column(),
    fullConductance: column(),
    leakConductance: column(),
    sensed1: column(),
    sensed2: column(),
    stroke: column(),
    booked: column(),
    pace: new Float64Array(4 * edges.length),
    share: column(),
    farthest: column(),
    aim: column(),
    slope: column(),
    gain: column(),
  };
}

export function prepareRegulator(
  bank: RegulatorBank,
  k: number,
  p: RegulatorParameters,
  fullConductance: number,
  leakConductance: number,
  outletDensityKgM3: number,
): void {
  bank.setPa[k] = heldPa(p);
  keepPressed(bank, k, 1 / p.droopPa);
  bank.perDroop[k] = 1 / p.droopPa;
  bank.friction[k] = p.frictionPa / p.droopPa;
  bank.lowest[k] = -p.lockUpPa / p.droopPa;
  const open = 1 - p.breatherBlockedFraction;
  bank.lagS[k] = p.lagS / open;
  bank.speed[k] = open / p.strokeS;
  bank.displacedKg[k] = (outletDensityKgM3 * p.diaphragmVolumeDm3) / 1000;
  bank.fullConductance[k] = fullConductance;
  bank.leakConductance[k] = leakConductance;
}

/** What the spring holds, which a tired one does below its setting. */
export function heldPa({ setpointPa, springShare }: RegulatorParameters): number {
  return Math.max(LEAST_PA, setpointPa * springShare);
}
/** The diaphragm's own weight. */
const LEAST_PA = 100;

/** Below its seat a stroke is a force, told in droops: another droop must not move the diaphragm. */
function keepPressed(bank: RegulatorBank, k: number, perDroop: number): void {
  const stroke = bank.stroke[k] as number;
  if (stroke >= 0) return;
  const pressed = stroke * (perDroop / (bank.perDroop[k] as number));
  bank.booked[k] = (bank.booked[k] as number) + pressed - stroke;
  bank.stroke[k] = pressed;
}

/** Puts regulator k at rest with its outlet at a pressure. */
export function settleRegulator(bank: RegulatorBank, k: number, outletGaugePa: number): void {
  bank.sensed1[k] = outletGaugePa;
  bank.sensed2[k] = outletGaugePa;
  const aim = ((bank.setPa[k] as number) - outletGaugePa) * (bank.perDroop[k] as number);
  const stroke = Math.min(1, Math.max(bank.lowest[k] as number, aim));
  bank.stroke[k] = stroke;
  bank.booked[k] = stroke;
}

export function setRegulatorStep(bank: RegulatorBank, stepS: number): void {
  for (let k = 0; k < bank.count; k++) {
    bank.share[k] = stepS / ((bank.lagS[k] as number) + stepS);
    bank.farthest[k] = (bank.speed[k] as number) * stepS;
  }
}

/** Aims regulator k at an outlet pressure at the end of the step: stroke and slopes. */
export function aimRegulator(bank: RegulatorBank, k: number, outletGaugePa: number): void {
  const share = bank.share[k] as number;
  const s1 = bank.sensed1[k] as number;
  const s2 = bank.sensed2[k] as number;
  const sensed = s2 + share * (s1 - s2) + share * share * (outletGaugePa - s1);
  const perDroop = bank.perDroop[k] as number;
  const friction = bank.friction[k] as number;
  const lowest = bank.lowest[k] as number;
  const before = bank.stroke[k] as number;
  const away = ((bank.setPa[k] as number) - sensed) * perDroop - before;
  const move = rampOver(away - friction, CORNER_STROKE) - rampOver(-away - friction, CORNER_STROKE);
  const farthest = bank.farthest[k] as number;
  const corner = Math.min(CORNER_STROKE, 0.5 * farthest);
  const free =
    before + move - rampOver(move - farthest, corner) + rampOver(-move - farthest, corner);
  const moving =
    (rampSlope(away - friction, CORNER_STROKE) + rampSlope(-away - friction, CORNER_STROKE)) *
    (1 - rampSlope(move - farthest, corner) - rampSlope(-move - farthest, corner));
  const stroke =
    lowest + rampOver(free - lowest, CORNER_STROKE) - rampOver(free - 1, CORNER_STROKE);
  const within = rampSlope(free - lowest, CORNER_STROKE) - rampSlope(free - 1, CORNER_STROKE);
  bank.aim[k] = stroke;
  bank.slope[k] = share * share * perDroop * moving * within;
  bank.gain[k] = (bank.fullConductance[k] as number) * rampSlope(stroke, -lowest);
}

/**
 * Takes a solve over, after `aimRegulator` at its final pressure: goes a share of the way to its
 * end, and keeps the pace for the steps that follow. `bookedStroke` as the balance had it.
 */
export function advanceRegulator(
  bank: RegulatorBank,
  k: number,
  outletGaugePa: number,
  bookedStroke: number,
  stepShare: number,
): void {
  const share = bank.share[k] as number;
  const s1 = bank.sensed1[k] as number;
  const s2 = bank.sensed2[k] as number;
  const toS1 = share * (outletGaugePa - s1);
  const toS2 = share * (s1 + toS1 - s2);
  const { stroke, booked, pace } = bank;
  const before = stroke[k] as number;
  const bookedBefore = booked[k] as number;
  const s1Pace = toS1 * stepShare;
  const s2Pace = toS2 * stepShare;
  const strokePace = ((bank.aim[k] as number) - before) * stepShare;
  const bookedPace = (bookedStroke - bookedBefore) * stepShare;
  pace[4 * k] = s1Pace;
  pace[4 * k + 1] = s2Pace;
  pace[4 * k + 2] = strokePace;
  pace[4 * k + 3] = bookedPace;
  bank.sensed1[k] = s1 + s1Pace;
  bank.sensed2[k] = s2 + s2Pace;
  stroke[k] = before + strokePace;
  booked[k] = bookedBefore + bookedPace;
}

/** One more step of every regulator at the pace of the last solve. */
export function coastRegulators(bank: RegulatorBank): void {
  const { count, sensed1, sensed2, stroke, booked, pace } = bank;
  for (let k = 0; k < count; k++) {
    sensed1[k] = (sensed1[k] as number) + (pace[4 * k] as number);
    sensed2[k] = (sensed2[k] as number) + (pace[4 * k + 1] as number);
    stroke[k] = (stroke[k] as number) + (pace[4 * k + 2] as number);
    booked[k] = (booked[k] as number) + (pace[4 * k + 3] as number);
  }
}

/** Conductance as aimed, or as the stroke was before the step. */
export function regulatorConductance(bank: RegulatorBank, k: number, before: boolean): number {
  const stroke = (before ? bank.stroke[k] : bank.aim[k]) as number;
  return (
    (bank.leakConductance[k] as number) +
    (bank.fullConductance[k] as number) * rampOver(stroke, -(bank.lowest[k] as number))
  );
}

/** Share of the full area that is open. */
export function regulatorOpening(bank: RegulatorBank, k: number): number {
  return rampOver(bank.stroke[k] as number, -(bank.lowest[k] as number));
}

/** 0 below −width, x above width, a parabola between: a corner that Newton's method can take. */
function rampOver(x: number, width: number): number {
  if (x <= -width) return 0;
  if (x >= width) return x;
  return ((x + width) * (x + width)) / (4 * width);
}

function rampSlope(x: number, width: number): number {
  if (x <= -width) return 0;
  if (x >= width) return 1;
  return (x + width) / (2 * width);
}
