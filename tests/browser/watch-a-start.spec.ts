import { expect, test } from './fixtures.ts';
import { expectOpen, openRun, readMarks, runTo } from './run-marks.ts';

const SOME_STEPS = [
  'At-rest check',
  'Valve proving: empty',
  'Valve proving: hold full',
  'Drive to purge',
  'Purge',
  'Drive to light-off',
  'Pilot trial',
  'Main trial',
  'Low-fire hold',
  'Modulation',
];

test('Practise, Watch a start, and it runs to modulation while drawing and waiting-for list change', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('link', { name: /^Practise/ }).click();
  await page.getByRole('link', { name: 'Watch a start' }).click();
  await expectOpen(page);
  await expect.poll(async () => (await readMarks(page)).shownS).toBeGreaterThan(0);

  const canvas = page.locator('.schematic canvas');
  await expect(canvas).toBeVisible();
  await page.getByRole('button', { name: 'Run at 20 times real time' }).click();
  const pictures = new Set<string>();
  const lists = new Set<string>();
  await expect
    .poll(
      async () => {
        pictures.add((await canvas.screenshot()).toString('base64'));
        lists.add((await page.locator('.waits').allTextContents()).join());
        return (await readMarks(page)).step;
      },
      { timeout: 60_000, intervals: [400] },
    )
    .toBe('modulation');
  expect(pictures.size).toBeGreaterThan(5);
  expect(lists.size).toBeGreaterThan(5);

  await page.getByRole('tab', { name: 'Events' }).click();
  const newestFirst = await page.locator('.events li[data-kind="step"]').allTextContents();
  const passed = newestFirst.reverse().map((line) => line.replace(/^[\d:.]+/, ''));
  expect(passed.filter((step) => SOME_STEPS.includes(step))).toEqual(SOME_STEPS);
});

test('a jammed damper ends in a lockout that says what was missing, not whose fault; taken out and reset, it runs', async ({
  page,
}) => {
  await openRun(page, '/#/practise/watch/jammed-damper');
  await runTo(page, 'lockout');
  const banner = page.getByRole('region', { name: 'Lockout: Purge position not proved' });
  await expect(banner).toBeVisible();
  await expect(banner).toContainText('in drive to purge');
  await expect(banner).toContainText('damper at purge position');
  await expect(banner).not.toContainText(/jam/i);
  await expect(page.getByRole('status').first()).toHaveText('Lockout: Purge position not proved');

  await page.getByRole('tab', { name: 'Faults' }).click();
  const standing = page.getByRole('region', { name: 'Standing now' });
  await expect(standing).toContainText('This scenario brought a fault of its own.');
  await expect(standing).not.toContainText(/jammed/);
  await standing.getByRole('button', { name: 'Show it' }).click();
  await expect(standing).toContainText('damper jammed short of purge');

  await page.getByRole('button', { name: 'Take it out' }).click();
  await page.getByRole('button', { name: 'To the panel' }).click();
  const reset = page.getByRole('button', { name: 'Reset', exact: true });
  await reset.hover();
  await page.mouse.down();
  await page.waitForTimeout(400);
  await page.mouse.up();
  await expect(page.locator('html')).not.toHaveAttribute('data-run-step', 'lockout');
  await runTo(page, 'modulation');
});

test('a fault put in from the catalogue while it runs changes what happens', async ({ page }) => {
  await openRun(page, '/#/practise/watch/healthy-start');
  await runTo(page, 'purge');
  await page.getByRole('button', { name: 'Pause' }).click();
  await page.getByRole('tab', { name: 'Faults' }).click();
  await page.getByText('Ignition', { exact: false }).first().click();
  const fault = page.locator('.fault', { hasText: 'ignition transformer dead' });
  await fault.getByRole('button', { name: 'Put it in' }).click();
  await expect(page.getByRole('region', { name: 'Standing now' })).toContainText('transformer');
  await runTo(page, 'lockout');
  await expect(page.getByRole('region', { name: 'Lockout: Pilot not lit' })).toBeVisible();
});
