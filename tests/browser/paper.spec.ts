/** A paper for a class: chosen, made, looked at, printed, and taken away as a file. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { unzipSync } from 'fflate';
import { expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';

test('a paper is made by its number, printed on A4 with its key apart, and saved in both formats', async ({
  page,
}) => {
  await page.goto('/#/teach');
  await page.getByRole('link', { name: 'A paper for a class' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'A paper for a class' })).toBeFocused();
  await page.getByLabel('Number of the paper').fill('0');
  await expect(page.getByText('a whole number from 1 to 9999')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Make the paper' })).toBeDisabled();
  await page.getByLabel('Number of the paper').fill('417');
  await page.getByLabel('Questions', { exact: true }).fill('2');
  await page.getByRole('button', { name: 'School, heating boiler' }).click();
  await page.getByRole('button', { name: 'Make the paper' }).click();
  await expect(page.getByRole('progressbar', { name: 'Questions made' })).toBeVisible();
  const sheet = page.locator('.paper-sheet');
  await expect(
    sheet.getByRole('heading', { name: 'Flamewright paper 417', exact: true }),
  ).toBeVisible({
    timeout: 60_000,
  });
  await expect(page.getByText(/^Paper 417 with 2 questions\./)).toBeInViewport();
  await expect(page.getByRole('button', { name: 'Make the paper' })).toBeFocused();
  await expect(sheet.locator('.paper-question')).toHaveCount(2);
  await expect(sheet.locator('.paper-entry')).toHaveCount(2);
  await expect(sheet.locator('.paper-short').getByRole('listitem')).toHaveCount(2);
  await expectNothingSerious(page, 'main');

  const package_ = await saved(page, 'Save as QTI 2.1 package');
  expect(package_.name).toBe('flamewright-paper-417-qti.zip');
  const files = Object.keys(unzipSync(package_.bytes));
  expect(files).toHaveLength(4);
  expect(files[0]).toBe('imsmanifest.xml');
  const gift = await saved(page, 'Save as GIFT');
  const text = new TextDecoder().decode(gift.bytes);
  const [asked = ''] = await sheet.locator('.paper-question .paper-asks').allTextContents();
  expect(text.match(/^::/gm)).toHaveLength(2);
  expect(text).toContain(asked.replaceAll(':', '\\:'));

  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('button')).toHaveCount(0);
  await expect(page.locator('.front-foot')).toBeHidden();
  const pages = await pagesOf(page);
  // The questions, then the key on a page of its own.
  expect(pages).toBeGreaterThanOrEqual(2);
  const left = await sheet.evaluate((element) => element.getBoundingClientRect().left);
  expect(left).toBe(0);
  expect(
    await page.locator('.paper-key').evaluate((key) => getComputedStyle(key).breakBefore),
  ).toBe('page');
  await page.emulateMedia({ media: 'screen' });

  await page.setViewportSize({ width: 390, height: 844 });
  await expectFits(page);
});

/** What a button hands over to the browser to keep. */
async function saved(page: Page, button: string) {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  const download = await waiting;
  const bytes = new Uint8Array(readFileSync(await download.path()));
  await expect(page.getByText(`Saved: ${download.suggestedFilename()}`)).toBeVisible();
  return { name: download.suggestedFilename(), bytes };
}

/** Sheets of A4 it takes. */
async function pagesOf(page: Page): Promise<number> {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  // 210 mm by 297 mm in points.
  expect(pdf).toMatch(/\/MediaBox \[0 0 59[45](\.\d+)? 84[12](\.\d+)?\]/);
  return pdf.match(/\/Type \/Page\b/g)?.length ?? 0;
}
