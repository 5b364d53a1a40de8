import { expect, test } from './fixtures.ts';
import { cursorOf, lookBackTo, openRun, pause, readMarks, runTo } from './run-marks.ts';

test('a run that is rewound and run again has, at the same moment, the hash of the first run', async ({
  page,
}) => {
  await openRun(page, '/#/practise/watch/healthy-start');
  await runTo(page, 'purge');
  const first = await pause(page);
  expect(first.atS).toBeGreaterThan(10);

  await cursorOf(page).press('Home');
  await expect.poll(async () => (await readMarks(page)).atS).toBe(0);
  const rewound = await readMarks(page);
  expect(rewound.hash).not.toBe(first.hash);
  expect(rewound.headS).toBe(first.headS);
  await expect(page.locator('html')).toHaveAttribute('data-run-step', 'standby');

  await page.getByRole('button', { name: 'Run on from here' }).click();
  await expect.poll(async () => (await readMarks(page)).atS).toBeGreaterThan(1);
  await page.getByRole('button', { name: 'Back to live' }).click();
  await expect.poll(async () => (await readMarks(page)).mode).toBe('paused');
  const again = await readMarks(page);
  expect(again.atS).toBe(first.atS);
  expect(again.hash).toBe(first.hash);
});

test('at another speed, with pauses, the run is the same run', async ({ page }) => {
  const at = 12;
  const hashes: string[] = [];
  for (const speed of [5, 20]) {
    await openRun(page, '/#/practise/watch/healthy-start');
    await page.getByRole('button', { name: `Run at ${speed} times real time` }).click();
    await expect
      .poll(async () => (await readMarks(page)).atS, { timeout: 20_000 })
      .toBeGreaterThan(at + 1);
    await pause(page);
    await lookBackTo(page, at);
    hashes.push((await readMarks(page)).hash);
    await page.goto('/');
  }
  expect(hashes[0]).toBe(hashes[1]);
});

test('looking back shows the plant, the step and the panel as they were', async ({ page }) => {
  await openRun(page, '/#/practise/watch/healthy-start');
  await runTo(page, 'drive to purge');
  await pause(page);
  await page.getByRole('tab', { name: 'Panel' }).click();
  const heat = page.getByRole('button', { name: 'Call for heat' });
  await expect(heat).toHaveAttribute('aria-pressed', 'true');
  const picture = await page.locator('.schematic canvas').screenshot();

  await cursorOf(page).press('Home');
  await expect(page.getByRole('heading', { name: 'Standby' })).toBeVisible();
  await expect(heat).toHaveAttribute('aria-pressed', 'false');
  await expect(page.getByText('Acting now drops what happened after this moment.')).toBeVisible();
  expect((await page.locator('.schematic canvas').screenshot()).equals(picture)).toBe(false);
});

test('acting after a rewind drops what came later and goes on from there', async ({ page }) => {
  await openRun(page, '/#/practise/watch/healthy-start');
  await runTo(page, 'purge');
  const first = await pause(page);
  await lookBackTo(page, 10);
  await page.getByRole('tab', { name: 'Panel' }).click();
  await page.getByRole('button', { name: 'Emergency stop' }).click();
  await expect.poll(async () => (await readMarks(page)).headS).toBeLessThan(first.headS);
  await expect(page.getByRole('button', { name: 'Back to live' })).toBeHidden();
  await runTo(page, 'lockout');
  await expect(page.getByRole('region', { name: 'Lockout: Emergency stop' })).toBeVisible();
});
