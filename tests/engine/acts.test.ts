import { describe, expect, it } from 'vitest';
import { createRun, type FaultOnset, type Run, type RunSetup } from '../../src/engine/index.ts';
import {
  FAULT_FAMILIES,
  FAULTS,
  faultsOf,
  findFault,
  type Remedy,
  remediesOf,
} from '../../src/faults/index.ts';
import { soundSetup, withFault } from '../faults/exercises.ts';
import { library } from '../support/library.ts';
import { actFor, lastOf, pressReset, sheetValue } from './hands.ts';

const SERVED = 300;

function standing(run: Run): string[] {
  return run.standingFaults().map(({ fault }) => fault);
}

function runWith(plant: string, fault: string, onset: FaultOnset = { kind: 'start' }): Run {
  const { severity } = findFault(fault) ?? { severity: { high: 1 } };
  return createRun({
    ...soundSetup(plant),
    faults: [{ fault, severity: severity.high, onset }],
  });
}

/** A cock before an empty train is opened a crack first: thrown open, it locks the regulator up high. */
function mend(run: Run, remedy: Remedy): void {
  if (remedy.way === 'turn-cock') {
    run.act({ type: 'turn-cock', cock: 'cock', opening: 0.05 });
    run.advanceTo(run.timeS() + 5);
  }
  run.act(actFor(run, remedy));
}

/** Lets it start, or try to; then mends it, resets, and lets it start again. */
function startAgain(run: Run, act: () => void): void {
  run.advanceTo(SERVED);
  act();
  run.advanceTo(SERVED + 9);
  run.act({ type: 'reset-limits', pressed: true });
  run.advanceTo(SERVED + 10);
  run.act({ type: 'reset-limits', pressed: false });
  pressReset(run);
  for (let t = SERVED + 20; t < 3 * SERVED && run.status().step !== 'modulation'; t += 10) {
    run.advanceTo(t);
  }
}

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (id, plant) => {
  it('every remedy of every fault, done as an act, ends that fault and leaves every dial as it was', () => {
    const run = createRun(soundSetup(id));
    const step = () => run.advanceTo(run.timeS() + 0.01);
    const sheet = run.settings();
    for (const fault of faultsOf(plant)) {
      for (const remedy of remediesOf(fault, plant)) {
        run.act({ type: 'insert-fault', fault: fault.id, severity: fault.severity.high });
        step();
        expect(standing(run), fault.id).toEqual([fault.id]);
        run.act(actFor(run, remedy));
        step();
        expect(standing(run), `${fault.id} by ${remedy.way} on ${remedy.part}`).toEqual([]);
        expect(run.settings(), `${fault.id} by ${remedy.way}`).toEqual(sheet);
      }
    }
  });

  it('work on a sound part changes nothing but the log', () => {
    const idle = createRun(soundSetup(id));
    idle.advanceTo(60);
    const worked = createRun(soundSetup(id));
    worked.advanceTo(30);
    for (const { part, ways } of worked.parts()) {
      for (const way of ways) worked.act({ type: 'repair', part, way });
    }
    worked.advanceTo(60);
    expect(worked.frame(600)).toEqual(idle.frame(600));
  });
});

describe('a plant that is mended starts', () => {
  const first = FAULT_FAMILIES.map((family) => {
    const fault = faultsOf(soundSetup('dairy').plant).find((one) => one.family === family);
    if (fault === undefined) throw new Error(`no fault of ${family}`);
    return [family, fault] as const;
  });

  it.each(first)('%s, by the first remedy', (_family, fault) => {
    const run = runWith('dairy', fault.id);
    const [remedy] = remediesOf(fault, run.setup.plant);
    if (remedy === undefined) throw new Error('no remedy');
    startAgain(run, () => mend(run, remedy));
    expect(standing(run)).toEqual([]);
    expect(run.status().step).toBe('modulation');
  });

  it('and one that is not does not', () => {
    const run = runWith('dairy', 'ignition transformer dead');
    startAgain(run, () => run.act({ type: 'repair', part: 'ignition lead', way: 'replace' }));
    expect(standing(run)).toEqual(['ignition transformer dead']);
    expect(run.status().step).not.toBe('modulation');
  });
});

