import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './fixtures.ts';
import { lookBackTo, openRun, pause, runTo } from './run-marks.ts';

test('the ladder by keyboard: opened, moved, zoomed; live in words, and as it was when looked back to', async ({
  page,
}) => {
  await openRun(page, '/#/practise/watch/laundry-healthy-start');
  await page.getByRole('tab', { name: 'Schematic' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Ladder' })).toBeFocused();
  const ladder = page.getByRole('group', { name: /^Ladder diagram/ });
  const drawing = ladder.locator('svg');
  await expect(drawing).toBeVisible();

  await ladder.focus();
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => ladder.evaluate((host) => host.scrollTop)).toBeGreaterThan(0);
  const width = await drawing.evaluate((svg) => svg.clientWidth);
  await page.keyboard.press('+');
  expect(await drawing.evaluate((svg) => svg.clientWidth)).toBeGreaterThan(width);
  await page.keyboard.press('0');
  expect(await drawing.evaluate((svg) => svg.clientWidth)).toBe(width);

  const rungs = page.getByRole('region', { name: 'Rungs in words' }).getByRole('listitem');
  const fanRelay = rungs.filter({ hasText: 'output: fan' });
  await expect(fanRelay).toContainText('fan relay without current');
  await runTo(page, 'purge');
  await expect(fanRelay).toContainText('fan relay energised');
  await expect(fanRelay).toContainText('Of this step');
  await pause(page);
  await lookBackTo(page, 2);
  await expect(fanRelay).toContainText('fan relay without current');
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme} colours`, () => {
    test.use({ colorScheme });
    test('axe finds nothing serious on the ladder', async ({ page }) => {
      await openRun(page, '/#/practise/watch/school-healthy-start');
      await page.getByRole('tab', { name: 'Ladder' }).click();
      await page.locator('.ladder-drawing').waitFor();
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
        .analyze();
      const serious = violations.filter(
        ({ impact }) => impact === 'serious' || impact === 'critical',
      );
      expect(serious.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html)}`)).toEqual([]);
    });
  });
}
