/** What the tests of the quiz have in common: items of the shipped bank, and answers to any of them. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import type { GivenAnswer, ItemCard, ItemKind, QuizMode } from '../../src/quiz/index.ts';
import { expect } from './fixtures.ts';
import { activate, check, tabTo, typeInto } from './keyboard-hands.ts';

/** Making an item runs starts in a worker; on a busy machine that takes its time. */
const MADE_MS = 45_000;

const BANK: readonly ItemCard[] = JSON.parse(
  readFileSync(
    fileURLToPath(new URL('../../assets/page/quiz/items.json', import.meta.url)),
    'utf8',
  ),
).items;

/** The first items of a kind, of one plant: it is made ready once for all of them. */
export function itemsOf(kind: ItemKind, count: number, plant = 'school'): readonly ItemCard[] {
  const found = BANK.filter((card) => card.kind === kind && card.plant === plant).slice(0, count);
  if (found.length < count) throw new Error(`the bank has too few items: ${kind}, ${plant}`);
  return found;
}

export const STARTED = '2026-05-04T09:00:00.000Z';
const NAME = STARTED.replaceAll(/\D/g, '');
export const TAKE = `/#/quiz/take/${NAME}`;
export const RESULT = new RegExp(`#/quiz/result/${NAME}$`);

/** What a device keeps of a quiz under way, as it begins. */
export function openQuiz(mode: QuizMode, items: readonly string[], more: readonly object[] = []) {
  const begin = { type: 'begin', atISO: STARTED, mode, seed: 1, items };
  return {
    [`flamewright.quiz-open.${NAME}`]: { v: 1, skill: null, drafts: [], entries: [begin, ...more] },
  };
}

export function keptAnswers(answers: readonly GivenAnswer[]) {
  return {
    'flamewright.quiz': { file: 'flamewright quiz', v: 1, erasedISO: null, quizzes: [], answers },
  };
}

export function answerTo(card: ItemCard, atISO: string, right: boolean): GivenAnswer {
  const { id: item, kind, plant, topic, skills, difficulty } = card;
  const quizStartedISO = atISO.replace(/\d\d:\d\d\.\d{3}Z$/, '00:00.000Z');
  const response = { is: 'choice', option: 0 } as const;
  const asked = { item, kind, plant, topic, skills, difficulty, mode: 'short' } as const;
  return { ...asked, quizStartedISO, atISO, response, right, confidence: 75 };
}

/** On the device before the page is opened; what the page writes later stays. */
export async function seed(page: Page, kept: Readonly<Record<string, object>>): Promise<void> {
  await page.addInitScript(
    (texts) => {
      if (localStorage.getItem('seeded') !== null) return;
      localStorage.setItem('seeded', 'yes');
      for (const [key, text] of texts) localStorage.setItem(key, text);
    },
    Object.entries(kept).map(([key, value]) => [key, JSON.stringify(value)] as const),
  );
}

export async function asked(page: Page): Promise<void> {
  await page.locator('.quiz-form').waitFor({ timeout: MADE_MS });
}

/** Anything that is an answer, with a sureness, by keys alone; the last key gives it. */
export async function answerByKeys(page: Page): Promise<void> {
  await asked(page);
  const form = page.locator('.item-response');
  if ((await form.getByRole('radio').count()) > 0) {
    await check(page, form.getByRole('radio').first());
  } else if ((await form.getByRole('textbox').count()) > 0) {
    await typeInto(page, form.getByRole('textbox').first(), '1');
  } else {
    await activate(page, form.locator('.item-leave button'));
  }
  const sure = page.getByRole('radio', { name: /^Fairly sure/ });
  await tabTo(page, page.getByRole('radio', { name: /^Guessing/ }));
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(sure).toBeChecked();
  await page.keyboard.press('Enter');
}
