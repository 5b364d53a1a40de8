/** A lesson in the browser, by keyboard alone, and at every size. */
import type { Page } from '@playwright/test';
import { expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';

const ADDRESS = '/#/practise/lesson/dairy-guided-start';
/** Stops without something to break that may come before the first with it. */
const MOST_STOPS = 15;

test('by keyboard alone: begin, answer, break it and watch, put it back, run on', async ({
  page,
}) => {
  await page.goto(ADDRESS);
  await press(page, 'Begin the start');
  const box = page.locator('.lesson-box');
  const breaking = page.getByRole('button', { name: 'Break it and watch' });
  for (let stop = 1; stop <= MOST_STOPS; stop += 1) {
    await expect(box.getByRole('heading', { level: 2 })).toContainText(`Stop ${stop} of`);
    await answer(page);
    if (await breaking.isVisible()) break;
    await press(page, 'Run to the next stop');
  }
  await expect(box).toBeFocused();
  const head = await page.locator('html').getAttribute('data-run-head');
  await press(page, 'Break it and watch');
  await expect(page.locator('.break-it[data-broken="true"]')).toBeVisible();
  await expect(page.locator('html')).not.toHaveAttribute('data-run-head', head ?? '');
  await press(page, 'Put it back');
  await expect(page.locator('html')).toHaveAttribute('data-run-head', head ?? '');
  await press(page, 'Run to the next stop');
  await expect(box.getByRole('button', { name: 'Break it and watch' })).toHaveCount(0);
});

test('a lesson is taken up where it was left', async ({ page, context }) => {
  await page.goto(ADDRESS);
  await press(page, 'Begin the start');
  await answer(page);
  const said = await page.locator('.question').textContent();
  await page.close();
  const again = await context.newPage();
  await again.goto(ADDRESS);
  await expect(again.locator('.question')).toHaveText(said ?? '');
});

test('axe finds nothing serious before, during and after a stop', async ({ page }) => {
  await page.goto(ADDRESS);
  await page.getByRole('button', { name: 'Begin the start' }).waitFor();
  await expectNothingSerious(page, 'body');
  await press(page, 'Begin the start');
  await page.locator('.option').first().waitFor();
  await expectNothingSerious(page, 'body');
  await answer(page);
  await expectNothingSerious(page, '.side');
});

for (const width of [390, 820, 1366, 1920]) {
  test(`at ${width} wide a lesson fits the screen and its targets are 44 px`, async ({ page }) => {
    await page.setViewportSize({ width, height: width === 390 ? 844 : 1080 });
    await page.goto(ADDRESS);
    await page.getByRole('button', { name: 'Begin the start' }).click();
    await page.locator('.option').first().waitFor();
    await expectFits(page);
  });
}

/** The first answer, or the way on where nothing is asked; by keyboard. */
async function answer(page: Page): Promise<void> {
  const first = page.locator('.lesson-box').locator('.option, button').first();
  await first.waitFor();
  await expect(page.locator('html')).toHaveAttribute('data-run-mode', 'paused');
  const way = page.locator('.option').or(page.getByRole('button', { name: 'Go on', exact: true }));
  await way.first().focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^(Run to the next stop|To the end)$/ }).waitFor();
}

async function press(page: Page, name: string): Promise<void> {
  const button = page.getByRole('button', { name, exact: true });
  await expect(button).toBeEnabled();
  await button.focus();
  await page.keyboard.press('Enter');
}
