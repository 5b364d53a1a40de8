import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandRadiance, readBandRadiance } from '../../src/field/black-body-band.ts';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  createFlameRelay,
  prepareFlameRelay,
  stepFlameRelay,
} from '../../src/field/flame-relay.ts';
import {
  createFlameSensor,
  type FlameSensorParameters,
  prepareFlameSensor,
  refreshFlameSensor,
  stepFlameSensor,
} from '../../src/field/flame-sensor.ts';
import {
  createReadings,
  type FieldReadings,
  type FlameRelayParameters,
  flameRelayParameters,
  type IonisationSensorParameters,
  type IrSensorParameters,
  ionisationSensorParameters,
  irSensorParameters,
  type UvSensorParameters,
  uvSensorParameters,
} from '../../src/field/index.ts';
import { createRandom } from '../../src/numeric/index.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;
const MAIN = { mainIntensity: 1 };
const PILOT = { pilotIntensity: 1 };

const uv = (given: Partial<UvSensorParameters> = {}) =>
  fillDefaults(uvSensorParameters, { id: 'eye', kind: 'uv', noiseMicroamps: 0, ...given });
const ir = (given: Partial<IrSensorParameters> = {}) =>
  fillDefaults(irSensorParameters, { id: 'eye', kind: 'ir', noiseMicroamps: 0, ...given });
const rod = (given: Partial<IonisationSensorParameters> = {}) =>
  fillDefaults(ionisationSensorParameters, {
    id: 'rod',
    kind: 'ionisation',
    noiseMicroamps: 0,
    ...given,
  });

/** Signal after three seconds of the same view. */
function signal(p: FlameSensorParameters, view: Partial<FieldReadings> = {}, powered = true) {
  const sensor = createFlameSensor(p, createRandom(1, 'sensor'), STEP_S);
  const readings = { ...createReadings(), ...view };
  refreshFlameSensor(sensor, readings.furnaceK);
  for (let i = 0; i < 300; i++) stepFlameSensor(sensor, readings, powered);
  return sensor.microamps;
}

describe('flame rod', () => {
  it.each([
    // sensing_electrical.json, half-wave rectifier mean Vrms·√2/(π·R), own computation; 1e-3.
    [120, 5, 10.8038],
    [120, 10, 5.4019],
    [120, 20, 2.7009],
    [120, 50, 1.0804],
    [120, 100, 0.5402],
    [230, 5, 20.7073],
    [230, 10, 10.3536],
    [230, 20, 5.1768],
    [230, 50, 2.0707],
    [230, 100, 1.0354],
  ])('%d V over %d MΩ rectify to %d µA', (sourceVolts, megohm, microamps) => {
    const p = rod({ sourceVolts, sourceOhm: 0, flameOhm: megohm * 1e6 });
    expect(Math.abs(signal(p, MAIN) / microamps - 1)).toBeLessThan(1e-3);
  });

  it('reads nothing with no flame, however poor its insulation', () => {
    expect(signal(rod({ earthOhm: 1e5 }))).toBe(0);
  });

  it('reads less when fouled', () => {
    const clean = signal(rod(), MAIN);
    expect(signal(rod({ foulingOhm: 4e7 }), MAIN)).toBeCloseTo(clean / 3, 6);
  });

  it('loses a flame that lifts off it', () => {
    const seated = signal(rod(), MAIN);
    expect(signal(rod(), { ...MAIN, mainLift: 1 })).toBeLessThan(0.2 * seated);
  });
});

describe('black body between 1 and 3 µm', () => {
  it.each([
    // sensing_electrical.json, Planck's law, own computation, W/(m²·sr); 1e-3.
    [900, 2431.0],
    [1100, 8964.0],
    [1300, 23620.0],
    [1500, 50390.0],
    [1700, 93090.0],
    [1900, 154900.0],
    [2200, 288500.0],
  ])('at %d K radiates %d', (temperatureK, radiance) => {
    expect(Math.abs(bandRadiance(temperatureK) / radiance - 1)).toBeLessThan(1e-3);
    expect(
      Math.abs(readBandRadiance(temperatureK + 3) / bandRadiance(temperatureK + 3) - 1),
    ).toBeLessThan(1e-3);
  });
});

