import type { Page } from '@playwright/test';
import { expectContrast, expectNothingSerious } from './axe.ts';
import { test } from './fixtures.ts';
import { expectOpen, runTo } from './run-marks.ts';

const FRONT = ['/', '/#/practise', '/#/teach', '/#/quiz'];
const BENCH = ['Panel', 'Events', 'Faults'];
const PLANT = ['List', 'Ladder'];

type Part = '.bench' | '.plant' | '.working' | 'body';

test('axe finds nothing serious on the front pages', async ({ page }) => {
  for (const address of FRONT) {
    await page.goto(address);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await expectNothingSerious(page, 'body');
  }
});

test('axe finds nothing serious on the working page, its tabs and a lockout', async ({ page }) => {
  await throughWorkingPage(page, expectNothingSerious);
});

test.describe('in dark colours', () => {
  test.use({ colorScheme: 'dark' });

  // Nothing but the colours differs.
  test('axe finds enough contrast on every page', async ({ page }) => {
    for (const address of FRONT) {
      await page.goto(address);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await expectContrast(page, 'body');
    }
    await throughWorkingPage(page, expectContrast);
  });
});

async function throughWorkingPage(
  page: Page,
  check: (page: Page, part: Part) => Promise<void>,
): Promise<void> {
  await page.goto('/#/practise/watch/jammed-damper');
  await expectOpen(page);
  await page.locator('.schematic canvas').waitFor();
  await check(page, 'body');
  for (const tab of BENCH) {
    await page.getByRole('tab', { name: tab }).click();
    await check(page, '.bench');
  }
  for (const tab of PLANT) {
    await page.getByRole('tab', { name: tab }).click();
    await check(page, '.plant');
  }
  await page.getByRole('button', { name: 'Trends' }).click();
  await check(page, '.working');
  await page.getByRole('button', { name: 'Close trends' }).click();
  await page.getByRole('tab', { name: 'Schematic' }).click();
  await runTo(page, 'lockout');
  await check(page, '.working');
  await page.getByRole('button', { name: 'Help and keyboard' }).click();
  await check(page, 'body');
}
