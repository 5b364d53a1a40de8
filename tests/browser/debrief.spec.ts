/** The debrief: each claim judged, luck told as luck, and a page that can be printed. */
import type { Page } from '@playwright/test';
import { expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';

const ADDRESS = '/#/practise/job/dairy-after-the-road-works';

test('a right cause without a reading is told as luck, a wrong one as wrong, what stands as standing', async ({
  page,
}) => {
  await begin(page);
  await openTab(page, 'Card');
  await page.getByRole('button', { name: 'Read the commissioning sheet' }).click();
  await openTab(page, 'Finish');
  await claim(page, 'strainer');
  await page.getByRole('button', { name: 'Name another cause as well' }).click();
  await claim(page, 'fan belt');
  await close(page);
  const [right, wrong] = [page.locator('.judged > li').nth(0), page.locator('.judged > li').nth(1)];
  await expect(right).toContainText('Right');
  await expect(right).toContainText('a lucky guess');
  await expect(wrong).toContainText('Wrong');
  await expect(wrong).toContainText('it was a guess');
  await expect(page.locator('.truth')).toContainText('it will be back');
  await expect(page.getByRole('table')).toContainText('People and papers');
  await expectNothingSerious(page, 'body');
  await expectFits(page);
  await expectPrints(page);
});

/** One or two A4 pages with nothing on them to press. */
async function expectPrints(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('button')).toHaveCount(0);
  const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  const pages = [...pdf.matchAll(/\/Type\s*\/Page\b/g)].length;
  expect(pages).toBeGreaterThan(0);
  expect(pages).toBeLessThanOrEqual(2);
}

async function begin(page: Page): Promise<void> {
  await page.goto(ADDRESS);
  await page.getByRole('button', { name: 'Go to the plant' }).click();
  await page.getByRole('button', { name: 'Begin work' }).click();
}

async function openTab(page: Page, name: string): Promise<void> {
  await page.locator('.bench').getByRole('tab', { name, exact: true }).click();
}

async function claim(page: Page, part: string): Promise<void> {
  await page.getByRole('combobox', { name: 'Part', exact: true }).selectOption(part);
  await page.getByRole('button', { name: 'Name it' }).click();
}

async function close(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Mended/ }).click();
  await page.getByLabel('What was done').fill('Nothing yet.');
  await page.getByRole('button', { name: 'Sign and hand over' }).click();
  await page.getByRole('button', { name: 'Close the job' }).click();
  await page.getByRole('heading', { name: 'What was the matter' }).waitFor();
}
