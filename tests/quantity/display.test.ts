import { expect, test } from 'vitest';
import {
  displayOf,
  formatQuantity,
  fromDisplay,
  QUANTITY_KINDS,
  type QuantityKind,
  toDisplay,
  UNIT_SYSTEMS,
  type UnitSystem,
} from '../../src/quantity/index.ts';

/** What is shown of a value in SI, by tables of units (NIST SP 811). */
const SHOWN: readonly (readonly [QuantityKind, number, UnitSystem, string])[] = [
  ['volume', 20, 'SI', '20.00 m³'],
  ['volume', 20, 'US', '706.3 ft³'],
  ['pipe volume', 0.012, 'SI', '12.0 dm³'],
  ['pipe volume', 0.012, 'US', '0.4238 ft³'],
  ['volume flow', 2.05, 'SI', '7380 m³/h'],
  ['volume flow', 2.05, 'US', '4344 ft³/min'],
  ['leak', 300, 'SI', '300 dm³/h'],
  ['leak', 300, 'US', '10.59 ft³/h'],
  ['voltage', 119.76, 'SI', '119.8 V'],
  ['voltage', 119.76, 'US', '119.8 V'],
  ['loop current', 0.0124, 'SI', '12.40 mA'],
  ['loop current', 0.0124, 'US', '12.40 mA'],
  ['resistance', 250, 'SI', '250 Ω'],
];

test.each(SHOWN)('%s of %d in %s is %s', (kind, value, system, shown) => {
  expect(formatQuantity(value, kind, system)).toBe(shown);
});

test.each(UNIT_SYSTEMS)('in %s every kind comes back from what it is shown as', (system) => {
  for (const kind of QUANTITY_KINDS) {
    const value = 0.37;
    // Rounding of one multiplication and one addition of a few hundred.
    expect(fromDisplay(toDisplay(value, kind, system), kind, system)).toBeCloseTo(value, 9);
    expect(displayOf(kind, system).digits).toBeGreaterThanOrEqual(0);
  }
});
