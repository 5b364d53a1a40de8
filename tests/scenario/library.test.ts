import { describe, expect, it } from 'vitest';
import { sayMessage } from '../../src/i18n/index.ts';
import { type Issue, phraseOfIssue } from '../../src/scenario/issue.ts';
import { cardOf, learnerPart } from '../../src/scenario/learner-part.ts';
import { buildLibrary, type LibraryFile, readActionLog } from '../../src/scenario/library.ts';
import { setupOf } from '../../src/scenario/setup-of.ts';
import { library as shipped } from '../support/library.ts';
import {
  broken,
  type LoosePlant,
  SMALL_CATALOGUE,
  SOUND_PROFILE,
  SOUND_SCENARIO,
  smallLibrary,
  soundPlant,
} from './small-files.ts';

const faults = SMALL_CATALOGUE;

function issuesOf(files: readonly LibraryFile[]): readonly Issue[] {
  const built = buildLibrary(files, { faults });
  return built.ok ? [] : built.issues;
}
const withPlace = (issue: Issue) =>
  `${issue.file}:${issue.line}:${issue.column}: ${sayMessage(phraseOfIssue(issue))}`;

function librarySound() {
  const built = buildLibrary(smallLibrary(), { faults });
  if (!built.ok) throw new Error(built.issues.map(withPlace).join('\n'));
  return built.value;
}

describe('files that fit together', () => {
  it('make a library', () => {
    const { plants, profiles, scenarios } = librarySound();
    expect([plants, profiles, scenarios].map((all) => all.map(({ id }) => id))).toEqual([
      ['dairy'],
      ['short-times'],
      ['small-start'],
    ]);
  });
  it('take the place of those of the same name beneath them', () => {
    const base = librarySound();
    const text = broken(SOUND_SCENARIO, 'A small start', 'Another start');
    const built = buildLibrary([{ path: 'mine.yaml', text }], { base, faults });
    expect(built.ok && built.value.scenarios.map(({ title }) => title)).toEqual(['Another start']);
  });
});