describe('a mended thing stays mended', () => {
  const replace = { type: 'repair', part: 'ignition transformer', way: 'replace' } as const;
  const cases: readonly (readonly [string, FaultOnset])[] = [
    ['that comes and goes', { kind: 'intermittent', fromS: 2, periodS: 4, duty: 0.5 }],
    ['that would have come later', { kind: 'time', atS: 40 }],
    ['that comes with a step', { kind: 'step', step: 'purge' }],
  ];

  it.each(cases)('one %s never stands again', (_words, onset) => {
    const left = runWith('dairy', 'ignition transformer dead', onset);
    left.advanceTo(150);
    expect(left.events().some((e) => e.type === 'fault' && e.on && e.t > 10)).toBe(true);
    const run = runWith('dairy', 'ignition transformer dead', onset);
    run.advanceTo(10);
    run.act(replace);
    run.advanceTo(250);
    expect(run.events().filter((e) => e.type === 'fault' && e.on && e.t > 10)).toEqual([]);
    expect(run.status().step).toBe('modulation');
  });
});

describe('a lock', () => {
  it('holds the isolator off, and only off', () => {
    const run = createRun(soundSetup('dairy'));
    run.act({ type: 'lock', point: 'isolator', on: true });
    run.advanceTo(1);
    expect(run.bench().locks).toEqual([]);
    run.act({ type: 'supply', on: false });
    run.act({ type: 'lock', point: 'isolator', on: true });
    run.advanceTo(2);
    run.act({ type: 'supply', on: true });
    run.advanceTo(3);
    expect(run.bench()).toMatchObject({ locks: ['isolator'], supplyOn: false });
    run.act({ type: 'lock', point: 'isolator', on: false });
    run.act({ type: 'supply', on: true });
    run.advanceTo(4);
    expect(run.bench()).toMatchObject({ locks: [], supplyOn: true });
  });

  it('holds a cock where it stands, whoever left it there', () => {
    const run = runWith('dairy', 'manual cock left part shut');
    run.act({ type: 'lock', point: 'cock', on: true });
    run.act({ type: 'lock', point: 'no such cock', on: true });
    run.advanceTo(1);
    const [before] = run.bench().cocks;
    expect(before?.opening).toBeLessThan(0.5);
    run.act({ type: 'turn-cock', cock: 'cock', opening: 1 });
    run.advanceTo(2);
    expect(run.bench().locks).toEqual(['cock']);
    expect(run.bench().cocks).toEqual([before]);
    expect(standing(run)).toEqual(['manual cock left part shut']);
    run.act({ type: 'lock', point: 'cock', on: false });
    run.act({ type: 'turn-cock', cock: 'cock', opening: 1 });
    run.advanceTo(3);
    expect(run.bench().cocks).toEqual([{ id: 'cock', opening: 1 }]);
    expect(standing(run)).toEqual([]);
  });
});

