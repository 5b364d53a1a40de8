import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Action,
  createRun,
  type Run,
  type RunSetup,
  type TimedAction,
} from '../../src/engine/index.ts';
import { faultsOf, findFault, remediesOf } from '../../src/faults/index.ts';
import { soundSetup } from '../faults/exercises.ts';
import { library } from '../support/library.ts';
import { actFor, lastOf } from './hands.ts';

type Ramp = Extract<Action, { type: 'ramp-fault' }>;

const DROOPS = 'regulator droops';
const SUPPLY_LOW = 'supply pressure low';

function idle(plant = 'dairy', seed = 1): RunSetup {
  return { ...soundSetup(plant), actions: [], seed };
}

function severityOf(run: Run, fault: string): number {
  return run.standingFaults().find((one) => one.fault === fault)?.severity ?? 0;
}

function ramp(severity: number, overS: number, fault = DROOPS): Ramp {
  return { type: 'ramp-fault', fault, severity, overS };
}

function intermittent(fault: string, periodS: number, duty: number): Action {
  return { type: 'intermittent-fault', fault, severity: 0.6, periodS, duty };
}

/** After each second from now on. */
function bySeconds(run: Run, seconds: number, fault: string): number[] {
  return Array.from({ length: seconds }, () => {
    run.advanceTo(run.timeS() + 1);
    return severityOf(run, fault);
  });
}

/** When it came and went, s. */
function turnsOf(run: Run, fault: string) {
  return run
    .events()
    .flatMap((e) => (e.type === 'fault' && e.fault === fault ? [{ t: e.t, on: e.on }] : []));
}

describe('a fault that is ramped', () => {
  it('grows by equal steps from where it stands to where it was sent, and stays there', () => {
    const run = createRun(idle());
    run.act(ramp(0.4, 10));
    const grown = bySeconds(run, 10, DROOPS);
    // A step is taken with the first step of the engine after its second.
    run.advanceTo(run.timeS() + 0.01);
    expect(grown[0]).toBe(0);
    grown.slice(1).forEach((severity, k) => {
      expect(severity).toBeCloseTo(0.04 * (k + 1), 12);
    });
    expect(severityOf(run, DROOPS)).toBe(0.4);
    run.act(ramp(0.1, 3));
    run.advanceTo(run.timeS() + 1.5);
    expect(severityOf(run, DROOPS)).toBeCloseTo(0.3, 12);
    run.advanceTo(run.timeS() + 60);
    expect(severityOf(run, DROOPS)).toBe(0.1);
  });

  it('is told when it comes and when it is there, and not in between', () => {
    const run = createRun(idle());
    run.act(ramp(0.4, 10));
    run.advanceTo(15);
    run.act(ramp(0, 5));
    run.advanceTo(30);
    expect(turnsOf(run, DROOPS)).toEqual([
      { t: 1, on: true },
      { t: 10, on: true },
      { t: 20, on: false },
    ]);
    expect(run.standingFaults()).toEqual([]);
  });

  it.each(library.plants.map(({ id }) => id))(
    'of every kind at %s goes only one way, ends where it was sent, and is gone at 0',
    (id) => {
      const run = createRun(idle(id));
      for (const { id: fault, severity } of faultsOf(soundSetup(id).plant)) {
        run.act(ramp(severity.high, 3, fault));
        const up = bySeconds(run, 4, fault);
        expect(up, fault).toEqual([...up].sort((a, b) => a - b));
        expect(up.at(-1), fault).toBe(severity.high);
        run.act(ramp(0, 3, fault));
        const down = bySeconds(run, 4, fault);
        expect(down, fault).toEqual([...down].sort((a, b) => b - a));
        expect(down.at(-1), fault).toBe(0);
        expect(run.standingFaults(), fault).toEqual([]);
      }
    },
  );

  it('goes through decades by equal ratios, so that its small end is seen too', () => {
    const fault = 'regulator creeps';
    const { low, high } = findFault(fault)?.severity ?? { low: 0, high: 0 };
    const run = createRun(idle());
    run.act(ramp(high, 20, fault));
    run.advanceTo(10.01);
    expect(severityOf(run, fault)).toBeCloseTo(Math.sqrt(low * high), 6);
  });

  it('in less than a second is there when its time is over', () => {
    const run = createRun(idle());
    run.act(ramp(0.4, 0.5));
    run.advanceTo(0.5);
    expect(severityOf(run, DROOPS)).toBe(0);
    run.advanceTo(0.52);
    expect(severityOf(run, DROOPS)).toBe(0.4);
  });

  it('that is there or not comes at the end of its time', () => {
    const fault = 'control fuse blown';
    const run = createRun(idle());
    run.act(ramp(1, 5, fault));
    expect(bySeconds(run, 7, fault)).toEqual([0, 0, 0, 0, 0, 1, 1]);
  });

  it('moves the plant as the fault of that size would', () => {
    const start = soundSetup('dairy');
    const settled = (act: TimedAction) => {
      const run = createRun({ ...start, actions: [...start.actions, act] });
      run.advanceTo(290);
      return lastOf(run, 'gas.regulated.pressure');
    };
    const sound = settled({ t: 200, type: 'clear-fault', fault: DROOPS });
    const ramped = settled({ t: 200, ...ramp(0.3, 60) });
    const put = settled({ t: 200, type: 'insert-fault', fault: DROOPS, severity: 0.3 });
    expect(sound - put).toBeGreaterThan(100);
    expect(Math.abs(ramped - put)).toBeLessThan(0.05 * (sound - put));
  });
});

