import { describe, expect, it } from 'vitest';
import {
  createRun,
  LOOK_WORDS,
  type LookOptions,
  type LookReading,
  type LookWhat,
  leakPlacesOf,
  type Run,
} from '../../src/engine/index.ts';
import { faultsOf, findFault } from '../../src/faults/index.ts';
import { soundSetup, withFault } from '../faults/exercises.ts';
import { library } from '../support/library.ts';
import { lastOf } from './hands.ts';

function runWith(plant: string, fault: string, severity?: number): Run {
  const found = findFault(fault);
  if (found === undefined) throw new Error(`no ${fault}`);
  return createRun(withFault(soundSetup(plant), found, severity ?? found.severity.high));
}

function seen(run: Run, what: LookWhat, options?: LookOptions): LookReading {
  const reading = run.look(what, options);
  if (reading === null) throw new Error(`no ${what}`);
  return reading;
}

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (id, plant) => {
  it('the same things are there to look at, whatever stands', () => {
    const places = createRun(soundSetup(id)).lookPlaces();
    expect(places).toContain('sight glass');
    for (const fault of faultsOf(plant)) {
      const run = createRun(withFault(soundSetup(id), fault, fault.severity.high));
      run.advanceTo(1);
      expect(run.lookPlaces(), fault.id).toEqual(places);
    }
  }, 60_000);

  it('says nothing that has no words, and no number that is none, through a whole start', () => {
    const known = new Set<string>(LOOK_WORDS);
    const run = createRun(soundSetup(id));
    for (let t = 0; t <= 240; t += 3) {
      run.advanceTo(t);
      for (const what of run.lookPlaces()) {
        const { words, values } = seen(run, what);
        expect(words.length, what).toBeGreaterThan(0);
        for (const word of words) expect(known.has(word), word).toBe(true);
        expect(Object.values(values).every(Number.isFinite), what).toBe(true);
      }
    }
  });

  it('looking, listening and smelling leave the run as it was', () => {
    const alone = createRun(soundSetup(id));
    const watched = createRun(soundSetup(id));
    for (let t = 5; t <= 120; t += 5) {
      watched.advanceTo(t);
      for (const what of watched.lookPlaces()) watched.look(what);
      watched.listen();
      watched.smell();
    }
    alone.advanceTo(120);
    expect(watched.hash()).toBe(alone.hash());
  });
});