describe('a jumper', () => {
  const across = { from: 'low-gas:1', to: 'low-gas:2' };
  const wires = { from: 'L1', to: '24' };
  const volts = { kind: 'volts', from: '24', to: 'N' } as const;

  it('makes a contact count for nothing while it is on, and stands on the bench', () => {
    const run = createRun(soundSetup('dairy'));
    run.act({ type: 'turn-cock', cock: 'cock', opening: 0 });
    run.act({ type: 'insert-fault', fault: 'low-gas switch contact open', severity: 1 });
    run.advanceTo(2);
    expect(run.meter(volts)?.value).toBeLessThan(60);
    run.act({ type: 'jumper', ...across, on: true });
    run.advanceTo(3);
    expect(run.bench().jumpers).toEqual([across]);
    expect(run.meter(volts)?.value).toBeGreaterThan(110);
    run.act({ type: 'jumper', from: '24', to: 'L1', on: false });
    run.advanceTo(4);
    expect(run.bench().jumpers).toEqual([]);
    expect(run.meter(volts)?.value).toBeLessThan(60);
  });

  it('goes across one contact and nowhere else', () => {
    const run = createRun(soundSetup('dairy'));
    run.act({ type: 'jumper', from: 'L1', to: 'N', on: true });
    run.act({ type: 'jumper', from: 'L', to: '24', on: true });
    run.act({ type: 'jumper', from: '54', to: 'N', on: true });
    run.act({ type: 'jumper', from: 'nowhere', to: '24', on: true });
    run.advanceTo(1);
    expect(run.bench().jumpers).toEqual([]);
  });

  it('that others left is no secret to a hand that takes it off', () => {
    const run = runWith('dairy', 'jumper left across the low-gas switch');
    run.advanceTo(1);
    expect(run.bench().jumpers).toEqual([]);
    run.act({ type: 'jumper', from: 'L1', to: '25', on: false });
    run.advanceTo(2);
    expect(standing(run)).toHaveLength(1);
    run.act({ type: 'jumper', ...wires, on: false });
    run.advanceTo(3);
    expect(standing(run)).toEqual([]);
  });
});

describe('a stroke by hand', () => {
  it('turns pointer, feedback and blade together on a sound damper, and lets go again', () => {
    const run = createRun(soundSetup('dairy'));
    run.advanceTo(1);
    run.act({ type: 'stroke', servo: 'damper', deg: 40 });
    run.advanceTo(3);
    expect(run.bench().strokes).toEqual([{ servo: 'damper', deg: 40 }]);
    expect(lastOf(run, 'damper.feedback')).toBeCloseTo(40, 6);
    expect(lastOf(run, 'damper.blade')).toBeCloseTo(40, 0);
    expect(run.look('damper servo pointer')?.values).toEqual({ pointerDeg: 40 });
    run.act({ type: 'stroke', servo: 'damper', deg: -1 });
    run.advanceTo(240);
    expect(run.bench().strokes).toEqual([]);
    expect(run.status().step).toBe('modulation');
  });

  it('moves blade and feedback apart where the blade has slipped on its shaft', () => {
    const run = runWith('dairy', 'damper shaft slipped');
    run.act({ type: 'stroke', servo: 'damper', deg: 90 });
    run.advanceTo(4);
    const { high } = FAULTS.find(({ id }) => id === 'damper shaft slipped')?.severity ?? {
      high: 0,
    };
    expect(lastOf(run, 'damper.feedback')).toBeCloseTo(90, 6);
    // Backlash of 0.2° holds the shaft a tenth of a degree behind.
    expect(lastOf(run, 'damper.blade')).toBeCloseTo(90 - high - 0.1, 6);
    expect(run.look('damper blade')?.values).toEqual({ bladeDeg: Math.round(90 - high) });
  });

  it('feels the stop of a jammed damper', () => {
    const run = runWith('dairy', 'damper jammed short of purge');
    run.act({ type: 'stroke', servo: 'damper', deg: 90 });
    run.advanceTo(4);
    expect(lastOf(run, 'damper.feedback')).toBeLessThan(15);
  });

  it('holds a damper at purge against the controller, and the start waits for light-off', () => {
    const run = createRun(soundSetup('dairy'));
    run.advanceTo(60);
    run.act({ type: 'stroke', servo: 'damper', deg: 90 });
    run.advanceTo(160);
    expect(run.status().step).toBe('drive to light-off');
    run.act({ type: 'stroke', servo: 'damper', deg: -1 });
    run.advanceTo(165);
    expect(lastOf(run, 'damper.feedback')).toBeLessThan(89);
  });

  it('of a servo that is not there changes nothing', () => {
    const run = createRun(soundSetup('school'));
    run.act({ type: 'stroke', servo: 'no such servo', deg: 50 });
    run.advanceTo(1);
    expect(run.bench().strokes).toEqual([]);
  });
});