/** What is broken, the words replaced, what stands in their place, and the one message that follows. */
const ACROSS_FILES: readonly (readonly [string, string, string, string])[] = [
  [
    'a plant that is not there',
    'plant: dairy',
    'plant: diary',
    '3:8: plant: found "diary"; expected one of the plants dairy. Did you mean dairy?',
  ],
  [
    'a profile that is not there',
    'plant: dairy',
    'plant: dairy\nprofile: short-time',
    '4:10: profile: found "short-time"; expected one of the profiles short-times. Did you mean short-times?',
  ],
  [
    'a fault that is not in the catalogue',
    'lens dirty',
    'lense dirty',
    '9:14: faults[0].fault: found "lense dirty"; expected a fault of the catalogue; flamewright list faults shows them. Did you mean lens dirty?',
  ],
  [
    'a fault that this plant cannot have',
    'lens dirty, severity: 0.9, onset: { at: 3 }',
    'flame rod fouled, severity: 1e8',
    '9:14: faults[0].fault: "flame rod fouled" does not fit here; expected a fault that the plant dairy can have.',
  ],
  [
    'a severity beyond the fault',
    'severity: 0.9',
    'severity: 1.5',
    '9:36: faults[0].severity: found 1.5; expected a severity from 0.3 to 0.99 for this fault.',
  ],
  [
    'a severity beyond the fault, with its unit',
    'lens dirty, severity: 0.9',
    'upstream valve seat passes, severity: 5',
    '9:52: faults[0].severity: found 5; expected a severity from 20 to 4000 dm³/h for this fault.',
  ],
  [
    'an onset that the mechanism does not have',
    '{ at: 3 }',
    '{ intermittent: { from: 0, period: 10, duty: 0.5 } }',
    '9:48: faults[0].onset: a group of keys does not fit here; expected for this fault start, at or step.',
  ],
  [
    'an onset of two kinds',
    '{ at: 3 }',
    '{ at: 3, step: purge }',
    '9:48: faults[0].onset: found a group of keys; expected exactly one of at, step or intermittent.',
  ],
  [
    'an onset of no kind',
    '{ at: 3 }',
    '{}',
    '9:48: faults[0].onset: found a group of keys; expected exactly one of at, step or intermittent.',
  ],
  [
    'an onset after the end',
    '{ at: 3 }',
    '{ at: 301 }',
    '9:54: faults[0].onset.at: found 301; expected a time not after 300 s, the end of the run.',
  ],
  [
    'an action after the end',
    'at: 5,',
    'at: 500,',
    '11:11: actions[0].at: found 500; expected a time not after 300 s, the end of the run.',
  ],
  [
    'actions out of order',
    'on: true }',
    'on: true }\n  - { at: 4, do: reset, pressed: true }',
    '12:11: actions[1].at: found 4; expected a time not before 5 s, that of the entry above.',
  ],
  [
    'load points out of order',
    'load: 0.4 }',
    'load: 0.4 }\n  - { at: 99, load: 0.1 }',
    '8:11: load[1].at: found 99; expected a time not before 100 s, that of the entry above.',
  ],
  [
    'a cock that is not there',
    'do: call-for-heat, on: true',
    'do: turn-cock, cock: cok, opening: 0',
    '11:35: actions[0].cock: found "cok"; expected a manual cock of the plant dairy: cock. Did you mean cock?',
  ],
  [
    'an inserted fault that is not in the catalogue',
    'do: call-for-heat, on: true',
    'do: insert-fault, fault: lens dirt, severity: 0.9',
    '11:39: actions[0].fault: found "lens dirt"; expected a fault of the catalogue; flamewright list faults shows them. Did you mean lens dirty?',
  ],
  [
    'a cleared fault that is not in the catalogue',
    'do: call-for-heat, on: true',
    'do: clear-fault, fault: len dirty',
    '11:38: actions[0].fault: found "len dirty"; expected a fault of the catalogue; flamewright list faults shows them. Did you mean lens dirty?',
  ],
  [
    'an expectation after the end',
    'by: 240',
    'by: 400',
    '16:7: expect.by: found 400; expected a time not after 300 s, the end of the run.',
  ],
];

describe('what a scenario names must be there', () => {
  it.each(ACROSS_FILES)('%s', (_title, from, to, message) => {
    const files = smallLibrary(broken(SOUND_SCENARIO, from, to));
    expect(issuesOf(files).map(withPlace)).toEqual([`starts/small-start.yaml:${message}`]);
  });
  it('does not blame a scenario for a plant whose file is broken', () => {
    const plant = soundPlant();
    plant.ambient.temperatureC = 500;
    expect(
      issuesOf(smallLibrary(SOUND_SCENARIO, plant)).map(({ file, path }) => [file, path]),
    ).toEqual([['plants/dairy.json', 'ambient.temperatureC']]);
  });
  it('tells which file has a name already', () => {
    const again = { path: 'starts/again.yaml', text: SOUND_SCENARIO };
    expect(issuesOf([...smallLibrary(), again]).map(withPlace)).toEqual([
      'starts/again.yaml:1:5: id: "small-start" is taken already; expected a name of its own, that of starts/small-start.yaml being the same.',
    ]);
  });
  it('asks what a file is when nothing tells', () => {
    expect(issuesOf([{ path: 'mine.yaml', text: 'colour: grey' }]).map(withPlace)).toEqual([
      'mine.yaml:1:1: found a group of keys; expected a plant (with gasTrain), a profile (with timings), a scenario (with plant), a job (with card), a drill (with question), a lesson (with intro), quiz items (with items) or an action log (a list).',
    ]);
  });
});