describe('eyes agree with the plant', () => {
  it('on flame, spark, valves, blade and glass, at every second of a start', () => {
    const run = createRun(soundSetup('dairy'));
    for (let t = 1; t <= 240; t++) {
      run.advanceTo(t);
      const near = (what: LookWhat, value: string, channel: string, error: number) => {
        const shown = seen(run, what).values[value] ?? Number.NaN;
        expect(Math.abs(shown - lastOf(run, channel)), `${what} at ${t}`).toBeLessThanOrEqual(
          error,
        );
      };
      // Half of what the eye resolves.
      near('sight glass', 'sizeShare', 'main.intensity', 0.03);
      near('pilot flame', 'sizeShare', 'pilot.intensity', 0.03);
      near('upstream valve indicator', 'openShare', 'gas.upstream-valve.opening', 0.0251);
      near('damper blade', 'bladeDeg', 'damper.blade', 0.51);
      near('fuel valve shaft', 'bladeDeg', 'fuel-valve.blade', 0.51);
      near('gauge glass', 'levelM', 'vessel.gauge-glass', 0.0026);
      near('drive display', 'frequencyHz', 'fan.frequency', 0.051);
      near('boiler gauge', 'pressurePa', 'vessel.pressure', 2501);
      const sparks = lastOf(run, 'spark.power') > 0.5;
      expect(seen(run, 'spark').words[0] !== 'look.spark.none', `spark at ${t}`).toBe(sparks);
    }
  });

  it('on a blade that has slipped, where the feedback is blind to it', () => {
    const run = runWith('dairy', 'fuel control valve slipped on its servo', 20);
    expect(seen(run, 'fuel valve shaft').words).toEqual(['look.shaft.together']);
    run.act({ type: 'stroke', servo: 'fuel-valve', deg: 60 });
    run.advanceTo(5);
    expect(seen(run, 'fuel valve shaft').words).toEqual(['look.shaft.apart']);
    expect(seen(run, 'fuel valve shaft').values.bladeDeg).toBeCloseTo(40, 0);
    expect(lastOf(run, 'fuel-valve.feedback')).toBeCloseTo(60, 0);
  });

  it.each<[string, string, LookWhat, string]>([
    ['dairy', 'strainer blocked', 'strainer', 'look.way.nearly-shut'],
    ['dairy', 'regulator hunts', 'regulator breather', 'look.way.nearly-shut'],
    ['dairy', 'belt slipping', 'belt', 'look.belt.jumps'],
    ['dairy', 'airflow switch tube off', 'air switch tube', 'look.tube.off'],
    ['dairy', 'airflow switch tube blocked', 'air switch tube', 'look.tube.water'],
    ['dairy', 'inlet screen blocked', 'air inlet screen', 'look.way.nearly-shut'],
    ['dairy', 'room starved of air', 'boiler room openings', 'look.way.nearly-shut'],
    ['dairy', 'flue blocked', 'flue', 'look.way.nearly-shut'],
    ['dairy', 'stack damper part shut', 'stack damper', 'look.valve.part-open'],
    ['dairy', 'electrode gap wide', 'electrode', 'look.electrode.gap-wide'],
    ['dairy', 'electrode insulator cracked', 'electrode', 'look.electrode.crack'],
    ['dairy', 'electrode shifted from its gas', 'electrode', 'look.electrode.moved'],
    ['dairy', 'ignition lead tracking to earth', 'ignition lead', 'look.lead.tracks'],
    ['dairy', 'lens dirty', 'lens', 'look.lens.black'],
    ['dairy', 'scanner off sight line', 'scanner sight line', 'look.sight-line.beside-flame'],
    ['dairy', 'scanner sees hot refractory', 'scanner sight line', 'look.sight-line.on-tile'],
    ['laundry', 'spark seen by the scanner', 'scanner sight line', 'look.sight-line.on-spark'],
    ['school', 'flame rod fouled', 'flame rod', 'look.rod.film'],
    ['school', 'flame rod touches metal', 'flame rod', 'look.rod.touches'],
    ['dairy', 'pilot orifice blocked', 'pilot burner', 'look.way.nearly-shut'],
    ['dairy', 'pilot does not reach main', 'pilot burner', 'look.pilot-burner.bent'],
    ['dairy', 'diffuser shifted', 'diffuser', 'look.diffuser.shifted'],
    ['dairy', 'gas nozzle part blocked', 'nozzle', 'look.way.nearly-shut'],
    ['dairy', 'gauge-glass cock shut', 'gauge glass', 'look.glass.cock-shut'],
    ['dairy', 'feed pump fails', 'water pump', 'look.pump.still'],
    ['school', 'circulating pump fails', 'water pump', 'look.pump.still'],
    ['dairy', 'blow-down valve passes', 'blow-down drain', 'look.drain.runs'],
    ['dairy', 'level probe fouled', 'level probe', 'look.probe.film'],
    ['dairy', 'high limit tripped', 'limit buttons', 'look.limit.tripped'],
    ['dairy', 'control fuse blown', 'fuses', 'look.fuse.broken'],
    ['dairy', 'hand control left on', 'panel switches', 'look.panel.hand'],
    ['dairy', 'manual cock left part shut', 'manual cock', 'look.valve.shut'],
  ])('%s: %s is there for who looks at the %s', (plant, fault, what, word) => {
    const sound = createRun(soundSetup(plant));
    sound.advanceTo(2);
    expect(seen(sound, what).words).not.toContain(word);
    const run = runWith(plant, fault);
    run.advanceTo(2);
    expect(seen(run, what).words).toContain(word);
  });

  it('the wheel of a fan that was wired wrong turns the wrong way', () => {
    const run = runWith('dairy', 'fan turning backwards');
    run.advanceTo(1);
    expect(seen(run, 'fan rotation').words).toEqual(['look.fan.still']);
    run.advanceTo(60);
    expect(seen(run, 'fan rotation').words).toEqual(['look.fan.turns-wrong']);
  });

  it('a drive that its limit holds back says so, one that ramps up does not', () => {
    const words = new Set<string>();
    const sound = createRun(soundSetup('dairy'));
    for (let t = 1; t < 100; t++) {
      sound.advanceTo(t);
      for (const word of seen(sound, 'drive display').words) words.add(word);
    }
    expect(words).toEqual(new Set(['look.drive.ready', 'look.drive.running']));
    const held = runWith('dairy', 'drive in current limit', 0.65);
    held.advanceTo(80);
    expect(seen(held, 'drive display').words).toEqual(['look.drive.at-limit']);
  });

  it('what must be opened to be seen says so, and what need not does not', () => {
    const run = createRun(soundSetup('dairy'));
    const inside = run.lookPlaces().filter((what) => seen(run, what).needsOpening);
    expect(inside).toEqual(
      expect.arrayContaining(['strainer', 'belt', 'electrode', 'lens', 'nozzle', 'fuses']),
    );
    for (const open of ['sight glass', 'gauge glass', 'damper blade', 'fan rotation'] as const) {
      expect(inside).not.toContain(open);
    }
  });
});

