import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { atlasFile, writeAtlas } from '../../src/cli/atlas/files.ts';
import { runCommand, runLongCommand } from '../../src/cli/commands/index.ts';
import { assembleAtlas, planOf, samplesOf } from '../../src/diagnosis/index.ts';
import { createRun } from '../../src/engine/index.ts';
import { findFault } from '../../src/faults/index.ts';
import { shippedSetup } from '../support/library.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const LONG_MS = 60_000;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'flamewright-atlas-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('atlas', () => {
  it('refuses a plant that there is not, and names the nearest', async () => {
    const told: string[] = [];
    const words = ['atlas', '--plant', 'dary', '--to', folder];
    const outcome = await runLongCommand(words, ROOT, (line) => told.push(line));
    expect(outcome).toMatchObject({ exit: 2, stdout: '' });
    expect(outcome?.stderr).toMatch(/'?dary'?.*dairy/s);
    expect(told).toEqual([]);
  });

  it('is named in the help, and asked for help gives it', () => {
    expect(runLongCommand(['atlas', '--help'], ROOT, () => {})).toBeNull();
    expect(runCommand(['atlas', '--help'], ROOT).stdout).toContain('flamewright atlas');
  });
});

describe('diagnose', () => {
  const diagnose = (...words: string[]) => runCommand(['diagnose', ...words], ROOT);

  it('refuses a job that there is not, and says what makes an atlas where there is none', () => {
    expect(diagnose('school-cold-clasrooms')).toMatchObject({ exit: 2, stdout: '' });
    expect(diagnose('school-cold-clasrooms').stderr).toContain('school-cold-classrooms');
    const none = diagnose('school-cold-classrooms', '--atlas', folder);
    expect(none).toMatchObject({ exit: 2, stdout: '' });
    expect(none.stderr).toContain('flamewright atlas');
    const plant = diagnose(join(ROOT, 'scenarios/plants/school.yaml'), '--atlas', folder);
    expect(plant.exit).toBe(2);
  });

  it('wants one exercise or all jobs, and not both', () => {
    expect(diagnose().stderr).toContain('--all');
    const both = diagnose('school-cold-classrooms', '--all');
    expect(both).toMatchObject({ exit: 2, stdout: '' });
    expect(both.stderr).toContain('one too many');
  });

  it(
    'takes a drill and a start as well as a job',
    () => {
      const drill = diagnose('laundry-where-the-volts-stop');
      expect(drill.exit).toBe(0);
      expect(drill.stdout).toMatch(/difficulty [1-5] of 5/);
      const start = diagnose(join(ROOT, 'scenarios/starts/air-switch-tube-off.yaml'));
      expect(start.stdout).toContain('With that the cause is known.');
    },
    LONG_MS,
  );

  it(
    'says each cause of several, and what eyes found in words',
    () => {
      const { stdout } = diagnose('school-still-the-same');
      expect(stdout).toContain('Cause 1 of 2: electrode gap wide');
      expect(stdout).toContain('Cause 2 of 2: flame rod fouled');
      expect(stdout).not.toMatch(/look\.\w/);
      expect(stdout).not.toMatch(/input \d/);
    },
    LONG_MS,
  );

  it(
    'of a job says the way to its cause, its minutes and what cannot be told from it',
    () => {
      const sound = shippedSetup('school-healthy-start');
      const plan = planOf(sound);
      const faults = [
        'airflow switch tube off',
        'fan turning backwards',
        'ignition transformer dead',
      ];
      const atlas = assembleAtlas(
        'school',
        'made for a test',
        createRun(sound).channels,
        { fault: null, priorWeight: 1, samples: samplesOf(plan, null, 4) },
        faults.map((id) => {
          const fault = findFault(id);
          if (fault === undefined) throw new Error(`no fault ${id}`);
          return { fault: id, priorWeight: 1, samples: samplesOf(plan, fault, 2) };
        }),
      );
      writeAtlas(atlasFile(folder, 'school'), atlas);
      const { exit, stdout } = diagnose('school-cold-classrooms', '--atlas', folder);
      expect(exit).toBe(0);
      expect(stdout).toMatch(/difficulty [1-5] of 5, \d+ minutes/);
      expect(stdout).toContain('With that the cause is known.');
      expect(stdout).toContain('The permitted checks tell it from every other cause.');
      const asData = JSON.parse(
        diagnose('school-cold-classrooms', '--json', '--atlas', folder).stdout,
      ) as unknown;
      expect(asData).toMatchObject({ found: true, rounds: [{ inseparable: [] }] });
      const unknown = diagnose('school-hot-boiler-cold-hall', '--atlas', folder);
      expect(unknown).toMatchObject({ exit: 2, stdout: '' });
      expect(unknown.stderr).toMatch(/circulating pump fails.*flamewright atlas/s);
    },
    LONG_MS,
  );
});

describe('learners', () => {
  it('refuses a count of seeds that is none', async () => {
    for (const seeds of ['0', '2.5', 'many']) {
      const outcome = await runLongCommand(['learners', '--seeds', seeds], ROOT, () => {});
      expect(outcome).toMatchObject({ exit: 2, stdout: '' });
      expect(outcome?.stderr).toContain('a whole number from 1');
    }
  });

  it('says what makes an atlas where there is none', async () => {
    const nowhere = join(folder, 'nowhere');
    const outcome = await runLongCommand(['learners', '--atlas', nowhere], ROOT, () => {});
    expect(outcome).toMatchObject({ exit: 2, stdout: '' });
    expect(outcome?.stderr).toContain('flamewright atlas');
  });
});
