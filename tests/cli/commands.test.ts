import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/commands/index.ts';
import { loadLibrary } from '../../src/cli/library.ts';
import { broken } from '../scenario/small-files.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const HEALTHY = readFileSync(join(ROOT, 'scenarios/starts/healthy-start.yaml'), 'utf8');
const flamewright = (...words: string[]) => runCommand(words, ROOT);

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'flamewright-'));
});
afterAll(() => rmSync(folder, { recursive: true }));
function put(name: string, text: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** Bad input or usage: exit code 2, a message on stderr, nothing on stdout. */
function refused(...words: string[]): string {
  const { exit, stdout, stderr } = flamewright(...words);
  expect({ exit, stdout }).toEqual({ exit: 2, stdout: '' });
  expect(stderr).not.toMatch(/^\s+at |undefined|\[object/m);
  return stderr.trim();
}
function succeeded(...words: string[]): string {
  const { exit, stdout, stderr } = flamewright(...words);
  expect({ exit, stderr }).toEqual({ exit: 0, stderr: '' });
  return stdout;
}

describe('run', () => {
  it('prints one event a line as JSON, and the end with its hash last', () => {
    const lines = succeeded('run', 'healthy-start', '--until', '8', '--json').trim().split('\n');
    const events = lines.map((line) => JSON.parse(line));
    expect(events[0]).toMatchObject({ t: 0, type: 'step', step: 'standby' });
    expect(events).toContainEqual({
      t: 5,
      type: 'action',
      action: { t: 5, type: 'call-for-heat', on: true },
    });
    expect(events.at(-1)).toEqual({
      t: 8,
      type: 'end',
      step: expect.any(String),
      lockout: null,
      hash: expect.stringMatching(/^[0-9a-f]{8,}$/),
    });
    expect(events.filter(({ type }) => type === 'end')).toHaveLength(1);
    const times = events.map(({ t }) => t);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });
  it('gives the same lines for the same seed, and another hash for another', () => {
    const run = (seed: string) =>
      succeeded('run', 'healthy-start', '--until', '20', '--json', '--seed', seed);
    expect(run('3')).toBe(run('3'));
    expect(run('3')).not.toBe(run('4'));
  });
  it('prints a timeline in words that explains a lockout and exits 0', () => {
    const text = succeeded('run', 'air-switch-welded');
    expect(text).toContain('Air proved with the fan at rest (air-switch-welded)');
    expect(text).toMatch(
      /^ +\d+\.\d\d {2}LOCKOUT {2}air proved with fan at rest, in at-rest check$/m,
    );
    expect(text).toContain('Not met at that moment: airflow proved.');
  });
  it('takes actions out of a file', () => {
    const log = put('stop.yaml', '- { t: 6, type: emergency-stop, pressed: true }\n');
    const lines = succeeded('run', 'healthy-start', '--until', '9', '--actions', log, '--json');
    expect(lines).toContain('"cause":"emergency stop"');
  });
  it("runs someone's own scenario on a shipped plant", () => {
    const mine = put('mine.yaml', HEALTHY.replace('id: healthy-start', 'id: mine'));
    expect(succeeded('run', mine, '--until', '1')).toContain('(mine)');
  });
  it('shows of a job what happened before the learner comes, with the outcome it promises', () => {
    const text = succeeded('run', 'school-cold-classrooms');
    expect(text).toMatch(/^ +5\.00 {2}action +call for heat on$/m);
    expect(text).toMatch(/LOCKOUT {2}airflow not proved, in drive to purge$/m);
    expect(text).toMatch(/^ +180\.00 {2}end/m);
  });
  it('calls for heat where nobody has before the learner comes', () => {
    const quiet = broken(
      readFileSync(join(ROOT, 'scenarios/jobs/school-cold-classrooms.yaml'), 'utf8'),
      'actions:\n  - { at: 5, do: call-for-heat, on: true }\narriveAt: 180\n',
      'arriveAt: 10\n',
    );
    const text = succeeded('run', put('quiet.yaml', quiet));
    expect(text).toMatch(/^ +15\.00 {2}action +call for heat on$/m);
    expect(text).toMatch(/LOCKOUT {2}airflow not proved/);
  });
  it('runs what a learner did in a job, acts of the bench included, and nothing by itself', () => {
    const log = put(
      'bench.yaml',
      [
        '- { t: 190, type: check, what: manometer, place: windbox, other: "" }',
        '- { t: 191, type: supply, on: false }',
        '- { t: 192, type: lock, point: isolator, on: true }',
        '- { t: 193, type: jumper, from: airflow:1, to: "33", on: true }',
      ].join('\n'),
    );
    const text = succeeded(
      ...['run', 'school-cold-classrooms', '--actions', log, '--until', '200'],
    );
    expect(text).toMatch(/check: manometer, windbox$/m);
    expect(text).toMatch(/lock at isolator on$/m);
    expect(text).toMatch(/jumper from airflow:1 to 33 on$/m);
  });
  it('ends where it is told to, in whole steps', () => {
    const end = succeeded('run', 'healthy-start', '--until', '1.234', '--json')
      .trim()
      .split('\n')
      .at(-1);
    expect(JSON.parse(end ?? '')).toMatchObject({ t: 1.23 });
  });
  it.each([
    [
      ['run', 'helthy-start'],
      /no scenario, job, drill or lesson and no file "helthy-start".*Did you mean healthy-start\?$/,
    ],
    [
      ['run', 'no/such.yaml'],
      /^no\/such\.yaml:1:1: the file could not be read: there is no file of this name\.$/,
    ],
    [
      ['run', 'healthy-start', '--seed', 'one'],
      /option --seed has "one"; expected a whole number from 0 to 4294967295\.$/,
    ],
    [['run', 'healthy-start', '--seed', '1.5'], /option --seed has "1\.5"/],
    [['run', 'healthy-start', '--seed', '4294967296'], /option --seed has "4294967296"/],
    [
      ['run', 'healthy-start', '--until', '-1'],
      /option --until has "-1"; expected a number of seconds from 0 to 28800\.$/,
    ],
    [['run', 'healthy-start', '--until', '28801'], /option --until has "28801"/],
    [
      ['run', 'healthy-start', '--speed', '2'],
      /no option "--speed"; expected .*Did you mean --seed\?$/,
    ],
    [
      ['run', 'healthy-start', '--actions', 'none.yaml'],
      /^none\.yaml:1:1: the file could not be read/,
    ],
  ])('refuses %j', (words, message) => expect(refused(...words)).toMatch(message));
  it('refuses a file that is no scenario', () => {
    expect(refused('run', put('log.yaml', '- { t: 1, type: reset, pressed: true }'))).toMatch(
      /is no scenario, job, drill or lesson\.$/,
    );
  });
  it('refuses a scenario with a mistake, and runs nothing', () => {
    const path = put('bad.yaml', broken(HEALTHY, 'plant: dairy', 'plant: diary'));
    expect(refused('run', path)).toBe(
      `${path}:4:8: plant: found "diary"; expected one of the plants dairy, laundry or school. Did you mean dairy?`,
    );
  });
  it('refuses an action that no one can do', () => {
    const log = put('bad-log.yaml', '- { t: 6, type: emergency-stp, pressed: true }\n');
    expect(refused('run', 'healthy-start', '--actions', log)).toMatch(
      /bad-log\.yaml:1:17: .*Did you mean emergency-stop\?$/,
    );
  });
});

describe('check', () => {
  it('says of each file in order what it is', () => {
    const plant = join(ROOT, 'scenarios/plants/dairy.yaml');
    const mine = put('mine.yaml', HEALTHY);
    expect(succeeded('check', plant, mine).split('\n')).toEqual([
      `${plant}: in order (plant)`,
      `${mine}: in order (scenario)`,
      '',
    ]);
  });
  it('says every mistake of every file, one a line', () => {
    const one = put(
      'one.yaml',
      HEALTHY.replace('plant: dairy', 'plant: diary').replace('until:', 'untill:'),
    );
    const two = put('two.yaml', '- { t: x, type: reset, pressed: yes }');
    expect(refused('check', one, two).split('\n')).toEqual([
      expect.stringMatching(
        /one\.yaml:\d+:1: there is no key "untill" here; .* Did you mean until\?$/,
      ),
      expect.stringMatching(
        /two\.yaml:1:8: \[0\]\.t: found "x"; expected a number from 0 to 28800 in s\.$/,
      ),
      expect.stringMatching(
        /two\.yaml:1:33: \[0\]\.pressed: found "yes"; expected true or false\. Did you mean true\?$/,
      ),
    ]);
  });
  it.each([
    ['a folder', () => folder, 'it is a folder'],
    ['a file that is not there', () => join(folder, 'none.yaml'), 'there is no file of this name'],
    [
      'a picture',
      () => put('picture.yaml', new Uint8Array([0x89, 0x50, 0xff, 0xfe])),
      'it is not UTF-8 text',
    ],
  ])('says that %s cannot be read', (_title, path, why) => {
    expect(refused('check', path())).toMatch(
      new RegExp(`:1:1: the file could not be read: ${why}\\.$`),
    );
  });
  it('does not read a file of many megabytes', () => {
    expect(refused('check', put('large.yaml', 'x'.repeat(2_000_000)))).toMatch(
      /2000000 characters; at most 262144 are read\.$/,
    );
  });
});

describe('list', () => {
  it.each(['plants', 'profiles', 'faults', 'scenarios', 'jobs', 'drills', 'lessons'])(
    '%s, in lines and as JSON with the same ids',
    (kind) => {
      const ids = JSON.parse(succeeded('list', kind, '--json')).map(({ id }: { id: string }) => id);
      expect(ids.length).toBeGreaterThan(0);
      const lines = succeeded('list', kind).trim().split('\n');
      expect(lines.map((line, i) => line.startsWith(`${ids[i]}  `))).toEqual(ids.map(() => true));
    },
  );
  it('tells of every fault what it is, how bad it gets, how it comes, and on which plants', () => {
    const faults = JSON.parse(succeeded('list', 'faults', '--json')) as Record<string, unknown>[];
    const plants = JSON.parse(succeeded('list', 'plants', '--json')).map(
      ({ id }: { id: string }) => id,
    );
    for (const fault of faults) {
      expect(fault).toEqual({
        id: expect.stringMatching(/^[a-z][a-zA-Z -]+[a-z]$/),
        family: expect.any(String),
        component: expect.any(String),
        mechanism: expect.any(String),
        severity: {
          unit: expect.any(String),
          means: expect.any(String),
          low: expect.any(Number),
          typical: expect.any(Number),
          high: expect.any(Number),
        },
        onsets: expect.arrayContaining(['start']),
        repair: expect.any(String),
        priorWeight: expect.any(Number),
        plants: expect.any(Array),
      });
      expect(plants).toEqual(expect.arrayContaining(fault.plants as string[]));
      expect((fault.plants as string[]).length).toBeGreaterThan(0);
    }
    expect(faults.length).toBeGreaterThanOrEqual(70);
  });
  it.each(['scenarios', 'jobs', 'drills', 'lessons'])(
    'does not tell what one of the %s expects, which fault it has, or the answer',
    (kind) => {
      expect(succeeded('list', kind, '--json')).not.toMatch(
        /"(expect|faults|fault|severity|cause|userError|truth|debrief|right|claim)"/,
      );
    },
  );
  it.each([
    [
      ['list'],
      /something is missing; expected plants, profiles, faults, scenarios, jobs, drills or lessons\.$/,
    ],
    [['list', 'fault'], /no list of "fault"; .*Did you mean faults\?$/],
    [['list', 'faults', '--jsn'], /no option "--jsn"; .*Did you mean --json\?$/],
  ])('refuses %j', (words, message) => expect(refused(...words)).toMatch(message));
});

describe('the library for the page', () => {
  it('holds no expectations', () => {
    expect(JSON.stringify(loadLibrary(ROOT))).not.toContain('"expect"');
  });
  it('has jobs, drills and lessons', () => {
    const { jobs, drills, lessons } = loadLibrary(ROOT);
    expect([jobs, drills, lessons].map((all) => all.length > 0)).toEqual([true, true, true]);
  });
  it.each([['missing'], ['empty']])('does without folders of exercises that are %s', (which) => {
    const root = join(folder, which);
    for (const kind of ['plants', 'profiles', 'starts']) {
      cpSync(join(ROOT, 'scenarios', kind), join(root, 'scenarios', kind), { recursive: true });
    }
    if (which === 'empty') {
      for (const kind of ['jobs', 'drills', 'lessons']) mkdirSync(join(root, 'scenarios', kind));
    }
    const { plants, jobs, drills, lessons } = loadLibrary(root);
    expect(plants.length).toBeGreaterThan(0);
    expect({ jobs, drills, lessons }).toEqual({ jobs: [], drills: [], lessons: [] });
  });
});

describe('anything else', () => {
  it.each([[['help']], [['--help']], [['-h']], [['run', '--help']]])(
    '%j shows the help',
    (words) => {
      expect(succeeded(...words)).toContain('flamewright run FILE|NAME');
    },
  );
  it('asks for a command where there is none', () => {
    expect(refused()).toContain('flamewright run FILE|NAME');
  });
  it('suggests the command that was meant', () => {
    expect(refused('chekc')).toMatch(/^there is no command "chekc"; .* Did you mean check\?\n/);
  });
  it('writes the schemas where it is told to', () => {
    const where = join(folder, 'schema');
    expect(succeeded('schema', where)).toContain(join(where, 'scenario.json'));
    expect(JSON.parse(readFileSync(join(where, 'scenario.json'), 'utf8'))).toMatchObject({
      type: 'object',
    });
  });
  it('says where it may not write', () => {
    expect(refused('schema', join(put('a-file', ''), 'schema'))).toMatch(/could not be written\.$/);
  });
});