/** What is done to the plant, and the places that are then complained of. */
const PLANTS: readonly (readonly [string, (plant: LoosePlant) => void, readonly string[]])[] = [
  ['an edge of no kind', (p) => (p.gasTrain.edges[0].kind = 'tap'), ['gasTrain.edges[0].kind']],
  [
    'a key of another kind of edge',
    (p) => (p.gasTrain.edges[0].lagS = 1),
    ['gasTrain.edges[0].lagS'],
  ],
  [
    'an edge to nowhere',
    (p) => (p.gasTrain.edges[0].to = 'nowhere'),
    [
      'gasTrain.nodes[0].id',
      'gasTrain.nodes[1].id',
      'gasTrain.nodes[2].id',
      'gasTrain.nodes[3].id',
      'gasTrain.nodes[4].id',
      'gasTrain.nodes[5].id',
      'gasTrain.nodes[6].id',
      'gasTrain.nodes[7].id',
      'gasTrain.edges',
      'gasTrain.edges[0].to',
    ],
  ],
  [
    'two nodes of one name',
    (p) => (p.gasTrain.nodes[7].id = 'inlet'),
    ['gasTrain.nodes[7].id', 'gasTrain.edges[9].to', 'gasTrain.edges[10].from'],
  ],
  [
    'no way to the furnace',
    (p) => {
      for (const edge of p.gasTrain.edges) if (edge.to === 'furnace') edge.to = 'atmosphere';
    },
    ['gasTrain.edges'],
  ],
  ['a curve of two lengths', (p) => p.control.curve.fanRpm.pop(), ['control.curve.fanRpm']],
  ['rates that fall', (p) => (p.control.curve.rates[1] = 0.1), ['control.curve.rates[1]']],
  ['a number out of range', (p) => (p.vessel.bubbleS = 1000), ['vessel.bubbleS']],
  ['a missing component', (p) => delete p.furnace, ['furnace']],
  ['a device of no kind', (p) => (p.field.drives[0].kind = 'clockwork'), ['field.drives[0].kind']],
  ['a vent valve that the start does not know', (p) => (p.variant.vent = 'none'), ['variant.vent']],
  [
    'a vent valve that rests the other way',
    (p) => (p.variant.vent = 'normally open'),
    ['variant.vent'],
  ],
  [
    'proofs that are not fitted',
    (p) => {
      const { id } = p.field.closedProofs.pop();
      p.wiring.contacts.push({ id, made: true });
    },
    ['variant.proofOfClosure'],
  ],
  [
    'a steam boiler kept by its temperature',
    (p) =>
      (p.control.firingRate = {
        kind: 'temperature',
        setpointC: 80,
        secondSetpointC: 60,
        proportionalBandK: 10,
        integralS: 300,
      }),
    ['control.firingRate.kind'],
  ],
  [
    'a second setpoint above the first',
    (p) => (p.control.firingRate.secondSetpointPa = 1_250_000),
    ['control.firingRate.secondSetpointPa'],
  ],
  [
    'a feed control that listens to nothing',
    (p) => (p.field.feedControls[0].probe = 'level-prob'),
    ['field.feedControls[0].probe'],
  ],
  [
    'a range upside down',
    (p) => (p.field.levelProbes[0].highM = -0.5),
    ['field.levelProbes[0].highM'],
  ],
  [
    'instruments at a point that is not there',
    (p) => {
      const rename = (id: string) => (id === 'regulated' ? 'governed' : id);
      for (const node of p.gasTrain.nodes) node.id = rename(node.id);
      for (const edge of p.gasTrain.edges) {
        edge.from = rename(edge.from);
        edge.to = rename(edge.to);
      }
    },
    ['field.switches[1].senses', 'field.switches[2].senses', 'field.transmitters[1].senses'],
  ],
  [
    'proving without a comparator',
    (p) => p.field.interspaceComparators.pop(),
    ['variant.valveProving'],
  ],
  ['a drive of the other kind', (p) => (p.variant.fan = 'fixed speed'), ['variant.fan']],
  [
    'a pilot that the start does not light',
    (p) => (p.variant.ignition = 'direct spark'),
    ['variant.ignition', 'variant.ignition', 'variant.ignition'],
  ],
  ['a profile that is not there', (p) => (p.profile = 'long-times'), ['profile']],
];

