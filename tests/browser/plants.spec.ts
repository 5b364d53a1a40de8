/** Every plant of the library is drawn from its file, all the way from rest to modulation. */
import { expect, test } from './fixtures.ts';
import { openRun, runTo } from './run-marks.ts';

const STARTS = [
  { plant: 'laundry', start: 'laundry-healthy-start' },
  { plant: 'school', start: 'school-healthy-start' },
] as const;

for (const { plant, start } of STARTS) {
  test(`the ${plant} goes from rest to modulation, its drawing and its list with it`, async ({
    page,
  }) => {
    await openRun(page, `/#/practise/watch/${start}`);
    const canvas = page.locator('.schematic canvas');
    await expect(canvas).toBeVisible();
    const atRest = (await canvas.screenshot()).toString('base64');
    await runTo(page, 'modulation');
    expect((await canvas.screenshot()).toString('base64')).not.toBe(atRest);
    await page.getByRole('tab', { name: 'List' }).click();
    const list = page.locator('.equipment');
    if (plant === 'school') {
      await expect(list).toContainText('Return temperature');
      await expect(list).not.toContainText('Water level');
      await expect(list).not.toContainText('Pilot flame');
    } else {
      await expect(list).toContainText('Water level');
      await expect(list).not.toContainText('Drive output');
    }
  });
}

test('Practise offers the starts of one plant at a time and says what each is for', async ({
  page,
}) => {
  await page.goto('/#/practise');
  await page.getByRole('button', { name: /^School/ }).click();
  await expect(page.getByText('400 kW')).toBeVisible();
  await expect(page.locator('.choice-first .choice-teaches')).not.toBeEmpty();
  await page.getByRole('link', { name: 'Watch a start' }).click();
  await expect(page).toHaveURL(/school-healthy-start/);
});