describe('a fault made intermittent', () => {
  it('stands for the share of the time it was given, over many seeds', () => {
    const duties = [0.2, 0.5, 0.8].map((duty) => {
      let stoodS = 0;
      let allS = 0;
      for (let seed = 1; seed <= 8; seed++) {
        const run = createRun(idle('dairy', seed));
        run.act(intermittent(SUPPLY_LOW, 4, duty));
        run.advanceTo(120);
        const turns = turnsOf(run, SUPPLY_LOW);
        turns.forEach(({ t, on }, k) => {
          const next = turns[k + 1];
          if (next === undefined) return;
          allS += next.t - t;
          if (on) stoodS += next.t - t;
        });
      }
      return { duty, share: stoodS / allS };
    });
    // Spells vary by half their mean: over some 240 of each the share is known to about 1 %.
    for (const { duty, share } of duties) expect(Math.abs(share - duty)).toBeLessThan(0.03);
  });

  it('comes and goes at the same moments whatever else happens, and at others by another seed', () => {
    const turns = (seed: number, ...others: readonly Action[]) => {
      const run = createRun(idle('dairy', seed));
      run.advanceTo(5);
      for (const other of others) run.act(other);
      run.act(intermittent(SUPPLY_LOW, 4, 0.5));
      run.advanceTo(60);
      return turnsOf(run, SUPPLY_LOW);
    };
    const alone = turns(1);
    expect(alone.length).toBeGreaterThan(20);
    const beside = turns(1, intermittent('low-gas switch contact open', 3, 0.3), ramp(0.4, 20));
    expect(beside).toEqual(alone);
    expect(turns(2)).not.toEqual(alone);
  });

  it('has another course when it is done at another time', () => {
    const spells = (atS: number) => {
      const run = createRun(idle());
      run.advanceTo(atS);
      run.act(intermittent(SUPPLY_LOW, 4, 0.5));
      run.advanceTo(atS + 40);
      return turnsOf(run, SUPPLY_LOW).map(({ t }) => Math.round((t - atS) * 100));
    };
    expect(spells(3)).not.toEqual(spells(5));
  });
});

