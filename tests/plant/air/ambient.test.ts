import { expect, it } from 'vitest';
import { createAmbient, prepareAmbient } from '../../../src/plant/air/index.ts';

// ISO 2533 pressure with the given temperature, dry air; to 1e-4 of each, the digits of the table.
it.each([
  [0, -20, 101325, 1.39436],
  [0, 15, 101325, 1.22499],
  [0, 45, 101325, 1.10948],
  [500, 30, 95460.8, 1.09699],
  [1000, 0, 89874.6, 1.14623],
  [1500, 15, 84556, 1.02226],
  [2000, -20, 79495.2, 1.09395],
  [3000, 45, 70108.5, 0.76767],
])(
  'at %d m and %d °C air has its standard pressure and density',
  (altitudeM, temperatureC, pa, density) => {
    const ambient = createAmbient({ altitudeM, temperatureC });
    expect(Math.abs(ambient.pressurePa / pa - 1)).toBeLessThan(1e-4);
    expect(Math.abs(ambient.densityKgM3 / density - 1)).toBeLessThan(1e-4);
  },
);

it('a change of season reaches the shared state', () => {
  const ambient = createAmbient({ altitudeM: 0, temperatureC: 30 });
  const summer = ambient.densityKgM3;
  ambient.parameters.temperatureC = -10;
  prepareAmbient(ambient);
  // Density goes with 1/T: 303.15 / 263.15.
  expect(ambient.densityKgM3 / summer).toBeCloseTo(303.15 / 263.15, 12);
});

it('damp air is lighter, and so is air of a low barometer', () => {
  const density = (weatherPa: number, relativeHumidity: number) =>
    createAmbient({ altitudeM: 0, temperatureC: 30, weatherPa, relativeHumidity }).densityKgM3;
  const dry = density(0, 0);
  // Saturated vapour of 30 °C is 4247 Pa (steam tables), and weighs 0.622 of the air it displaces.
  const vapour = 1 - (4247 / 101325) * (1 - 0.622);
  expect(Math.abs(density(0, 1) / dry / vapour - 1)).toBeLessThan(1e-4);
  expect(density(-2000, 0) / dry).toBeCloseTo(99325 / 101325, 12);
});