describe('how a vessel stands at the start', () => {
  const messages = (initial: string, plant = soundPlant()) =>
    issuesOf(
      smallLibrary(
        broken(SOUND_SCENARIO, '{ pressureBar: 8, levelMm: 0, load: 0.2 }', initial),
        plant,
      ),
    )
      .filter(({ file }) => file.startsWith('starts'))
      .map(withPlace);

  it('is a pressure for boiling water, or a temperature for colder water', () => {
    expect(messages('{ waterC: 20 }')).toEqual([]);
    expect(messages('{ load: 0.2 }')).toEqual([
      'starts/small-start.yaml:5:10: initial.pressureBar: this is missing; expected pressureBar, or waterC for a boiler below boiling.',
    ]);
    expect(messages('{ pressureBar: 8, waterC: 20 }')).toEqual([
      'starts/small-start.yaml:5:36: initial.waterC: found 20; expected pressureBar or waterC, not both.',
    ]);
  });

  it('is a temperature alone for hot water, which has no level and a pressure by its filling', () => {
    const school = shipped.plants.find(({ id }) => id === 'school');
    const plant = { ...structuredClone(school), id: 'dairy', profile: 'short-times' };
    expect(messages('{ waterC: 60 }', plant)).toEqual([]);
    expect(messages('{ pressureBar: 2, levelMm: 5 }', plant)).toEqual([
      'starts/small-start.yaml:5:25: initial.pressureBar: found 2; expected waterC, the pressure of a hot-water boiler following from its filling.',
      'starts/small-start.yaml:5:37: initial.levelMm: found 5; expected no levelMm, a hot-water boiler having no level.',
    ]);
  });
});

describe('what makes no plant is told by its place in the file', () => {
  it.each(PLANTS)('%s', (_title, change, paths) => {
    const plant = soundPlant();
    change(plant);
    const found = issuesOf(smallLibrary(SOUND_SCENARIO, plant)).filter(
      ({ file }) => file === 'plants/dairy.json',
    );
    expect(found.map(({ path }) => path).sort()).toEqual([...paths].sort());
    for (const issue of found) expect(withPlace(issue)).not.toMatch(/undefined|\{\w+\}/);
  });
  it('asks a profile for every timing', () => {
    const files = smallLibrary().map((file) =>
      file.path.startsWith('profiles')
        ? { ...file, text: broken(SOUND_PROFILE, '"purgeS"', '"purgS"') }
        : file,
    );
    expect(issuesOf(files).map(({ code, suggestion }) => [code, suggestion])).toEqual([
      ['unknown-key', 'purgeS'],
    ]);
  });
});

