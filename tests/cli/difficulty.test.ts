import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/commands/index.ts';
import { bankFile, readBank } from '../../src/cli/quiz/bank-file.ts';
import type { GivenAnswer, ItemCard } from '../../src/quiz/index.ts';
import { writeRecord } from '../../src/records/answers/index.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'difficulty-'));
const STARTED = '2031-03-03T08:00:00.000Z';
const cards = readBank(bankFile(ROOT))?.items ?? [];
const [card] = cards.filter(({ kind }) => kind === 'cause') as [ItemCard];

function answerOf(
  { id, kind, plant, topic, skills, difficulty }: ItemCard,
  right: boolean,
): GivenAnswer {
  return {
    item: id,
    kind,
    plant,
    topic,
    skills,
    difficulty,
    mode: 'short',
    quizStartedISO: STARTED,
    atISO: '2031-03-03T08:01:00.000Z',
    response: { is: 'choice', option: 0 },
    right,
    confidence: 55,
  };
}

/** Files of a class in which some were right. */
function classOf(count: number, right: number): readonly string[] {
  return Array.from({ length: count }, (_, i) => {
    const file = join(folder, `learner-${count}-${i}.json`);
    writeFileSync(
      file,
      writeRecord({ answers: [answerOf(card, i < right)], quizzes: [], erasedISO: null }),
    );
    return file;
  });
}

function said(...words: readonly string[]): string {
  const { exit, stdout } = runCommand(['difficulty', ...words], ROOT);
  expect(exit).toBe(0);
  return stdout;
}

describe('flamewright difficulty', () => {
  it('moves no item that fewer than 24 learners have answered', () => {
    expect(said(...classOf(23, 1))).toMatch(/no item has been answered by 24 learners/);
  });

  it('makes an item harder that few get right, and easier that nearly all do', () => {
    const moved = (right: number) => {
      const found = / ([−-]?[\d.]+) by the atlas, ([−-]?[\d.]+) by 24 learners/.exec(
        said(...classOf(24, right)),
      );
      return Number(found?.[2]) - Number(found?.[1]);
    };
    expect(moved(6)).toBeGreaterThan(0.3);
    expect(moved(23)).toBeLessThan(-0.1);
  });

  it('counts a file that is named twice once', () => {
    const files = classOf(12, 3);
    expect(said(...files, ...files)).toMatch(/no item has been answered/);
  });

  it('leaves the bank as it is unless it is told to write', () => {
    const before = readFileSync(bankFile(ROOT), 'utf8');
    said(...classOf(24, 3));
    expect(readFileSync(bankFile(ROOT), 'utf8')).toBe(before);
  });

  it.each([
    ['is no file of answers', '{"file":"shopping"}', /this is no file of quiz answers/],
    [
      'has a broken answer',
      writeRecord({
        answers: [{ ...answerOf(card, true), confidence: 56 as never }],
        quizzes: [],
        erasedISO: null,
      }),
      /answers\.0\.confidence is not as it should be/,
    ],
  ])('refuses one that %s, with the place', (_what, text, message) => {
    const file = join(folder, 'broken.json');
    writeFileSync(file, text);
    const { exit, stderr } = runCommand(['difficulty', file], ROOT);
    expect(exit).toBe(2);
    expect(stderr).toMatch(message);
  });
});
