import { expect, it } from 'vitest';
import { combustionTables } from '../../../src/plant/combustion/index.ts';
import { METHANE, monoxideLoss, stackLoss } from '../../../src/plant/furnace/index.ts';
import { STACK_LOSSES } from './stack-losses.ts';

const tables = combustionTables(
  METHANE,
  { intakeK: 293.15, pressurePa: 101325, heatLossShare: 0.045, timeS: 0.05 },
  0.0289647,
);

it.each(STACK_LOSSES)(
  'loses up the stack with $air times the air at $flueC °C what the exact sum says',
  (row) => {
    const sample = {
      oxygen: row.oxygen / 100,
      carbonMonoxide: 0,
      temperatureK: row.flueC + 273.15,
      intakeK: row.intakeC + 273.15,
    };
    const loss = stackLoss(sample, METHANE, tables);
    expect(Math.abs((100 * loss) / row.net - 1)).toBeLessThan(1e-3);
    const gross = 1 - ((1 - loss) * METHANE.lowerHeatingJKg) / METHANE.higherHeatingJKg;
    expect(Math.abs((100 * gross) / row.gross - 1)).toBeLessThan(1e-3);
  },
);

it('counts carbon monoxide by the heat it still holds', () => {
  // 1000 ppm in 8.5484 mol of dry gas without excess air: 8.5484e-3 mol of 282.98 kJ over 802.55 kJ.
  const sample = { oxygen: 0, carbonMonoxide: 1e-3, temperatureK: 450, intakeK: 293 };
  expect(monoxideLoss(sample, METHANE) / ((8.5484e-3 * 282.98) / 802.55)).toBeCloseTo(1, 4);
});
