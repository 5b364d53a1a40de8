import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';
import { expectOpen, runTo } from './run-marks.ts';

async function expectNothingSerious(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  const serious = violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
  expect(serious).toEqual([]);
}

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme} colours`, () => {
    test.use({ colorScheme });

    for (const address of ['/', '/#/practise', '/#/teach', '/#/quiz']) {
      test(`axe finds nothing serious on ${address}`, async ({ page }) => {
        await page.goto(address);
        await page.getByRole('heading', { level: 1 }).waitFor();
        await expectNothingSerious(page);
      });
    }

    test('axe finds nothing serious on the working page, its tabs and a lockout', async ({
      page,
    }) => {
      await page.goto('/#/practise/watch/jammed-damper');
      await expectOpen(page);
      await page.locator('.schematic canvas').waitFor();
      for (const tab of ['Panel', 'Events', 'Faults', 'List']) {
        await page.getByRole('tab', { name: tab }).click();
        await expectNothingSerious(page);
      }
      await page.getByRole('button', { name: 'Trends' }).click();
      await expectNothingSerious(page);
      await page.getByRole('button', { name: 'Close trends' }).click();
      await runTo(page, 'lockout');
      await expectNothingSerious(page);
      await page.getByRole('button', { name: 'Help and keyboard' }).click();
      await expectNothingSerious(page);
    });
  });
}