describe('ears', () => {
  it('hear a slack belt squeal while the fan runs up, and not a tight one', () => {
    const tight = createRun(soundSetup('dairy'));
    const slack = runWith('dairy', 'belt slipping', 0.3);
    tight.advanceTo(60);
    slack.advanceTo(60);
    expect(heard(tight)).not.toContain('belt squeal');
    expect(heard(slack)).toContain('belt squeal');
    expect(lastOf(slack, 'fan.belt-slip')).toBe(0.3);
    slack.act({ type: 'call-for-heat', on: false });
    slack.advanceTo(200);
    expect(heard(slack)).not.toContain('belt squeal');
  });

  it('hear a regulator hunt under flow, and a sound one through its start not', () => {
    const sound = createRun(soundSetup('dairy'));
    for (let t = 10; t <= 290; t += 2) {
      sound.advanceTo(t);
      expect(heard(sound), `at ${t}`).not.toContain('regulator hunting');
    }
    const hunts = runWith('dairy', 'regulator hunts', 0.9);
    let times = 0;
    for (let t = 10; t <= 290; t += 2) {
      hunts.advanceTo(t);
      if (heard(hunts).includes('regulator hunting')) times += 1;
    }
    expect(times).toBeGreaterThan(5);
  });

  it('hear gas in an open vent line only where the seat before it passes', () => {
    const sound = createRun(soundSetup('laundry'));
    const passes = runWith('laundry', 'upstream valve seat passes');
    sound.advanceTo(25);
    passes.advanceTo(25);
    expect(heard(sound)).not.toContain('gas at the vent');
    expect(heard(passes)).toContain('gas at the vent');
  });

  it('hear valves move, the spark crackle and the flame burn at their time', () => {
    const run = createRun(soundSetup('dairy'));
    const first = new Map<string, number>();
    for (let t = 1; t <= 240; t += 0.5) {
      run.advanceTo(t);
      for (const what of heard(run)) if (!first.has(what)) first.set(what, t);
    }
    const at = (what: string) => first.get(what) ?? Number.NaN;
    expect(at('fan')).toBeLessThan(at('spark'));
    expect(at('spark')).toBeLessThan(at('flame rumble'));
    expect(at('valve')).toBeLessThanOrEqual(at('flame rumble'));
  });
});

