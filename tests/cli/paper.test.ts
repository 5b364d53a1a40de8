import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parseArguments } from '../../src/cli/arguments.ts';
import { atlasFolder } from '../../src/cli/atlas/files.ts';
import { runLongCommand } from '../../src/cli/commands/index.ts';
import { paperCards } from '../../src/cli/paper/cards.ts';
import { paperQuestions } from '../../src/cli/paper/questions.ts';
import { SPEC, wantedFrom } from '../../src/cli/paper/wanted.ts';
import { bankFile, readBank } from '../../src/cli/quiz/bank-file.ts';
import { sayMessage } from '../../src/i18n/index.ts';
import { ITEM_KINDS, type ItemCard } from '../../src/quiz/index.ts';
import { giftText, paperText, qtiFiles } from '../../src/records/index.ts';
import { paperWords } from '../../src/wording/index.ts';
import { ITEM_SCHEMA, missingForSchemas, schemaProblems } from '../records/qti-schemas.ts';
import { readGift } from '../records/read-gift.ts';
import { library } from '../support/library.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const SMALL = ['--plant', 'school', '--kind', 'cause', '--count', '2'];
/** Nothing is run for these. */
const QUICK = ['--plant', 'school', '--kind', 'calculation'];
const CARD: ItemCard = {
  id: 'cause/dairy/1',
  kind: 'cause',
  plant: 'dairy',
  topic: 'cause/fan',
  skills: [],
  difficulty: 0,
  place: 0,
};
const paper = async (...words: string[]) => {
  const told: string[] = [];
  const outcome = await runLongCommand(['paper', ...words], ROOT, (line) => told.push(line));
  if (outcome === null) throw new Error('no such command');
  return { ...outcome, told };
};

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'flamewright-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('paper', () => {
  it('gives the same questions for the same number as text with their key and as a package', async () => {
    const text = await paper('--number', '417', ...SMALL);
    expect(text).toMatchObject({ exit: 0, stderr: '' });
    expect(text.told.at(-1)).toBe('2 of 2 questions');
    expect(text.stdout).toMatch(/^Flamewright paper 417\n/);
    expect(text.stdout.match(/^Question 2/gm)).toHaveLength(2);
    expect(text.stdout.match(/\(Right\)/g)).toHaveLength(2);
    const file = join(folder, 'paper.zip');
    const { stdout } = await paper('--number=417', '--as', 'qti', '--to', file, ...SMALL);
    expect(stdout).toBe(`written: ${file}, 2 questions\n`);
    const [, , ...items] = Object.values(unzipSync(readFileSync(file)));
    expect(items).toHaveLength(2);
    for (const item of items) {
      const choices = new TextDecoder().decode(item).matchAll(/<simpleChoice[^>]*>([^<]*)</g);
      for (const [, choice = ''] of choices) expect(text.stdout).toContain(`. ${choice}\n`);
    }
  });

  it('says how many there are where there are fewer than asked for, and prints them as a page', async () => {
    const few = ['--skill', 'combustion', ...QUICK, '--count', '50', '--as', 'html'];
    const { told, stdout } = await paper(...few);
    const asked = stdout.match(/<h3>Question \d+<\/h3>/g) ?? [];
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.length).toBeLessThan(50);
    expect(told.at(-1)).toMatch(new RegExp(`^there are only ${asked.length} such questions`));
    expect(stdout).toMatch(/^<!doctype html>/);
    expect(stdout).toContain('@page');
  });

  it('refuses a file that cannot be written, and says so', async () => {
    const file = join(folder, 'no', 'such', 'paper.txt');
    const { exit, stderr } = await paper('--to', file, ...QUICK, '--count', '1');
    expect(exit).toBe(2);
    expect(stderr).toContain('could not be written');
  });

  it.each([
    [['--number', '0'], /--number has '0'.*whole number from 1 to 9999/],
    [['--number', '4.5'], /--number has '4.5'/],
    [['--count', '51'], /--count has '51'.*from 1 to 50/],
    [['--plant', 'diary'], /--plant has 'diary'.*dairy, laundry or school.*mean dairy/],
    [['--skill', 'air,fule'], /--skill has 'fule'.*mean fuel/],
    [['--kind', 'riddle'], /--kind has 'riddle'.*calculation/],
    [['--as', 'pdf'], /--as has 'pdf'.*text, html, gift or qti/],
    [['--as', 'qti'], /--to FILE/],
    [['417'], /417.*one too many/],
  ])('refuses %j and says what would do', (words, said) => {
    expect(mistakeOf(words).replaceAll('"', "'")).toMatch(said);
  });
});

/** Of the arguments alone, as the command says it. */
function mistakeOf(words: readonly string[]): string {
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return sayMessage(parsed.mistake);
  const cards: ItemCard[] = [{ ...CARD, skills: ['air', 'fuel'] }];
  const wanted = wantedFrom(parsed.value.options, library, cards);
  return wanted.ok ? 'nothing is wrong' : sayMessage(wanted.mistake);
}

const PLANT = 'school';

describe('an item of every kind that is shipped, and a written one', () => {
  it('leaves in every format: whole in GIFT and text, in order by the schema of QTI', (test) => {
    const bank = readBank(bankFile(ROOT));
    const cards = bank === null ? [] : paperCards(bank, library);
    // Of one plant, so that one atlas is read; and one that an author wrote.
    const cardOf = (kind: string) => cards.find((one) => one.kind === kind && one.plant === PLANT);
    const written = cards.find(({ id, plant }) => id.startsWith('written/') && plant === '');
    const ids = [...ITEM_KINDS.map(cardOf), written].map((card) => card?.id ?? 'none');
    expect(ids).not.toContain('none');
    const made = paperQuestions(library, atlasFolder(ROOT), ids, () => {});
    if (!made.ok) throw new Error(`no atlas of ${made.plantWithoutAtlas}`);
    expect(made.leftOut).toEqual([]);
    const whole = { number: 1, questions: made.questions, words: paperWords() };
    const gift = readGift(giftText(whole));
    expect(gift.map(({ title }) => title).sort()).toEqual([...ids].sort());
    const text = paperText(whole);
    for (const { item, category } of made.questions) {
      expect(text).toContain(item.asks);
      expect(category).toMatch(/^[A-Z]/);
      expect(gift.find(({ title }) => title === item.id)?.category).toBe(category);
    }
    const missing = missingForSchemas();
    if (missing !== null) return test.skip(missing);
    const [, ...files] = qtiFiles(whole).values();
    expect(schemaProblems(files, ITEM_SCHEMA)).toBe('');
  });
});
