import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it, vi } from 'vitest';
import { loadBank } from '../../../src/app/quiz/load-bank.ts';
import { paperCards } from '../../../src/cli/paper/cards.ts';
import { bankFile, readBank } from '../../../src/cli/quiz/bank-file.ts';
import { composePaper, type PaperChoice } from '../../../src/records/index.ts';
import { library } from '../../support/library.ts';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const ALL = { count: 20, plants: [], skills: [], kinds: [] } as const;

describe('the paper of a number', () => {
  it('asks the same on the page and on the command line, written questions included', async () => {
    const file = bankFile(ROOT);
    vi.stubGlobal('fetch', async () => new Response(readFileSync(file)));
    const pageCards = await loadBank();
    vi.unstubAllGlobals();
    const bank = readBank(file);
    if (bank === null) throw new Error('no bank');
    const cards = paperCards(bank, library);
    const choices: PaperChoice[] = [
      ...[1, 417, 9999].map((number) => ({ ...ALL, number })),
      { ...ALL, number: 417, plants: ['school'], skills: ['air', 'wiring'] },
      { ...ALL, number: 417, kinds: ['conduct'], skills: ['conduct'] },
    ];
    const papers = choices.map((choice) => composePaper(choice, cards));
    expect(choices.map((choice) => composePaper(choice, pageCards))).toEqual(papers);
    expect(papers[0]).toHaveLength(ALL.count);
    expect(papers.flat().some((id) => id.startsWith('written/'))).toBe(true);
  });
});
