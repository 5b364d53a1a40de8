import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { atlasFolder } from '../../src/cli/atlas/files.ts';
import { runLongCommand } from '../../src/cli/commands/index.ts';
import { readLibrary } from '../../src/cli/library.ts';
import { paperQuestions } from '../../src/cli/paper/questions.ts';
import { bankFile, readBank } from '../../src/cli/quiz/bank-file.ts';
import { giftText, paperText, qtiFiles } from '../../src/records/index.ts';
import { paperWords } from '../../src/wording/index.ts';
import { ITEM_SCHEMA, missingForSchemas, schemaProblems } from '../records/qti-schemas.ts';
import { readGift } from '../records/read-gift.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const SMALL = ['--plant', 'school', '--kind', 'cause', '--count', '2'];
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
  it('gives the same paper for the same number, with its key, and another for another', async () => {
    const one = await paper('--number', '417', ...SMALL);
    expect(one).toMatchObject({ exit: 0, stderr: '' });
    expect(one.told.at(-1)).toBe('2 of 2 questions');
    expect((await paper('--number', '417', ...SMALL)).stdout).toBe(one.stdout);
    expect((await paper('--number', '418', ...SMALL)).stdout).not.toBe(one.stdout);
    expect(one.stdout).toMatch(/^Flamewright paper 417\n/);
    expect(one.stdout.match(/^Question 2/gm)).toHaveLength(2);
    expect(one.stdout.match(/\(Right\)/g)).toHaveLength(2);
    expect(one.stdout.match(/locked out|No start/g)?.length).toBeGreaterThanOrEqual(2);
  });

  it('gives the same questions as a page, as GIFT and as a package', async () => {
    const gift = readGift((await paper('--as', 'gift', ...SMALL)).stdout);
    expect(gift).toHaveLength(2);
    const html = (await paper('--as=html', ...SMALL)).stdout;
    expect(html).toMatch(/^<!doctype html>/);
    expect(html).toContain('@page');
    const file = join(folder, 'paper.zip');
    const { stdout } = await paper('--as', 'qti', '--to', file, ...SMALL);
    expect(stdout).toBe(`written: ${file}, 2 questions\n`);
    const held = Object.keys(unzipSync(readFileSync(file)));
    expect(held.slice(0, 2)).toEqual(['imsmanifest.xml', 'paper.xml']);
    for (const { title } of gift) {
      expect(held).toContain(`items/item-${title.replaceAll('/', '_2f_')}.xml`);
    }
  });

  it('says how many there are where there are fewer than asked for', async () => {
    const { told, stdout } = await paper(
      '--skill',
      'wiring',
      ...SMALL.slice(0, 4),
      '--count',
      '50',
    );
    const asked = stdout.slice(0, stdout.indexOf('-----')).match(/^Question \d+$/gm) ?? [];
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.length).toBeLessThan(50);
    expect(told.at(-1)).toMatch(new RegExp(`^there are only ${asked.length} such questions`));
  });

  it.each([
    [['--number', '0'], /--number has '0'.*whole number from 1 to 9999/],
    [['--number', '4.5'], /--number has '4.5'/],
    [['--count', '51'], /--count has '51'.*from 1 to 50/],
    [['--plant', 'diary'], /--plant has 'diary'.*dairy.*laundry.*school.*'dairy'/],
    [['--skill', 'air,fule'], /--skill has 'fule'.*fuel/],
    [['--kind', 'riddle'], /--kind has 'riddle'.*calculation/],
    [['--as', 'pdf'], /--as has 'pdf'.*text, html, gift.*qti/],
    [['--as', 'qti'], /--to FILE/],
    [['--to', join('no', 'such', 'folder', 'x.txt'), ...SMALL], /could not be written/],
    [['417'], /417.*one too many/],
  ])('refuses %j and says what would do', async (words, said) => {
    const { exit, stdout, stderr } = await paper(...words);
    expect({ exit, stdout }).toEqual({ exit: 2, stdout: '' });
    expect(stderr.replaceAll(/[“”"]/g, "'")).toMatch(said);
  });
});

describe('an item of every kind that is shipped', () => {
  it('leaves in every format: whole in GIFT and text, in order by the schema of QTI', (test) => {
    const bank = readBank(bankFile(ROOT))?.items ?? [];
    const kinds = [...new Set(bank.map(({ kind }) => kind))];
    expect(kinds.length).toBeGreaterThan(0);
    const ids = kinds.map((kind) => bank.find((card) => card.kind === kind)?.id ?? '');
    const library = readLibrary(ROOT);
    if (!library.ok) throw new Error('the library is not in order');
    const made = paperQuestions(library.value, atlasFolder(ROOT), ids, () => {});
    expect(made).toMatchObject({ ok: true, leftOut: [] });
    if (!made.ok) return;
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
