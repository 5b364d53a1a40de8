import { exactExp, exactPow } from '../../numeric/index.ts';
import { equivalenceOf, type FuelProperties } from '../furnace/index.ts';

/** The table runs from no fuel to this equivalence ratio. */
const LAST_EQUIVALENCE = 4;
const ROWS_PER_UNIT = 64;
const LAST_ROW = LAST_EQUIVALENCE * ROWS_PER_UNIT;

const EXPONENT = 0.15;
const WIDTH = 5.18;
const CENTRE = 1.075;
/** The fit does not end at the limits by itself: it is brought to zero over these widths. */
const LEAN_TAPER = 0.1;
const RICH_TAPER = 0.2;

/**
 * Laminar burning velocity over its highest value, by equivalence ratio.
 *
 * Equation: S/S_max = φ^0.15 · exp(−5.18 (φ − 1.075)²), scaled to 1 at its peak, brought to zero
 *   at the flammability limits.
 * Valid for: methane-like gas in cold air at one atmosphere; the fit itself for 0.7 < φ < 1.3.
 * Left out: preheat, vitiated air, pressure.
 * Source: Ö. L. Gülder, SAE paper 841000 (1984); constants from memory.
 */
export function burningVelocityShare(equivalence: number, fuel: FuelProperties): number {
  const lean = (equivalence - equivalenceOf(fuel.lowerLimit, fuel)) / LEAN_TAPER;
  const rich = (equivalenceOf(fuel.upperLimit, fuel) - equivalence) / RICH_TAPER;
  if (lean <= 0 || rich <= 0) return 0;
  const peak = shape(PEAK_EQUIVALENCE);
  return (shape(equivalence) / peak) * smooth(lean) * smooth(rich);
}

/** Where the derivative of the fit vanishes: 0.15/φ = 2·5.18·(φ − 1.075). */
const PEAK_EQUIVALENCE = 0.5 * (CENTRE + Math.sqrt(CENTRE * CENTRE + (2 * EXPONENT) / WIDTH));

export function burningVelocityTable(fuel: FuelProperties): Float64Array {
  const table = new Float64Array(LAST_ROW + 1);
  for (let i = 0; i <= LAST_ROW; i++) table[i] = burningVelocityShare(i / ROWS_PER_UNIT, fuel);
  return table;
}

export function readBurningVelocity(table: Float64Array, equivalence: number): number {
  const place = equivalence * ROWS_PER_UNIT;
  if (!(place > 0) || place >= LAST_ROW) return 0;
  const row = Math.floor(place);
  const low = table[row] as number;
  return low + ((table[row + 1] as number) - low) * (place - row);
}

function shape(equivalence: number): number {
  const away = equivalence - CENTRE;
  return exactPow(equivalence, EXPONENT) * exactExp(-WIDTH * away * away);
}

function smooth(share: number): number {
  return share >= 1 ? 1 : share * share * (3 - 2 * share);
}