describe('what was set going ends for good', () => {
  const driving: readonly (readonly [string, (fault: string, high: number) => Action])[] = [
    ['a ramp', (fault, severity) => ({ type: 'ramp-fault', fault, severity, overS: 300 })],
    [
      'coming and going',
      (fault, severity) => ({
        type: 'intermittent-fault',
        fault,
        severity,
        periodS: 2,
        duty: 0.5,
      }),
    ],
  ];

  it.each(driving)('%s, when it is taken out', (_words, drive) => {
    for (let t = 0; t < 6; t++) {
      const run = createRun(idle());
      run.act(drive(SUPPLY_LOW, 0.5));
      run.advanceTo(2 + t);
      run.act({ type: 'clear-fault', fault: SUPPLY_LOW });
      run.advanceTo(60);
      expect(turnsOf(run, SUPPLY_LOW).filter(({ t: at, on }) => on && at > 2 + t)).toEqual([]);
      expect(run.standingFaults()).toEqual([]);
    }
  });

  it.each(driving)('%s, when it is put in steady', (_words, drive) => {
    const run = createRun(idle());
    run.act(drive(SUPPLY_LOW, 0.5));
    run.advanceTo(3);
    run.act({ type: 'insert-fault', fault: SUPPLY_LOW, severity: 0.2 });
    run.advanceTo(4);
    expect(bySeconds(run, 30, SUPPLY_LOW).every((severity) => severity === 0.2)).toBe(true);
  });

  it.each(driving)(
    '%s, by every remedy of every fault, whether it stands just then or not',
    (_words, drive) => {
      const { plant } = soundSetup('school');
      const run = createRun(idle('school'));
      for (const fault of faultsOf(plant)) {
        for (const [k, remedy] of remediesOf(fault, plant).entries()) {
          run.act(drive(fault.id, fault.severity.high));
          run.advanceTo(run.timeS() + 1 + k / 2);
          run.act(actFor(run, remedy));
          const mendedS = run.timeS();
          run.advanceTo(mendedS + 4);
          const words = `${fault.id} by ${remedy.way} on ${remedy.part}`;
          const again = turnsOf(run, fault.id).filter(({ t, on }) => on && t > mendedS);
          if (remedy.way === 'remove jumper' && again.length > 0) {
            // A jumper that is not there just then cannot be taken off.
            expect(stoodBefore(run, fault.id, mendedS), words).toBe(false);
            run.act({ type: 'clear-fault', fault: fault.id });
            run.advanceTo(run.timeS() + 0.1);
            continue;
          }
          expect(again, words).toEqual([]);
          expect(run.standingFaults(), words).toEqual([]);
        }
      }
    },
  );
});

function stoodBefore(run: Run, fault: string, tS: number): boolean {
  return turnsOf(run, fault).findLast(({ t }) => t < tS)?.on ?? false;
}

