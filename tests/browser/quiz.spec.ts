/** A quiz from its beginning to its result, and what the device keeps of it. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expectContrast, expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';
import { activate, tabTo } from './keyboard-hands.ts';
import {
  answerByKeys,
  answerTo,
  asked,
  itemsOf,
  keptAnswers,
  openQuiz,
  RESULT,
  STARTED,
  seed,
  TAKE,
} from './quiz-hands.ts';

const idsOf = (cards: readonly { readonly id: string }[]) => cards.map(({ id }) => id);
const CAUSES = itemsOf('cause', 3);
const VERDICT = /^(Right|Not right)$/;

test('two clicks lead from the first page to a question, and a short quiz goes by keys alone', async ({
  page,
}) => {
  test.slow();
  // Which questions are asked must not differ from one time to the next.
  await page.addInitScript(() => {
    Math.random = () => 0.25;
  });
  await page.goto('/');
  await activate(page, page.getByRole('link', { name: /^Quiz/ }));
  await expect(page.getByRole('heading', { level: 1, name: 'Quiz' })).toBeFocused();
  for (const name of [/^What I got wrong/, /^Due for review/]) {
    await expect(page.getByRole('button', { name })).toHaveAttribute('aria-disabled', 'true');
    await tabTo(page, page.getByRole('button', { name }));
  }
  await activate(page, page.getByRole('button', { name: /^Short 5 questions/ }));
  for (let number = 1; number <= 5; number += 1) {
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(`${number} of 5`);
    await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
    await answerByKeys(page);
    await expect(page.getByRole('heading', { name: VERDICT })).toBeFocused();
    await expect(page.locator('.quiz-verdict')).toContainText('Fairly sure, 75 %');
    await activate(
      page,
      page.getByRole('button', { name: number < 5 ? 'Next question' : 'See the result' }),
    );
  }
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^\d of 5 right$/);
  await expect(page.locator('.quiz-questions > li')).toHaveCount(5);
  // Each answer is a result of the learner map, and the quiz one line of it.
  await activate(page, page.getByRole('link', { name: 'Learner map' }));
  await expect(page.locator('.learner-history tbody tr')).toHaveCount(1);
  await expect(page.locator('.learner-history tbody tr')).toContainText('of 5 questions right');
});

test('nothing is taken before there is an answer and how sure one is', async ({ page }) => {
  await seed(page, openQuiz('short', idsOf(CAUSES.slice(0, 1))));
  await page.goto(TAKE);
  await asked(page);
  await page.getByRole('button', { name: 'Answer', exact: true }).click();
  await expect(page.locator('.quiz-give')).toContainText('Give an answer first.');
  await page.locator('.item-response').getByRole('radio').first().check();
  await page.getByRole('button', { name: 'Answer', exact: true }).click();
  await expect(page.locator('.quiz-give')).toContainText('Say how sure you are first.');
  await expect(page.locator('.quiz-verdict')).toHaveCount(0);
});

test('a question that is no more is said to be none, is left out, and holds up nothing', async ({
  page,
}) => {
  const gone = ['cause/nowhere/1', 'cause/nowhere/2'];
  await seed(page, openQuiz('short', [...gone, ...idsOf(CAUSES.slice(0, 1)), 'cause/nowhere/3']));
  await page.goto(TAKE);
  for (const number of [1, 2]) {
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(`${number} of 4`);
    await expect(page.getByRole('alert')).toContainText('not known to this version of the page');
    await page.getByRole('button', { name: 'Leave this question out' }).click();
  }
  await answerByKeys(page);
  await page.getByRole('button', { name: 'Next question' }).click();
  await page.getByRole('button', { name: 'Leave this question out' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^[01] of 4 right$/);
  await expect(page.getByText('Left open: 3.')).toBeVisible();
});

test("two pages with the same quiz go on with one another's, and count an answer once", async ({
  page,
  context,
}) => {
  const [calculation] = itemsOf('calculation', 1);
  await seed(page, openQuiz('short', [calculation?.id ?? '', ...idsOf(CAUSES.slice(0, 1))]));
  await page.goto(TAKE);
  await asked(page);
  const other = await context.newPage();
  await other.goto(TAKE);
  await asked(other);
  await page.getByRole('textbox').fill('2,5');
  await expect(other.getByRole('textbox')).toHaveValue('2.5');
  await page.getByRole('radio', { name: /^Certain/ }).check();
  await other.getByRole('button', { name: 'Answer', exact: true }).click();
  for (const each of [page, other]) {
    await expect(each.locator('.quiz-verdict')).toContainText('Certain, 95 %');
  }
  await page.getByRole('button', { name: 'Next question' }).click();
  await expect(other.getByRole('heading', { level: 1 })).toHaveText('2 of 2');
  await answerByKeys(other);
  await page.getByRole('button', { name: 'See the result' }).click();
  for (const each of [page, other]) {
    await expect(each.getByRole('heading', { level: 1 })).toHaveText(/^[012] of 2 right$/);
    await expect(each.locator('.quiz-questions > li')).toHaveCount(2);
  }
  const kept = await page.evaluate(() =>
    JSON.parse(localStorage.getItem('flamewright.quiz') ?? ''),
  );
  expect([kept.answers.length, kept.quizzes.length]).toEqual([2, 1]);
});

test('leaving in the middle keeps the question and what was chosen; reasons stay after a reload', async ({
  page,
}) => {
  await seed(page, openQuiz('short', idsOf(CAUSES.slice(0, 2))));
  await page.goto(TAKE);
  await asked(page);
  const second = page.locator('.item-response').getByRole('radio').nth(1);
  await second.check();
  await page.getByRole('radio', { name: /^Certain/ }).check();
  const question = await page.locator('.quiz-columns').getByRole('radio').count();
  await page.getByRole('link', { name: /Leave; it is kept/ }).click();
  await expect(page.locator('.quiz-in-hand')).toContainText('0 of 2 answered');
  await page.reload();
  await page.getByRole('link', { name: 'Go on' }).click();
  await asked(page);
  await expect(page.locator('.quiz-columns').getByRole('radio')).toHaveCount(question);
  await expect(second).toBeChecked();
  await expect(page.getByRole('radio', { name: /^Certain/ })).toBeChecked();

  await page.getByRole('button', { name: 'Answer', exact: true }).click();
  await page.locator('.quiz-verdict').waitFor();
  await page.reload();
  await expect(page.locator('.quiz-verdict')).toContainText('Certain, 95 %');
  await page.getByRole('button', { name: 'Next question' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('2 of 2');

  await page.getByRole('link', { name: /Leave; it is kept/ }).click();
  await page.getByRole('button', { name: /^Put away/ }).click();
  await page.getByRole('button', { name: 'Put away', exact: true }).click();
  await expect(page.locator('.quiz-in-hand')).toHaveCount(0);
  await expect(page.locator('.quiz-recent')).toContainText('of 2 right');
});

test('an exam tells nothing and may be changed until it is handed in; then it gives all reasons', async ({
  page,
}) => {
  const items = idsOf(CAUSES);
  const answer = (place: number) => ({
    type: 'answer',
    atISO: STARTED,
    place,
    response: { is: 'choice', option: 0 },
    confidence: 55,
  });
  await seed(
    page,
    openQuiz('exam', items, [answer(0), { type: 'go to', atISO: STARTED, place: 1 }, answer(1)]),
  );
  await page.goto(TAKE);
  await asked(page);
  await expect(page.getByRole('heading', { name: '2 of 3 answered' })).toBeVisible();
  const third = page.locator('.item-response').getByRole('radio').nth(2);
  await third.check();
  await page.getByRole('button', { name: 'Question 1, answered' }).click();
  await asked(page);
  await page.getByRole('button', { name: 'Question 2, answered' }).click();
  await expect(third).toBeChecked();
  await expect(page.locator('.quiz-verdict, .reasons')).toHaveCount(0);

  await page.getByRole('button', { name: 'Hand in' }).click();
  await expect(page.getByRole('alert')).toContainText('One question is not answered.');
  await page.getByRole('button', { name: 'Go on answering' }).click();
  await expectNothingSerious(page, 'body');
  await page.getByRole('button', { name: 'Hand in' }).click();
  await page.getByRole('alert').getByRole('button', { name: 'Hand in' }).click();
  await expect(page).toHaveURL(RESULT);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^\d of 3 right$/, {
    timeout: 45_000,
  });
  await expect(page.getByText('Left open: 1.')).toBeVisible();
  await page.locator('.quiz-questions summary').nth(1).click();
  await expect(page.locator('.quiz-questions details[open] .item-reasons')).toContainText(
    'your answer',
  );
  await page.goto(TAKE);
  await expect(page.getByRole('heading', { level: 1, name: 'This quiz is over' })).toBeVisible();
});

test('a week later what was answered is due, and once it is reviewed it is not', async ({
  page,
}) => {
  const [one, other] = itemsOf('cause', 2);
  if (one === undefined || other === undefined) throw new Error('no items');
  await seed(
    page,
    keptAnswers([answerTo(one, STARTED, false), answerTo(other, '2026-05-04T09:05:00.000Z', true)]),
  );
  await page.clock.setFixedTime('2026-05-04T09:10:00.000Z');
  await page.goto('/#/quiz');
  const due = page.getByRole('button', { name: /^Due for review/ });
  await expect(due).toContainText(/Nothing due\. Next: \d+ May\./);
  await expect(page.getByRole('button', { name: /^What I got wrong/ })).toContainText('1 question');
  await page.clock.setFixedTime('2026-05-11T09:10:00.000Z');
  await page.reload();
  await expect(due).toContainText(/[12] questions?/);
  await due.click();
  await answerByKeys(page);
  await page.locator('.quiz-verdict').waitFor();
  await page.getByRole('link', { name: /Leave; it is kept/ }).click();
  await expect(due).toContainText(/Nothing due|1 question/);
});

test('answers go out as a file, are erased, and come in again; a broken file is refused with its place', async ({
  page,
}) => {
  await seed(
    page,
    keptAnswers(CAUSES.map((card, i) => answerTo(card, `2026-05-04T09:0${i}:00.000Z`, i === 1))),
  );
  await page.goto('/#/quiz');
  const text = await exported(page, 'Export answers', 'flamewright-quiz.json');
  const table = await exported(page, 'Export as CSV', /\.csv$/);
  const lines = table.split('\r\n').filter((line) => line !== '');
  expect(lines).toHaveLength(1 + CAUSES.length);
  // Each with what was asked, in words.
  expect(lines.slice(1).filter((line) => line.includes('?'))).toHaveLength(CAUSES.length);
  expect(JSON.parse(await exported(page, 'Export as xAPI', /\.json$/)).length).toBeGreaterThan(2);

  await page.getByRole('button', { name: 'Erase quiz answers' }).click();
  await page.getByRole('button', { name: 'Erase', exact: true }).click();
  await expect(page.locator('.quiz-said')).toContainText('All quiz answers are erased.');
  await bringIn(page, text.replace('"confidence": 75', '"confidence": 76'));
  await expect(page.locator('.quiz-said')).toContainText('answers.0.confidence');
  await expect(page.locator('.quiz-said')).toContainText('35, 55, 75 or 95');
  await bringIn(page, text);
  await expect(page.locator('.quiz-said')).toContainText('3 answers taken in.');
  await expect(page.locator('.quiz-calibration')).toContainText('1 of 3 right, 33 %');
});

test.describe('on a phone, by touch', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  test('a question, its reasons and the result fit, and every target is large enough', async ({
    page,
  }) => {
    await seed(
      page,
      openQuiz(
        'short',
        idsOf([...CAUSES.slice(0, 1), ...itemsOf('where', 1), ...itemsOf('next check', 1)]),
      ),
    );
    await page.goto('/#/quiz');
    await expectFits(page);
    await page.getByRole('link', { name: 'Go on' }).tap();
    for (const next of ['Next question', 'Next question', 'See the result']) {
      await asked(page);
      await expectFits(page);
      // What is asked stands at the top too where a record comes between.
      if (next === 'Next question') {
        await page.locator('.quiz-to-answer').tap();
        await expect(page.locator('.quiz-asks')).toBeInViewport();
      }
      await page.locator('.item-response').getByRole('radio').last().tap();
      await page.locator('.quiz-sure-choice').nth(1).tap();
      await page.getByRole('button', { name: 'Answer', exact: true }).tap();
      await expect(page.getByRole('heading', { name: VERDICT })).toBeInViewport();
      await expectFits(page);
      await page.getByRole('button', { name: next }).tap();
    }
    await expect(page).toHaveURL(RESULT);
    await page.locator('.quiz-questions summary').first().tap();
    await page.locator('.item-reasons').waitFor();
    await expectFits(page);
  });
});

for (const theme of ['light', 'dark'] as const) {
  test.describe(`in ${theme} colours`, () => {
    test.use({ colorScheme: theme });
    const expectGood = theme === 'light' ? expectNothingSerious : expectContrast;
    test('beginning, question, reasons and result are free of what axe calls serious', async ({
      page,
    }) => {
      const [one, other] = itemsOf('cause', 2);
      if (one === undefined || other === undefined) throw new Error('no items');
      await seed(page, {
        ...openQuiz('short', [one.id]),
        ...keptAnswers([answerTo(other, '2026-05-03T09:00:00.000Z', true)]),
      });
      await page.goto('/#/quiz');
      await page.locator('.quiz-scale').waitFor();
      await expectGood(page, 'body');
      await page.goto(TAKE);
      await asked(page);
      await expectGood(page, 'body');
      await page.locator('.item-response').getByRole('radio').first().check();
      await page.getByRole('radio', { name: /^Guessing/ }).check();
      await page.getByRole('button', { name: 'Answer', exact: true }).click();
      await page.locator('.quiz-verdict').waitFor();
      await expectGood(page, 'body');
      await page.getByRole('button', { name: 'See the result' }).click();
      await page.locator('.quiz-questions summary').first().click();
      await page.locator('.item-reasons').waitFor();
      await expectGood(page, 'body');
    });
  });
}

async function exported(page: Page, name: string, file: string | RegExp): Promise<string> {
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(file);
  return readFileSync(await download.path(), 'utf8');
}

async function bringIn(page: Page, text: string): Promise<void> {
  await page.getByLabel('Import answers').setInputFiles({
    name: 'answers.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
}