describe('gas that escapes', () => {
  const leaking = faultsOf(soundSetup('dairy').plant).filter(({ id }) =>
    id.startsWith('gas escapes'),
  );

  it('foams at its own joint, hisses, is smelt, and is none once the joint is tight', () => {
    expect(leaking.length).toBeGreaterThan(3);
    const [fault] = leaking;
    if (fault === undefined) throw new Error('no leak');
    const sound = createRun(soundSetup('dairy'));
    const run = createRun(withFault(soundSetup('dairy'), fault, fault.severity.high));
    sound.advanceTo(30);
    run.advanceTo(30);
    const spray = { spray: true };
    expect(seen(sound, 'gas joints', spray).words).toEqual(['look.joints.dry']);
    expect(sound.smell()).toBe(0);
    const { words, values } = seen(run, 'gas joints', spray);
    expect(words).toEqual(['look.joints.foam']);
    const wet = Object.entries(values).filter(([, kgS]) => kgS > 1e-8);
    expect(wet).toHaveLength(1);
    expect(leakPlacesOf(run.setup.plant)).toContain(wet[0]?.[0]);
    const [, kgS = 0] = wet[0] ?? [];
    expect(kgS).toBeCloseTo(lastOf(run, 'gas.leak'), 12);
    expect(run.smell()).toBeGreaterThan(0.01);
    const part = fault.remedies[0]?.part ?? '';
    run.act({ type: 'repair', part, way: 'tighten' });
    run.advanceTo(31);
    expect(seen(run, 'gas joints', spray).words).toEqual(['look.joints.dry']);
    expect(run.smell()).toBe(0);
    expect(run.bench().opened).toEqual([{ part, t: 30 }]);
  });
});

describe('bare eyes', () => {
  it('see no gas: the joints look the same, tight or not', () => {
    const leak = faultsOf(soundSetup('dairy').plant).find(({ id }) => id.startsWith('gas escapes'));
    const run = runWith('dairy', leak?.id ?? '');
    const sound = createRun(soundSetup('dairy'));
    run.advanceTo(30);
    sound.advanceTo(30);
    expect(seen(run, 'gas joints', { spray: true }).words).toEqual(['look.joints.foam']);
    expect(seen(run, 'gas joints')).toEqual(seen(sound, 'gas joints'));
    expect(seen(run, 'gas joints').values).toEqual({});
  });
});

describe('the terminal strip', () => {
  const IN_ORDER = { what: 'terminal strip', values: {}, words: ['look.strip.in-order'] };
  const strip = (run: Run) => {
    run.advanceTo(1);
    return seen(run, 'terminal strip');
  };

  it('has the jumper that someone left, by its two wires, until it is taken out', () => {
    const run = runWith('laundry', 'jumper left across the airflow switch');
    expect(strip(run)).toEqual({
      what: 'terminal strip',
      values: { 'L1+33': 1 },
      words: ['look.strip.jumper'],
      needsOpening: true,
    });
    run.act({ type: 'repair', part: 'airflow switch wiring', way: 'remove jumper' });
    run.advanceTo(2);
    expect(seen(run, 'terminal strip')).toMatchObject(IN_ORDER);
  });

  it('has a jumper of one’s own, put on terminals, beside one that lay there', () => {
    const run = runWith('laundry', 'jumper left across the airflow switch');
    run.act({ type: 'jumper', from: 'low-gas:1', to: 'low-gas:2', on: true });
    run.act({ type: 'jumper', from: '33', to: 'L1', on: true });
    expect(strip(run).values).toEqual({ 'L1+33': 2, 'L1+31': 1 });
    run.act({ type: 'jumper', from: 'low-gas:1', to: 'low-gas:2', on: false });
    run.advanceTo(2);
    expect(Object.keys(seen(run, 'terminal strip').values)).toEqual(['L1+33']);
  });

  it('has a wire that is out, at its terminal', () => {
    const run = runWith('laundry', 'wire off at the airflow switch');
    expect(strip(run)).toMatchObject({
      values: { 'airflow:1': 1 },
      words: ['look.strip.wire-out'],
    });
  });

  it.each([
    'gas switch wires swapped',
    'limit-string terminal loose',
    'high-resistance contact at the airflow switch',
    'loose neutral',
    'earth fault on the valve cable',
  ])('looks in order with %s', (fault) => {
    expect(strip(runWith('laundry', fault))).toMatchObject(IN_ORDER);
  });
});

function heard(run: Run): string[] {
  return run.listen().map(({ what }) => what);
}