describe('a dial', () => {
  const low = (run: Run) =>
    run
      .settings()
      .find(({ part, setting }) => part === 'low-gas switch' && setting === 'switch point');

  it('stands where it was set, through faults that come and go, and moves the switch', () => {
    const run = createRun(soundSetup('dairy'));
    const before = low(run)?.value ?? 0;
    const set = before + 500;
    run.act({ type: 'adjust', part: 'low-gas switch', setting: 'switch point', value: set });
    run.act({ type: 'insert-fault', fault: 'low-gas switch drifted up', severity: 0.2 });
    run.act({ type: 'clear-fault', fault: 'low-gas switch drifted up' });
    run.advanceTo(1);
    expect(low(run)?.value).toBeCloseTo(set, 6);
    run.act({ type: 'adjust', part: 'low-gas switch', setting: 'switch point', value: 15_000 });
    run.advanceTo(SERVED);
    expect(run.status().step).not.toBe('modulation');
  });

  it('shows what someone has set, not what has worn behind it', () => {
    const worn = runWith('dairy', 'regulator droops');
    const misset = runWith('dairy', 'gas regulator set too high');
    worn.advanceTo(1);
    misset.advanceTo(1);
    const sheet = sheetValue(worn, 'gas regulator', 'outlet pressure');
    const outlet = (run: Run) =>
      run
        .settings()
        .find(({ part, setting }) => part === 'gas regulator' && setting === 'outlet pressure')
        ?.value;
    expect(outlet(worn)).toBe(sheet);
    expect(outlet(misset)).toBeGreaterThan(1.5 * sheet);
  });
});

describe('a fuse', () => {
  /** A coil that has shorted melts the fuse before it when the valve is driven. */
  const shorted: RunSetup = withFault(
    soundSetup('dairy'),
    findFault('upstream valve coil shorted') ?? (undefined as never),
    1,
  );

  it('renewed without mending the short melts again; after mending it holds', () => {
    const run = createRun(shorted);
    run.advanceTo(SERVED);
    const broken = Object.entries(run.look('fuses')?.values ?? {}).filter(
      ([, whole]) => whole === 0,
    );
    expect(broken).toHaveLength(1);
    const part = broken[0]?.[0] === 'safety-fuse' ? 'safety fuse' : 'control fuse';
    run.act({ type: 'repair', part, way: 'replace' });
    run.advanceTo(SERVED + 1);
    expect(run.look('fuses')?.words).toEqual(['look.fuse.whole']);
    pressReset(run);
    run.advanceTo(2 * SERVED);
    expect(run.look('fuses')?.words).toEqual(['look.fuse.broken']);
    run.act({ type: 'repair', part: 'upstream valve coil', way: 'replace' });
    run.act({ type: 'repair', part, way: 'replace' });
    run.advanceTo(2 * SERVED + 1);
    pressReset(run);
    run.advanceTo(3 * SERVED);
    expect(run.look('fuses')?.words).toEqual(['look.fuse.whole']);
    expect(run.status().step).toBe('modulation');
  });
});

describe('the bench', () => {
  it('names each gas part that was opened, with its time, and no other', () => {
    const run = createRun(soundSetup('dairy'));
    run.advanceTo(5);
    run.act({ type: 'repair', part: 'strainer', way: 'clean' });
    run.act({ type: 'repair', part: 'ignition electrode', way: 'clean' });
    run.advanceTo(9);
    run.act({ type: 'repair', part: 'pilot orifice', way: 'replace' });
    run.advanceTo(10);
    expect(run.bench().opened).toEqual([
      { part: 'strainer', t: 5 },
      { part: 'pilot orifice', t: 9 },
    ]);
  });

  it('a check touches nothing, and stands in the log', () => {
    const idle = createRun(soundSetup('dairy'));
    idle.advanceTo(20);
    const watched = createRun(soundSetup('dairy'));
    watched.advanceTo(10);
    watched.act({ type: 'check', what: 'volts', place: '24', other: 'N' });
    watched.advanceTo(20);
    expect(watched.log().filter(({ type }) => type === 'check')).toHaveLength(1);
    expect(watched.frame(200)).toEqual(idle.frame(200));
  });
});