describe('an action log', () => {
  const library = librarySound();
  const [scenario] = library.scenarios;
  const read = (text: string, allow = scenario?.allow ?? []) => {
    if (scenario === undefined) throw new Error('the library is empty');
    const log = readActionLog({ path: 'log.yaml', text }, library, { ...scenario, allow }, faults);
    return log.ok ? log.value : log.issues.map(withPlace);
  };
  it('reads as the engine keeps it', () => {
    expect(
      read('- { t: 1, type: reset, pressed: true }\n- { t: 2.5, type: firing, mode: hand }'),
    ).toEqual([
      { t: 1, type: 'reset', pressed: true },
      { t: 2.5, type: 'firing', mode: 'hand', rate: 0 },
    ]);
  });
  it('does only what the scenario allows', () => {
    expect(read('- { t: 1, type: reset, pressed: true }', ['supply'])).toEqual([
      'log.yaml:1:17: [0].type: "reset" is not allowed here; expected one that the scenario allows: supply.',
    ]);
  });
  it('does not go back in time', () => {
    expect(
      read('- { t: 2, type: reset, pressed: true }\n- { t: 1, type: reset, pressed: false }'),
    ).toEqual([
      'log.yaml:2:8: [1].t: found 1; expected a time not before 2 s, that of the entry above.',
    ]);
  });
  it('names a fault and a cock that are there', () => {
    expect(
      read(
        '- { t: 1, type: clear-fault, fault: lense dirty }\n- { t: 1, type: turn-cock, cock: tap, opening: 1 }',
      ),
    ).toEqual([
      'log.yaml:1:37: [0].fault: found "lense dirty"; expected a fault of the catalogue; flamewright list faults shows them. Did you mean lens dirty?',
      'log.yaml:2:34: [1].cock: found "tap"; expected a manual cock of the plant dairy: cock.',
    ]);
  });
});

describe('the setup of a run', () => {
  it('is in the units of the simulator, with scripted and given actions in order', () => {
    const setup = setupOf(librarySound(), 'small-start', {
      seed: 7,
      actions: [
        { t: 2, type: 'reset', pressed: true },
        { t: 9, type: 'reset', pressed: false },
      ],
    });
    expect(setup).toMatchObject({
      plant: { id: 'dairy' },
      profile: { id: 'short-times' },
      initial: { vesselGaugePa: 800_000, levelM: 0, load: 0.2 },
      load: [{ atS: 100, load: 0.4 }],
      faults: [{ fault: 'lens dirty', severity: 0.9, onset: { kind: 'time', atS: 3 } }],
      seed: 7,
    });
    expect(setup?.actions.map(({ t, type }) => [t, type])).toEqual([
      [2, 'reset'],
      [5, 'call-for-heat'],
      [9, 'reset'],
    ]);
  });
  it.each([
    ['start', { kind: 'start' }],
    ['{ step: purge }', { kind: 'step', step: 'purge' }],
    [
      '{ intermittent: { from: 1, period: 10, duty: 0.5 } }',
      { kind: 'intermittent', fromS: 1, periodS: 10, duty: 0.5 },
    ],
  ])('knows the onset %s', (onset, expected) => {
    const text = broken(
      SOUND_SCENARIO,
      'lens dirty, severity: 0.9, onset: { at: 3 }',
      `upstream valve seat passes, severity: 100, onset: ${onset}`,
    );
    const built = buildLibrary(smallLibrary(text), { faults });
    expect(built.ok && setupOf(built.value, 'small-start')?.faults[0]?.onset).toEqual(expected);
  });
  it('is a copy: what a run does to it stays out of the library', () => {
    const library = librarySound();
    const setup = setupOf(library, 'small-start');
    const edge = setup?.plant.gasTrain.edges[0];
    if (edge?.kind !== 'cock') throw new Error('the first edge of the dairy is its cock');
    edge.opening = 0;
    expect(library.plants[0]?.gasTrain.edges[0]).toMatchObject({ opening: 1 });
  });
  it('is nothing for a scenario that is not there', () => {
    expect(setupOf(librarySound(), 'small-star')).toBeNull();
  });
});

describe('what a learner receives', () => {
  const [scenario] = librarySound().scenarios;
  if (scenario === undefined) throw new Error('the library is empty');
  it('never holds what is expected', () => {
    expect(learnerPart(scenario)).not.toHaveProperty('expect');
    expect(
      setupOf({ ...librarySound(), scenarios: [learnerPart(scenario)] }, 'small-start'),
    ).toEqual(setupOf(librarySound(), 'small-start'));
  });
  it('is shown no fault', () => {
    expect(Object.keys(cardOf(learnerPart(scenario)))).not.toContain('faults');
    expect(JSON.stringify(cardOf(learnerPart(scenario)))).not.toContain('lens');
  });
});
