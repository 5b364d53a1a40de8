import { describe, expect, it } from 'vitest';
import type { StepName } from '../../machines/burner/index.ts';
import { createRun, type Run, type RunSetup } from '../../src/engine/index.ts';
import { library, shippedSetup } from '../support/library.ts';

const HOUR_S = 3600;
const ZERO_C = 273.15;

/** The steps of each start in their order, and when a healthy one is released, s. */
const STARTS: readonly (readonly [string, string, readonly StepName[], number, number])[] = [
  [
    'laundry',
    'laundry-healthy-start',
    [
      'standby',
      'at-rest check',
      'drive to purge',
      'purge',
      'drive to light-off',
      'spark check',
      'pilot trial',
      'pilot proving',
      'main trial',
      'main proving',
      'low-fire hold',
      'modulation',
    ],
    120,
    200,
  ],
  [
    'school',
    'school-healthy-start',
    [
      'standby',
      'at-rest check',
      'valve proving: empty',
      'valve proving: hold empty',
      'valve proving: fill',
      'valve proving: hold full',
      'drive to purge',
      'purge',
      'drive to light-off',
      'spark check',
      'main trial',
      'main proving',
      'low-fire hold',
      'modulation',
    ],
    80,
    150,
  ],
];

describe.each(STARTS)('a healthy start of the %s', (_plant, scenario, steps, early, late) => {
  const run = createRun(shippedSetup(scenario));
  run.advanceTo(300);
  const entered = run.events().flatMap((event) => (event.type === 'step' ? [event] : []));
  const enteredS = (step: string) => entered.find((one) => one.step === step)?.t ?? Number.NaN;

  it('passes its steps once, in order, and is released in good time', () => {
    expect(entered.map(({ step }) => step)).toEqual(steps);
    expect(enteredS('modulation')).toBeGreaterThan(early);
    expect(enteredS('modulation')).toBeLessThan(late);
  });

  it('has swept the furnace clean before any spark, with the air changes of its profile', () => {
    expect(read(run, 'furnace.combustible', enteredS('spark check'))).toBeLessThan(1e-3);
    const counted = read(run, 'furnace.air-changes', enteredS('drive to light-off') - 0.2);
    expect(counted).toBeGreaterThanOrEqual(run.setup.profile.timings.requiredAirChanges);
  });

  it('makes no puff worth the name: under a twentieth of what the casing stands', () => {
    expect(read(run, 'puff.index', 300)).toBeLessThan(0.05);
  });

  it('keeps its flame signal at least twice above what its relay needs, pilot apart', () => {
    const relay = run.setup.plant.field.flameRelays[0];
    for (let t = enteredS('main proving') + 1; t < 300; t += 5) {
      expect(read(run, 'flame.signal', t)).toBeGreaterThan(2 * (relay?.thresholdMicroamps ?? 0));
    }
  });

  it('goes through with twenty other seeds just the same', () => {
    for (let seed = 100; seed < 120; seed++) {
      const other = createRun(shippedSetup(scenario, { seed }), { keep: 'hash only' });
      other.advanceTo(late + 20);
      expect({ seed, step: other.status().step }).toEqual({ seed, step: 'modulation' });
    }
  }, 120_000);

  it('goes through by each of the practice profiles', () => {
    for (const profile of library.profiles) {
      const other = createRun({ ...shippedSetup(scenario), profile }, { keep: 'hash only' });
      other.advanceTo(420);
      expect([profile.id, other.status().step]).toEqual([profile.id, 'modulation']);
    }
  }, 60_000);
});

describe('every shade of the firing range', () => {
  it.each(['laundry-healthy-start', 'school-healthy-start'])(
    '%s burns with a seventh to a quarter more air than just enough, and next to no carbon monoxide',
    (scenario) => {
      const run = createRun(shippedSetup(scenario));
      run.advanceTo(180);
      for (const rate of [1, 0.85, 0.7, 0.55, 0.4]) {
        run.act({ type: 'firing', mode: 'hand', rate });
        run.advanceTo(run.timeS() + 90);
        const oxygen = read(run, 'flue.oxygen', run.timeS());
        // Dry oxygen of methane-like gas: x = 0.2095·e·9.5/(8.55 + 9.5·e) at an excess e of air.
        const excess = (8.55 * oxygen) / (9.5 * (0.2095 - oxygen));
        expect({ rate, ok: excess > 1 / 7 && excess < 1 / 4 }).toEqual({ rate, ok: true });
        expect(read(run, 'flue.carbon-monoxide', run.timeS())).toBeLessThan(100e-6);
      }
      expect(run.status().step).toBe('modulation');
    },
    60_000,
  );
});

