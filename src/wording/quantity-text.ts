import { formatNumber, formatQuantity, type QuantityKind } from '../quantity/index.ts';

type System = 'SI' | 'US';

/** Digits and symbol as the page shows them, with a true minus. */
export function quantityText(value: number, kind: QuantityKind, units: System): string {
  return formatQuantity(value, kind, units).replace('-', MINUS);
}

/** The analyser's efficiency stands at zero while nothing burns: there is nothing to read. */
export function readingText(value: number, kind: QuantityKind, units: System, id: string): string {
  const isNothing = !Number.isFinite(value) || (id.startsWith('efficiency.') && value <= 0);
  return isNothing ? '–' : quantityText(value, kind, units);
}

export function numberText(value: number, kind: QuantityKind, units: System): string {
  return formatNumber(value, kind, units).replace('-', MINUS);
}
const MINUS = '\u2212';
