import { readFileSync } from 'node:fs';
import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import type { QuizEntry } from '../../machines/quiz/index.ts';
import { itemMaker, judgeQuiz, partsOfQuiz, QUIZ_WORK_REFUSALS } from '../../src/judging/index.ts';
import type { Item, ItemCard } from '../../src/quiz/index.ts';
import { FORGERIES } from '../../src/records/class/index.ts';
import { BY_THE_KEY, guesser, takeQuiz } from '../support/quiz-takers.ts';
import { atlasText } from './handed-in.ts';

const bank = JSON.parse(
  readFileSync(new URL('../../assets/page/quiz/items.json', import.meta.url), 'utf8'),
) as { readonly items: readonly ItemCard[] };
/** Soon made, and of three ways of answering. */
const IDS = ['order', 'calculation', 'conduct'].map(
  (kind) => bank.items.find((card) => card.kind === kind && card.plant === 'school')?.id ?? '',
);
const makeItem = itemMaker(library, atlasText);
const ITEMS = IDS.map((id) => makeItem(id)).filter((item): item is Item => item !== null);
const ASKED = { items: IDS, mode: 'exam' };
const START_MS = 1_772_352_000_000;
const taken = (taker: Parameters<typeof takeQuiz>[2]) => takeQuiz(ITEMS, 'exam', taker, START_MS);

describe('a quiz judged again from its entries', () => {
  it('is right throughout for whoever answers by the key, and as the page counts for a guesser', () => {
    expect(ITEMS).toHaveLength(IDS.length);
    const best = judgeQuiz(ASKED, taken(BY_THE_KEY).quiz.entries, makeItem);
    expect(best).toMatchObject({ ok: true, right: 3, asked: 3, score: 1, finished: true });
    const { quiz, given } = taken(guesser(3));
    expect(judgeQuiz(ASKED, quiz.entries, makeItem)).toMatchObject({
      ok: true,
      answers: given,
      right: given.filter(({ right }) => right).length,
    });
  });

  it('counts a question without an answer as not right, and one that is made no more for nobody', () => {
    const { entries } = taken(BY_THE_KEY).quiz;
    const last = entries.findLastIndex(({ type }) => type === 'answer');
    const unanswered = entries.filter((_, place) => place !== last);
    expect(judgeQuiz(ASKED, unanswered, makeItem)).toMatchObject({ right: 2, asked: 3 });
    const without = (id: string) => (id === IDS[0] ? null : makeItem(id));
    const judged = judgeQuiz(ASKED, entries, without);
    expect(judged).toMatchObject({ right: 2, asked: 2, score: 1, gone: [IDS[0]] });
    expect(partsOfQuiz(judged, null).remarks.map(({ code }) => code)).toEqual(['questions gone']);
  });

  it('that was never begun is all wrong', () => {
    expect(judgeQuiz(ASKED, [], makeItem)).toMatchObject({ right: 0, asked: 3, score: 0 });
  });

  it('refuses what no quiz would have taken, with its place', () => {
    const { entries } = taken(BY_THE_KEY).quiz;
    const [begin, ...rest] = entries as readonly [QuizEntry, ...QuizEntry[]];
    const answer = entries.find(({ type }) => type === 'answer') as QuizEntry;
    const why = (handed: readonly unknown[], asked = ASKED) => {
      const judged = judgeQuiz(asked, handed, makeItem);
      return judged.ok ? 'taken' : `${judged.why} at ${judged.where}`;
    };
    expect(why([...entries, answer])).toBe(`quiz refuses at entries.${entries.length}`);
    expect(why([begin, { ...answer, right: true }])).toBe('not understood at entries.1');
    expect(why([{ ...begin, items: IDS.slice(1) }, ...rest])).toBe('other questions at entries.0');
    expect(why(entries, { ...ASKED, mode: 'short' })).toBe('other questions at entries.0');
    const many = Array.from({ length: 3000 }, () => answer);
    expect(why([begin, ...many])).toBe('too long at entries.2000');
    for (const code of QUIZ_WORK_REFUSALS) expect(FORGERIES).toContain(code);
  });

  it('keeps its own score where the page claims another', () => {
    const judged = judgeQuiz(ASKED, taken(guesser(3)).quiz.entries, makeItem);
    const parts = partsOfQuiz(judged, { outcome: 1 });
    expect(parts.refused).toBe(true);
    expect(parts.outcome).toBeLessThan(1);
    expect(parts.remarks[0]).toMatchObject({ code: 'outcome differs', claimed: 1 });
    expect(partsOfQuiz(judged, { outcome: parts.outcome }).refused).toBe(false);
  });
});