describe('infrared cell', () => {
  it('sees main flame and pilot, and hardly anything of a hot furnace it is aimed well in', () => {
    expect(signal(ir(), MAIN)).toBeCloseTo(5, 1);
    expect(signal(ir(), PILOT)).toBeGreaterThan(1.5);
    expect(signal(ir(), { furnaceK: 1500 })).toBeLessThan(0.1);
  });

  it('takes shimmering hot refractory in its sight for a flame', () => {
    const p = ir({ backgroundView: 1, shimmerShare: 0.3 });
    expect(signal(p, { furnaceK: 1500 })).toBeGreaterThan(1);
    expect(signal(p, { furnaceK: 400 })).toBeLessThan(0.01);
  });

  it('loses some of a flame to a bright background, and the rest to a dirty lens', () => {
    const p = ir({ backgroundView: 1, shimmerShare: 0 });
    expect(signal(p, { ...MAIN, furnaceK: 1700 })).toBeLessThan(signal(p, MAIN));
    expect(signal(ir({ lensTransmission: 0.15 }), MAIN)).toBeLessThan(1);
  });

  it('does not see a spark', () => {
    expect(signal(ir(), { sparkW: 100 })).toBe(signal(ir()));
  });
});

describe('ultraviolet tube', () => {
  it('sees main flame and pilot, and no furnace however hot', () => {
    expect(signal(uv(), MAIN)).toBeGreaterThan(4);
    expect(signal(uv(), PILOT)).toBeGreaterThan(1.5);
    expect(signal(uv(), { furnaceK: 1700 })).toBe(0);
  });

  it('saturates: twice the light is less than twice the signal, and never above its full one', () => {
    const once = signal(uv(), MAIN);
    const twice = signal(uv({ flameCountsPerS: 800 }), MAIN);
    expect(twice).toBeLessThan(2 * once);
    expect(signal(uv({ flameCountsPerS: 5000, recoveryS: 0.05 }), MAIN)).toBeLessThan(12);
  });

  it('sees a spark by the share of it on the sight line', () => {
    expect(signal(uv(), { sparkW: 60 })).toBe(0);
    expect(signal(uv({ sparkShare: 0.5 }), { sparkW: 60 })).toBeGreaterThan(1);
  });

  it('shows a flame where there is none once it runs away, lens covered or not', () => {
    const p = uv({ runawayCountsPerS: 300, lensTransmission: 0 });
    expect(signal(p)).toBeGreaterThan(4);
  });

  it('fades alike with a dirty lens, a poor sight line and an old tube', () => {
    const dirty = signal(uv({ lensTransmission: 0.2 }), MAIN);
    expect(dirty).toBeLessThan(2);
    expect(signal(uv({ lineOfSight: 0.2 }), MAIN)).toBeCloseTo(dirty, 9);
    expect(signal(uv({ tubeAge: 0.2 }), MAIN)).toBeCloseTo(dirty, 9);
  });
});

