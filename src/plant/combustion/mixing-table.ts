import { exactExp } from '../../numeric/index.ts';
import { AIR_OXYGEN, type BurnableGas, oxygenDemand } from './fuel-atoms.ts';
import { type BurntPocket, burnPocket, type FlameZone } from './local-flame.ts';

/** What a burner makes, averaged over its pockets, by mean equivalence ratio and spread. */
export interface MixingTable {
  /** Rows of mean equivalence ratio, columns of spread; unfinished share and NO (mol/kg of fuel) in turn. */
  readonly values: Float64Array;
  /** Of carbon monoxide and hydrogen left unfinished, the share that is carbon monoxide. */
  readonly monoxideShare: number;
}

export interface FlameProducts {
  unfinishedShare: number;
  nitricMolKg: number;
}

export const LEAST_SPREAD = 0.02;
export const WIDEST_SPREAD = 0.25;
const SPREAD_STEP = 0.0025;
const COLUMNS = 93;
const ROWS_PER_UNIT = 96;
const ROWS = 1.5 * ROWS_PER_UNIT + 1;
/** What burns in a leaner whole is a pilot, with a mixture of its own. */
const PILOT_BELOW = 0.3;

const POCKETS_PER_UNIT = 48;
const POCKETS = 3 * POCKETS_PER_UNIT + 1;
/** Soot and raw fuel would come in here; what is richer counts as this rich. */
const RICHEST_POCKET = 2;

const NODES = 41;
const NODE_REACH = 4;
const RICH_EXAMPLE = 1.1;

/**
 * Averages over the pockets of an imperfectly mixed flame.
 *
 * Equation: the local equivalence ratio is normally distributed about its mean φ with standard
 *   deviation s·φ, cut off at four of them (so s ≤ 0.25 keeps it positive), by mass of air;
 *   ȳ = ∫ y(φ') P(φ') dφ'. The unfinished share is what fails to burn although there is
 *   air for it in the whole: max(0, 1 − 1/φ) is taken off, as that fuel stays unburnt anyhow.
 * Valid for: 0 < φ < 1.5; interpolated in between, see the tests for the error.
 * Left out: pockets that mix again before they cool; skewness of the distribution.
 * Source: unmixedness approach, e.g. J. B. Heywood, J. Fay and L. Linden, AIAA paper 70-115 (1970).
 */
export function buildMixingTable(fuel: BurnableGas, zone: FlameZone): MixingTable {
  const unfinished = new Float64Array(POCKETS);
  const nitric = new Float64Array(POCKETS);
  let near: BurntPocket | undefined;
  for (let i = 0; i < POCKETS; i++) {
    const equivalence = i / POCKETS_PER_UNIT;
    if (equivalence <= RICHEST_POCKET) {
      near = burnPocket(fuel, equivalence, zone, near);
      const { flame } = near;
      unfinished[i] = equivalence * flame.unfinished;
      nitric[i] = flame.nitricOxide;
    } else {
      unfinished[i] = equivalence * (unfinished[i - 1] as number) * (POCKETS_PER_UNIT / (i - 1));
      nitric[i] = 0;
    }
  }
  const weights = normalWeights();
  const values = new Float64Array(ROWS * COLUMNS * 2);
  const airMolKg = oxygenDemand(fuel) / AIR_OXYGEN / fuel.molarMassKgMol;
  for (let row = 1; row < ROWS; row++) {
    const mean = row / ROWS_PER_UNIT;
    const short = Math.max(0, 1 - 1 / mean);
    for (let column = 0; column < COLUMNS; column++) {
      const spread = LEAST_SPREAD + column * SPREAD_STEP;
      const place = 2 * (row * COLUMNS + column);
      const share = average(unfinished, weights, mean, spread) / mean - short;
      values[place] = mean < PILOT_BELOW ? 0 : Math.max(0, share);
      values[place + 1] = (average(nitric, weights, mean, spread) / mean) * airMolKg;
    }
  }
  const { flame } = burnPocket(fuel, RICH_EXAMPLE, zone);
  return { values, monoxideShare: flame.monoxideShare };
}

/** Refills `into`. */
export function readMixingTable(
  table: MixingTable,
  equivalence: number,
  spread: number,
  into: FlameProducts,
): void {
  const { values } = table;
  let y = equivalence * ROWS_PER_UNIT;
  if (!(y > 0)) y = 0;
  let row = Math.floor(y);
  if (row > ROWS - 2) {
    row = ROWS - 2;
    y = ROWS - 1;
  }
  let x = (spread - LEAST_SPREAD) / SPREAD_STEP;
  if (!(x > 0)) x = 0;
  let column = Math.floor(x);
  if (column > COLUMNS - 2) {
    column = COLUMNS - 2;
    x = COLUMNS - 1;
  }
  const up = y - row;
  const right = x - column;
  const low = 2 * (row * COLUMNS + column);
  const high = low + 2 * COLUMNS;
  into.unfinishedShare = blend(values, low, high, right, up);
  into.nitricMolKg = blend(values, low + 1, high + 1, right, up);
}

function blend(values: Float64Array, low: number, high: number, right: number, up: number): number {
  const a = values[low] as number;
  const b = values[high] as number;
  const lower = a + right * ((values[low + 2] as number) - a);
  const upper = b + right * ((values[high + 2] as number) - b);
  return lower + up * (upper - lower);
}

/** Of a standard normal distribution, at NODES points from −4 to 4, summing to 1. */
function normalWeights(): Float64Array {
  const weights = new Float64Array(NODES);
  let sum = 0;
  for (let i = 0; i < NODES; i++) {
    const z = nodeAt(i);
    weights[i] = exactExp(-0.5 * z * z);
    sum += weights[i] as number;
  }
  for (let i = 0; i < NODES; i++) weights[i] = (weights[i] as number) / sum;
  return weights;
}

function nodeAt(i: number): number {
  return NODE_REACH * ((2 * i) / (NODES - 1) - 1);
}

function average(
  pockets: Float64Array,
  weights: Float64Array,
  mean: number,
  spread: number,
): number {
  let sum = 0;
  for (let i = 0; i < NODES; i++) {
    const place = mean * (1 + spread * nodeAt(i)) * POCKETS_PER_UNIT;
    const k = Math.min(POCKETS - 2, Math.floor(place));
    const low = pockets[k] as number;
    sum += (weights[i] as number) * (low + ((pockets[k + 1] as number) - low) * (place - k));
  }
  return sum;
}