describe('what stands around a plant', () => {
  const firing = (plant: string, act: Action, atS = 260, untilS = 330) => {
    const start = soundSetup(plant);
    const run = createRun({ ...start, actions: [...start.actions, { t: atS, ...act }] });
    run.advanceTo(untilS);
    return run;
  };
  const nothing: Action = { type: 'check', what: 'nothing', place: '', other: '' };

  it('is air that grows denser in the cold and carries more oxygen to the same fire', () => {
    const cold = firing('dairy', {
      type: 'set-weather',
      temperatureC: -10,
      weatherPa: 0,
      relativeHumidity: 0,
    });
    const warm = firing('dairy', nothing);
    expect(lastOf(cold, 'flue.oxygen') - lastOf(warm, 'flue.oxygen')).toBeGreaterThan(0.005);
  });

  it('is a main whose loss the low-gas switch feels, and whose return lets it start again', () => {
    const { plant } = soundSetup('dairy');
    const usualPa = plant.gasTrain.supply.pressureGaugePa;
    const run = createRun(soundSetup('dairy'));
    run.advanceTo(10);
    expect(lastOf(run, 'gas.supply.pressure')).toBeCloseTo(usualPa, 0);
    run.act({ type: 'set-gas-supply', share: 0.5 });
    run.advanceTo(20);
    expect(lastOf(run, 'gas.supply.pressure')).toBeCloseTo(usualPa / 2, 0);
    run.act({ type: 'set-gas-supply', share: 0 });
    run.advanceTo(300);
    expect(run.status().step).not.toBe('modulation');
    run.act({ type: 'set-gas-supply', share: 1 });
    run.advanceTo(302);
    expect(lastOf(run, 'gas.supply.pressure')).toBeCloseTo(usualPa, 0);
  });

  it('is mains at whose low volts nothing holds, and a fault of the same comes on top', () => {
    const run = createRun(soundSetup('dairy'));
    const volts = () => run.meter({ kind: 'volts', from: 'L', to: 'N' })?.value ?? 0;
    run.advanceTo(1);
    const usual = volts();
    run.act({ type: 'set-mains', share: 0.9 });
    run.advanceTo(2);
    expect(volts() / usual).toBeCloseTo(0.9, 3);
    run.act({ type: 'insert-fault', fault: 'mains volts low', severity: 0.2 });
    run.advanceTo(3);
    expect(volts() / usual).toBeCloseTo(0.7, 2);
    run.act({ type: 'clear-fault', fault: 'mains volts low' });
    run.act({ type: 'set-mains', share: 1 });
    run.advanceTo(4);
    expect(volts()).toBe(usual);
  });

  it('changes nothing when it is set to what it is', () => {
    const { plant } = soundSetup('dairy');
    const { temperatureC, weatherPa = 0, relativeHumidity = 0 } = plant.ambient;
    const same = firing('dairy', {
      type: 'set-weather',
      temperatureC,
      weatherPa,
      relativeHumidity,
    });
    const gas = firing('dairy', { type: 'set-gas-supply', share: 1 });
    const mains = firing('dairy', { type: 'set-mains', share: 1 });
    const left = firing('dairy', nothing);
    const last = left.frame(left.frameCount() - 1);
    for (const run of [same, gas, mains]) expect(run.frame(run.frameCount() - 1)).toEqual(last);
  });
});

describe('the log', () => {
  it('says everything: any acts, done live or brought along, at any moment, give the same run', () => {
    const moment = fc.integer({ min: 0, max: 3000 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(moment, anyInstructorAct()), { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 1, max: 5 }),
        (acts, seed) => {
          const setup = { ...soundSetup('dairy'), seed };
          const live = createRun(setup);
          for (const [at, action] of acts.sort((a, b) => a[0] - b[0])) {
            live.advanceTo(at / 100);
            live.act(action);
          }
          live.advanceTo(32);
          const again = createRun({ ...setup, actions: live.log() });
          again.advanceTo(32);
          expect(again.events()).toEqual(live.events());
          expect(again.hash()).toBe(live.hash());
        },
      ),
      { numRuns: 10, seed: 71 },
    );
  });
});

function anyInstructorAct(): fc.Arbitrary<Action> {
  const fault = fc.constantFrom(DROOPS, SUPPLY_LOW, 'regulator creeps', 'mains volts low');
  const share = fc.integer({ min: 0, max: 10 }).map((n) => n / 10);
  return fc.oneof(
    fc.tuple(fault, share, fc.constantFrom(0, 0.5, 1, 3, 7, 20)).map(([one, severity, overS]) => ({
      ...ramp(severity, overS, one),
    })),
    fc
      .tuple(fault, fc.constantFrom(0.1, 1, 5), share)
      .map(([one, periodS, duty]) => intermittent(one, periodS, duty)),
    fault.map((one): Action => ({ type: 'clear-fault', fault: one })),
    fc
      .tuple(fault, share)
      .map(([one, severity]): Action => ({ type: 'insert-fault', fault: one, severity })),
    share.map((part): Action => ({ type: 'set-gas-supply', share: part })),
    share.map((part): Action => ({ type: 'set-mains', share: part })),
    fc.constantFrom<Action>(
      { type: 'set-weather', temperatureC: 0, weatherPa: 1500, relativeHumidity: 0.5 },
      { type: 'repair', part: 'gas supply', way: 'report' },
    ),
  );
}
