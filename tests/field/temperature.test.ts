import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  type TemperatureSwitchParameters,
  type ThermometerParameters,
  temperatureSwitchParameters,
  thermometerParameters,
} from '../../src/field/index.ts';
import {
  createTemperatureSwitch,
  prepareTemperatureSwitch,
  stepTemperatureSwitch,
} from '../../src/field/temperature-switch.ts';
import { createThermometer, stepThermometer } from '../../src/field/thermometer.ts';
import { createRandom } from '../../src/numeric/index.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.1;

describe('temperature switch', () => {
  const limit = (given: Partial<TemperatureSwitchParameters> = {}) =>
    createTemperatureSwitch(
      fillDefaults(temperatureSwitchParameters, {
        id: 'limit',
        senses: 'vessel temperature',
        feeds: 'highLimitMade',
        makesOn: 'fall',
        makeC: 85,
        breakC: 95,
        pocketLagS: 20,
        dwellS: 0.5,
        ...given,
      }),
      STEP_S,
      createContactBoard(),
    );
  const hold = (
    s: ReturnType<typeof limit>,
    waterC: number,
    seconds: number,
    reset = false,
  ): boolean => {
    for (let i = 0; i < Math.round(seconds / STEP_S); i++) {
      stepTemperatureSwitch(s, waterC, reset, STEP_S);
    }
    return s.snap.contact.made;
  };

  it('breaks at one temperature and makes again at the other', () => {
    const s = limit({ pocketLagS: 0 });
    expect(hold(s, 70, 5)).toBe(true);
    expect(hold(s, 94, 5)).toBe(true);
    expect(hold(s, 96, 5)).toBe(false);
    expect(hold(s, 86, 5)).toBe(false);
    expect(hold(s, 84, 5)).toBe(true);
  });

  it('stands from the first look where the water stands, without a warm-up of its own', () => {
    const s = limit({ pocketLagS: 3000 });
    hold(s, 100, 0.1);
    expect(s.sensedC).toBe(100);
  });

  it.each([
    // Response of a first-order lag by time over lag, control_loops.json; 1 % for the step of 0.1 s.
    [0.5, 0.393469],
    [1, 0.632121],
    [3, 0.950213],
  ])('follows a jump of the water as a first-order lag, after %d lags', (lags, response) => {
    const s = limit({ pocketLagS: 20 });
    hold(s, 0, 1);
    hold(s, 100, 20 * lags);
    expect(Math.abs(s.sensedC / 100 - response)).toBeLessThan(0.01);
  });

  it('trips late on fast water: the lag of the pocket, by its equation', () => {
    // A ramp of 1 K/s is felt 20 s late; 96 K at 96 s, so it breaks between 115 and 117 s.
    const s = limit({ pocketLagS: 20, dwellS: 0, breakC: 96, makeC: 90 });
    hold(s, 0, 1);
    let brokeAtS = 0;
    for (let i = 0; i < 2000 && brokeAtS === 0; i++) {
      stepTemperatureSwitch(s, i * STEP_S, false, STEP_S);
      if (!s.snap.contact.made) brokeAtS = i * STEP_S;
    }
    expect(brokeAtS).toBeGreaterThan(115);
    expect(brokeAtS).toBeLessThan(117);
  });

  it('does not trip on hot water once its bulb has slipped out of the pocket', () => {
    const s = limit({ pocketShare: 0.5, roomC: 20 });
    hold(s, 100, 200);
    expect(s.sensedC).toBeCloseTo(60, 6);
    expect(s.snap.contact.made).toBe(true);
  });

  it('trips early by as much as it has drifted down', () => {
    const s = limit({ driftK: -20, pocketLagS: 0 });
    expect(hold(s, 74, 5)).toBe(false);
    expect(hold(s, 64, 5)).toBe(true);
    expect(hold(s, 76, 5)).toBe(false);
  });

  it('shifts with the setpoint where it follows it, and only there', () => {
    const breaksAt75 = (followsSetpoint: boolean) => {
      const s = limit({ followsSetpoint, pocketLagS: 0 });
      prepareTemperatureSwitch(s, -20, STEP_S);
      hold(s, 40, 5);
      return !hold(s, 76, 5);
    };
    expect(breaksAt75(true)).toBe(true);
    expect(breaksAt75(false)).toBe(false);
  });

  it('with a manual reset stays out until it is pressed in cooled water', () => {
    const s = limit({ manualReset: true, pocketLagS: 0 });
    hold(s, 70, 5);
    hold(s, 99, 5);
    expect(hold(s, 99, 5, true)).toBe(false);
    expect(hold(s, 70, 5)).toBe(false);
    expect(hold(s, 70, 1, true)).toBe(true);
  });
});

describe('thermometer', () => {
  const read = (waterC: number, given: Partial<ThermometerParameters> = {}): number => {
    const t = createThermometer(
      fillDefaults(thermometerParameters, {
        id: 'water',
        senses: 'vessel temperature',
        highC: 120,
        ...given,
      }),
      createRandom(1, 'thermometer'),
      STEP_S,
    );
    for (let i = 0; i < 600; i++) stepThermometer(t, waterC);
    return t.readingC;
  };

  it('reads the water, held to its range', () => {
    expect(read(82)).toBeCloseTo(82, 9);
    expect(read(150)).toBe(120);
    expect(read(-10)).toBe(0);
  });

  it('reads too high by its offset', () => {
    expect(read(60, { offsetK: 12 })).toBeCloseTo(72, 9);
  });
});
