import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCommand, runLongCommand } from '../../src/cli/commands/index.ts';
import { assembleAtlas, encodeAtlas, planOf, samplesOf } from '../../src/diagnosis/index.ts';
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
      writeFileSync(join(folder, 'school.json'), encodeAtlas(atlas));
      const { exit, stdout } = diagnose('school-cold-classrooms', '--atlas', folder);
      expect(exit).toBe(0);
      expect(stdout).toMatch(/difficulty [1-5] of 5, \d+ minutes/);
      expect(stdout).toContain('With that the cause is known.');
      expect(stdout).toContain('The permitted checks tell it from every other cause.');
      const asData = JSON.parse(
        diagnose('school-cold-classrooms', '--json', '--atlas', folder).stdout,
      ) as { found: boolean; inseparable: unknown[] };
      expect(asData).toMatchObject({ found: true, inseparable: [] });
    },
    LONG_MS,
  );
});
