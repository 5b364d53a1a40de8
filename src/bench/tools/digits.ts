import { displayOf, type QuantityKind, type UnitSystem } from '../../quantity/index.ts';
import type { ReadingLine } from './tool-types.ts';

/** Past its range a display says so instead of a number. */
export const OVER = 'OL';

/** Decimals that show a resolution: 0.01 → 2, 10 → 0. */
export function decimalsOf(resolution: number): number {
  let decimals = 0;
  for (let step = resolution; step < 0.999 && decimals < 6; step *= 10) decimals += 1;
  return decimals;
}

/** Digits at a resolution, without the sign of a zero. */
export function digitsOf(value: number, resolution: number): string {
  const text = (Math.round(value / resolution) * resolution).toFixed(decimalsOf(resolution));
  return /^-0(\.0+)?$/.test(text) ? text.slice(1) : text;
}

/** A number in SI as the tool's display shows it. */
export function displayed(
  value: number,
  kind: QuantityKind,
  resolution: number,
): Omit<ReadingLine, 'what'> {
  const { symbol, factor, offset } = displayOf(kind, 'SI');
  return {
    value,
    kind,
    unit: symbol,
    shown: digitsOf(value * factor + offset, resolution * factor),
  };
}

/** The same reading on a display that is set to other units: two more digits are of no use there. */
export function shownIn(
  line: Omit<ReadingLine, 'what'>,
  system: UnitSystem,
): { readonly shown: string; readonly unit: string } {
  const { kind, value, shown, unit } = line;
  if (system === 'SI' || kind === null || value === null) return { shown, unit };
  const si = displayOf(kind, 'SI');
  const other = displayOf(kind, system);
  if (other.symbol === si.symbol) return { shown, unit };
  const decimals = (shown.split('.')[1] ?? '').length;
  const finer = Math.abs(other.factor) >= Math.abs(si.factor) * 5 ? 1 : 0;
  const coarser = Math.abs(other.factor) * 5 <= Math.abs(si.factor) ? 1 : 0;
  const step = Math.max(0, decimals - finer + coarser);
  const text = (value * other.factor + other.offset).toFixed(step);
  return { shown: /^-0(\.0+)?$/.test(text) ? text.slice(1) : text, unit: other.symbol };
}
