/** Drills in the browser. */
import type { Page } from '@playwright/test';
import { expectNothingSerious } from './axe.ts';
import { expect, test } from './fixtures.ts';

const ADDRESS = '/#/practise/drill/laundry-where-the-string-ends';

test('one question, one answer, and why each is so', async ({ page }) => {
  await begin(page);
  await page.getByRole('radio', { name: 'at the control fuse' }).check();
  await page.getByRole('button', { name: 'That is my answer' }).click();
  await expect(page.locator('.question')).toContainText('Not that.');
  await expect(page.locator('[data-right="true"]')).toContainText('at the high limit');
  await expect(page.getByRole('heading', { name: 'What was the matter' })).toBeVisible();
  await expectNothingSerious(page, 'body');
});

test('the time runs with the plant, and when it is up no answer is taken', async ({ page }) => {
  await begin(page);
  await expectNothingSerious(page, 'body');
  await page.getByRole('button', { name: 'Run at 20 times real time' }).click();
  await expect(page.locator('.minutes')).toHaveText('Time is up.', { timeout: 30_000 });
  await expect(page.getByRole('radio')).toHaveCount(0);
  await page.getByRole('button', { name: 'See the answer' }).click();
  await expect(page.getByText('No answer was given in time.')).toBeVisible();
});

async function begin(page: Page): Promise<void> {
  await page.goto(ADDRESS);
  await page.getByRole('button', { name: /^Begin/ }).click();
  await page.getByRole('radio').first().waitFor();
}
