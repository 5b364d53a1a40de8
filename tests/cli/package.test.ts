import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parseArguments } from '../../src/cli/arguments.ts';
import { runLongCommand } from '../../src/cli/commands/index.ts';
import { SPEC, wantedPackage } from '../../src/cli/package/wanted.ts';
import { paperCards } from '../../src/cli/paper/cards.ts';
import { bankFile, readBank } from '../../src/cli/quiz/bank-file.ts';
import { sayMessage } from '../../src/i18n/index.ts';
import { library } from '../support/library.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const [JOB] = library.jobs;
const [DRILL] = library.drills;
const TO = ['--to', 'package.zip'];

function asked(...words: string[]) {
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return parsed;
  return wantedPackage(parsed.value, library, () => {
    const bank = readBank(bankFile(ROOT));
    return bank === null ? null : paperCards(bank, library);
  });
}

function refusal(...words: string[]): string {
  const found = asked(...words);
  return found.ok ? '' : sayMessage(found.mistake);
}

function wanted(...words: string[]) {
  const found = asked(...words);
  if (!found.ok) throw new Error(sayMessage(found.mistake));
  return found.value;
}

describe('package', () => {
  it('builds nothing where it is asked for no package', async () => {
    const told: string[] = [];
    const outcome = await runLongCommand(['package', 'quiz'], ROOT, (line) => told.push(line));
    expect(outcome).toMatchObject({ exit: 2, stdout: '' });
    expect(outcome?.stderr).toContain('name it by --to FILE');
    expect(told).toEqual([]);
  });

  it('refuses what makes no package, and names the mend', () => {
    const id = JOB?.id ?? '';
    expect(refusal(id)).toContain('name it by --to FILE');
    expect(refusal(...TO)).toContain('the name of a job, a drill or a lesson, or quiz');
    expect(refusal(`${id}x`, ...TO)).toContain(`Did you mean ${id}?`);
    expect(refusal(id, ...TO, '--form', 'scrom12')).toContain('Did you mean scorm12?');
    for (const mastery of ['0', '101', 'most']) {
      expect(refusal(id, ...TO, '--mastery', mastery)).toContain('1 to 100, or none');
    }
    expect(refusal(id, ...TO, '--title', '')).toContain('1 to 200 characters');
    expect(refusal('quiz', ...TO, '--count', '51')).toContain('1 to 50');
    expect(refusal('quiz', ...TO, '--plant', 'nowhere')).toContain('--plant');
  });

  it('is of a job, a drill or a lesson by its name, with the title it has', () => {
    expect(wanted(JOB?.id ?? '', ...TO)).toMatchObject({
      about: JOB?.card.complaint,
      file: 'package.zip',
      packaged: {
        form: 'scorm12',
        title: JOB?.title,
        mastery: 0.7,
        xapi: '1.0.3',
        exercise: { kind: 'job', id: JOB?.id },
      },
    });
    const drill = wanted(DRILL?.id ?? '', ...TO, '--mastery', 'none', '--title', 'One question');
    expect(drill.packaged).toMatchObject({
      title: 'One question',
      mastery: null,
      exercise: { kind: 'drill', id: DRILL?.id },
    });
  });

  it('is of a quiz drawn as a paper is, the same for the same number and choices', () => {
    const quiz = (...more: string[]) =>
      wanted('quiz', ...TO, '--count', '6', '--plant', 'school', ...more).packaged.exercise;
    const first = quiz('--number', '7');
    if (first.kind !== 'quiz') throw new Error('no quiz');
    expect(first.mode).toBe('standard');
    expect(first.items).toHaveLength(6);
    expect(quiz('--number', '7')).toEqual(first);
    expect(quiz('--number', '8')).not.toEqual(first);
    expect(quiz('--number', '7', '--exam')).toEqual({ ...first, mode: 'exam' });
  });
});