describe('an hour of service with the load going up and down', () => {
  it('keeps the laundry within 0.4 bar of its setpoint, and its water within reach', () => {
    const run = underLoad('laundry-healthy-start', { vesselGaugePa: 680_000 }, [0.5, 0.8, 0.4]);
    const [pressure, level] = watch(run, 1200, [
      (t) => Math.abs(read(run, 'vessel.pressure', t) - 700_000),
      (t) => Math.abs(read(run, 'vessel.level', t)),
    ]);
    expect(pressure).toBeLessThan(40_000);
    // The first cut-off stands at −80 mm.
    expect(level).toBeLessThan(0.075);
    expect(run.status()).toMatchObject({ step: 'modulation', lockout: null });
  }, 60_000);

  it('keeps the school within 3 K of its setpoint', () => {
    const run = underLoad(
      'school-healthy-start',
      { waterTemperatureK: 80 + ZERO_C },
      [0.6, 0.8, 0.5],
    );
    const [worst] = watch(run, 1200, [
      (t) => Math.abs(read(run, 'vessel.temperature', t) - (82 + ZERO_C)),
    ]);
    expect(worst).toBeLessThan(3);
    expect(run.status()).toMatchObject({ step: 'modulation', lockout: null });
  }, 60_000);
});

describe('the way down', () => {
  it('of the laundry opens the vent between its valves and leaves no pressure there', () => {
    const run = stopped('laundry-healthy-start');
    expect(run.status().step).toBe('standby');
    expect(read(run, 'gas.vent-valve.opening', run.timeS())).toBe(1);
    expect(read(run, 'gas.vent-valve.opening', 250)).toBe(0);
    expect(Math.abs(read(run, 'gas.interspace.pressure', run.timeS()))).toBeLessThan(5);
  });

  it.each(['laundry-healthy-start', 'school-healthy-start'])(
    'of the %s leaves no gas in the furnace',
    (scenario) => {
      const run = stopped(scenario);
      expect(run.status()).toMatchObject({ step: 'standby', lockout: null });
      expect(read(run, 'furnace.combustible', run.timeS())).toBeLessThan(1e-2);
    },
  );
});

describe('the second setpoint', () => {
  it('comes by the clock in the evening, and the burner waits until the water is below it', () => {
    const setup = shippedSetup('school-healthy-start');
    const run = createRun({
      ...setup,
      initial: { ...setup.initial, waterTemperatureK: 81 + ZERO_C, load: 0.5, hour: 19.85 },
    });
    run.advanceTo(HOUR_S / 10);
    expect(run.status().step).toBe('standby');
    const evening = createRun({
      ...setup,
      initial: { ...setup.initial, waterTemperatureK: 70 + ZERO_C, load: 0.5, hour: 19.85 },
    });
    evening.advanceTo(500);
    expect(evening.status().step).toBe('modulation');
    evening.advanceTo(900);
    expect(evening.status().step).toBe('standby');
  }, 60_000);

  it('and the building’s own contact stop the school without a fault', () => {
    const run = createRun(shippedSetup('school-healthy-start'));
    run.advanceTo(200);
    run.act({ type: 'remote-enable', on: false });
    run.advanceTo(260);
    expect(run.status()).toMatchObject({ step: 'standby', lockout: null });
    run.act({ type: 'remote-enable', on: true });
    run.advanceTo(460);
    expect(run.status().step).toBe('modulation');
  });
});

describe('from cold', () => {
  it('the school is held at low fire until its water is warm, and then released', () => {
    const setup = shippedSetup('school-healthy-start');
    const run = createRun(
      { ...setup, initial: { ...setup.initial, waterTemperatureK: 15 + ZERO_C, load: 0 } },
      { keep: 'hash only' },
    );
    run.advanceTo(900);
    expect(run.status().step).toBe('low-fire hold');
    run.advanceTo(HOUR_S);
    expect(run.status().step).toBe('modulation');
  }, 60_000);
});

function underLoad(
  scenario: string,
  initial: Partial<RunSetup['initial']>,
  loads: readonly number[],
): Run {
  const setup = shippedSetup(scenario);
  const [first = 0, ...others] = loads;
  return createRun({
    ...setup,
    initial: { ...setup.initial, ...initial, load: first },
    load: others.map((load, i) => ({ atS: 1500 + 900 * i, load })),
  });
}

/** Runs on to the full hour; the worst of each figure from a moment on. */
function watch(run: Run, fromS: number, figures: readonly ((t: number) => number)[]): number[] {
  const worst = figures.map(() => 0);
  for (let t = fromS; t <= HOUR_S; t += 5) {
    run.advanceTo(t);
    figures.forEach((figure, i) => {
      worst[i] = Math.max(worst[i] as number, figure(t));
    });
  }
  return worst;
}

function stopped(scenario: string): Run {
  const run = createRun(shippedSetup(scenario));
  run.advanceTo(260);
  run.act({ type: 'call-for-heat', on: false });
  run.advanceTo(340);
  return run;
}

function read(run: Run, channel: string, t: number): number {
  const index = run.channels.findIndex(({ id }) => id === channel);
  if (index < 0) throw new Error(`no channel ${channel}`);
  return run.frame(Math.round(t / run.frameS))[index] as number;
}
