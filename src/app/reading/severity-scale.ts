import { kindOfUnit, type Unit, type UnitSystem } from '../../quantity/index.ts';
import { quantityText } from '../../wording/index.ts';

/** Where a slider of a severity stands; a wide range is spread by ratio, so that its low end can be set too. */
export interface SeverityScale {
  /** @param place 0 to 1 */
  at(place: number): number;
  placeOf(severity: number): number;
}

const WIDE = 30;
/** Above this a share reads better as a multiple than in per cent. */
const MOST_PER_CENT = 1.5;

export function severityScale(low: number, high: number): SeverityScale {
  if (low > 0 && high > WIDE * low) {
    return {
      at: (place) => (place >= 1 ? high : low * (high / low) ** place),
      placeOf: (severity) => Math.log(severity / low) / Math.log(high / low),
    };
  }
  return {
    at: (place) => (place >= 1 ? high : low + (high - low) * place),
    placeOf: (severity) => (severity - low) / (high - low),
  };
}

/** A severity is a difference, so kelvins stay kelvins. */
export function severityText(unit: Unit, severity: number, units: UnitSystem): string {
  const plain = Number(severity.toPrecision(3));
  if (unit === '1') {
    return severity > MOST_PER_CENT ? `${plain} ×` : quantityText(severity, 'share', units);
  }
  const kind = kindOfUnit(unit);
  if (kind === 'number' || kind === 'temperature') return `${plain} ${unit}`;
  return quantityText(severity, kind, units);
}