describe('every flame sensor', () => {
  const kinds: FlameSensorParameters[] = [uv(), ir(), rod()];

  it('reads more for more flame, less for more lift, and never below nothing', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...kinds), share, share, share, share, (p, a, b, lift, pilot) => {
        const low = { mainIntensity: Math.min(a, b), mainLift: lift, pilotIntensity: pilot };
        const less = signal(p, low);
        expect(less).toBeGreaterThanOrEqual(0);
        expect(signal(p, { ...low, mainIntensity: Math.max(a, b) })).toBeGreaterThanOrEqual(less);
        expect(signal(p, { ...low, mainLift: 1 })).toBeLessThanOrEqual(less + 1e-12);
      }),
      { seed: 31, numRuns: 60 },
    );
  });

  it.each(kinds.map((p) => [p.kind, p] as const))('%s is dead without supply', (_kind, p) => {
    expect(signal(p, MAIN, false)).toBe(0);
  });

  it.each([
    ['uv', uv(), { lensTransmission: 0.1 }],
    ['ir', ir(), { lensTransmission: 0.1 }],
    ['ionisation', rod(), { foulingOhm: 1e9 }],
  ])(
    '%s shows dirt that comes in mid-run, though the flame burns on unchanged',
    (_kind, p, dirt) => {
      const sensor = createFlameSensor(p, createRandom(1, 'sensor'), STEP_S);
      const readings = { ...createReadings(), ...MAIN };
      for (let i = 0; i < 300; i++) stepFlameSensor(sensor, readings, true);
      const clean = sensor.microamps;
      Object.assign(p, dirt);
      prepareFlameSensor(sensor, STEP_S);
      for (let i = 0; i < 300; i++) stepFlameSensor(sensor, readings, true);
      expect(sensor.microamps).toBeLessThan(0.3 * clean);
    },
  );

  it('scatters by its noise, alike for the same seed', () => {
    const walk = (seed: number) => {
      const sensor = createFlameSensor(
        ir({ noiseMicroamps: 0.3 }),
        createRandom(seed, 'sensor'),
        STEP_S,
      );
      const readings = { ...createReadings(), ...MAIN };
      return Array.from({ length: 200 }, () => {
        refreshFlameSensor(sensor, readings.furnaceK);
        for (let i = 0; i < 10; i++) stepFlameSensor(sensor, readings, true);
        return sensor.microamps;
      });
    };
    const first = walk(8);
    expect(walk(8)).toEqual(first);
    expect(walk(9)).not.toEqual(first);
    const late = first.slice(50);
    const mean = late.reduce((sum, value) => sum + value, 0) / late.length;
    const deviation = Math.sqrt(
      late.reduce((sum, value) => sum + (value - mean) ** 2, 0) / late.length,
    );
    // 150 draws of deviation 0.3: the sample's own within ±25 %.
    expect(deviation).toBeGreaterThan(0.22);
    expect(deviation).toBeLessThan(0.38);
  });
});

describe('flame relay', () => {
  const relay = (given: Partial<FlameRelayParameters> = {}) =>
    createFlameRelay(
      fillDefaults(flameRelayParameters, { id: 'relay', sensor: 'eye', ...given }),
      createContactBoard(),
    );
  const hold = (r: ReturnType<typeof relay>, microamps: number, seconds: number, fed = true) => {
    for (let i = 0; i < Math.round(seconds / STEP_S); i++) {
      stepFlameRelay(r, microamps, fed, STEP_S);
    }
    return r.contact.made;
  };

  it('makes after its pull-in time and breaks after its response time, to the step', () => {
    const r = relay();
    expect(hold(r, 3, 0.29)).toBe(false);
    expect(hold(r, 3, 0.01)).toBe(true);
    expect(hold(r, 0, 1.99)).toBe(true);
    expect(hold(r, 0, 0.01)).toBe(false);
  });

  it('begins its response time again with every moment of flame', () => {
    const r = relay();
    hold(r, 3, 1);
    for (let i = 0; i < 10; i++) {
      expect(hold(r, 0, 1.9)).toBe(true);
      expect(hold(r, 3, 0.01)).toBe(true);
    }
  });

  it('never chatters between its two levels', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.71, max: 0.99, noNaN: true }), { maxLength: 50 }),
        fc.boolean(),
        (walk, lit) => {
          const r = relay({ responseS: 0, pullInS: 0 });
          hold(r, lit ? 3 : 0, 0.1);
          for (const microamps of walk) expect(hold(r, microamps, 0.05)).toBe(lit);
        },
      ),
      { seed: 32 },
    );
  });

  it('with its threshold wrong misses a flame, or sees one in the dark', () => {
    const deaf = relay({ thresholdErrorMicroamps: 4 });
    const easy = relay({ thresholdErrorMicroamps: -2 });
    expect(hold(deaf, 3, 5)).toBe(false);
    expect(hold(easy, 0, 5)).toBe(true);
  });

  it('falls at once without supply', () => {
    const r = relay();
    hold(r, 3, 1);
    expect(hold(r, 3, 0.05, false)).toBe(false);
  });

  it('shows a flame for ever once welded', () => {
    const r = relay();
    r.parameters.contact = 'welded';
    prepareFlameRelay(r);
    expect(hold(r, 0, 60)).toBe(true);
  });
});
