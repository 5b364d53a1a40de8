/** By keyboard alone, by touch alone, and on small screens. */
import { expect, test } from './fixtures.ts';
import { expectOpen, openRun, readMarks } from './run-marks.ts';

test('by keyboard alone: in through the door, run, next step, look back, help', async ({
  page,
}) => {
  await page.goto('/');
  await tabTo(page, /^Practise/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Practise' })).toBeFocused();
  await tabTo(page, /^Watch a start/);
  await page.keyboard.press('Enter');
  await expectOpen(page);

  await page.keyboard.press('4');
  await expect(page.locator('html')).not.toHaveAttribute('data-run-step', 'standby');
  await page.keyboard.press('p');
  await expect(page.locator('html')).toHaveAttribute('data-run-mode', 'paused');
  const { step } = await readMarks(page);
  await page.keyboard.press('n');
  await expect(page.locator('html')).not.toHaveAttribute('data-run-step', step);
  await expect(page.locator('html')).toHaveAttribute('data-run-mode', 'paused');
  await page.keyboard.press(',');
  await expect(page.getByRole('button', { name: 'Back to live' })).toBeVisible();
  await page.keyboard.press('l');
  await expect(page.getByRole('button', { name: 'Back to live' })).toBeHidden();

  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Help' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();

  await page.keyboard.press('f');
  const faults = page.getByRole('tab', { name: 'Faults' });
  await expect(faults).toHaveAttribute('aria-selected', 'true');
  await tabTo(page, /^Faults/);
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByRole('tab', { name: 'Events' })).toBeFocused();
  await expect(page.getByRole('tab', { name: 'Events' })).toHaveAttribute('aria-selected', 'true');
});

test('the list has every act of the drawing and works by keyboard', async ({ page }) => {
  await openRun(page, '/#/practise/watch/healthy-start');
  await page.getByRole('tab', { name: 'List' }).click();
  const shut = page.getByRole('button', { name: 'Shut cock' });
  await shut.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-item="gas.cock.opening"] dd').first()).toHaveText(/shut/);
});

test.describe('on a tablet held upright', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

  test('by touch alone: in through the door, speed, look back, reset held and let go', async ({
    page,
  }) => {
    await page.goto('/');
    await page.getByRole('link', { name: /^Practise/ }).tap();
    await page.getByRole('link', { name: 'Watch a start' }).tap();
    await expectOpen(page);
    await page.getByRole('button', { name: 'Run at 20 times real time' }).tap();
    await expect.poll(async () => (await readMarks(page)).shownS).toBeGreaterThan(12);
    await page.getByRole('button', { name: 'Pause' }).tap();
    await page.getByRole('button', { name: 'Back 10 seconds' }).tap();
    await expect(page.getByRole('button', { name: 'Run on from here' })).toBeVisible();
    await page.getByRole('button', { name: 'Back to live' }).tap();

    await page.getByRole('tab', { name: 'Panel' }).tap();
    await page.getByRole('button', { name: 'Reset', exact: true }).tap();
    await page.getByRole('button', { name: 'Run at 1 times real time' }).tap();
    await page.getByRole('tab', { name: 'Events' }).tap();
    await expect(page.locator('.events')).toContainText('You: reset pressed');
    await expect(page.locator('.events')).toContainText('You: reset let go');
  });
});

for (const width of [390, 820, 1366, 1920]) {
  test(`at ${width} wide nothing has to be scrolled sideways and targets are 44 px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: width === 390 ? 844 : 1000 });
    for (const address of ['/', '/#/practise', '/#/practise/watch/healthy-start']) {
      await page.goto(address);
      if (address.includes('watch')) await expectOpen(page);
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(wide, `${address} is wider than the screen`).toBeLessThanOrEqual(0);
      expect(await smallTargets(page), `${address} has small targets`).toEqual([]);
    }
  });
}

/** Buttons, tabs and links standing by themselves that a finger would miss. */
async function smallTargets(page: import('@playwright/test').Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('button, [role="tab"], summary, a.button, a.back')]
      .filter((element) => element.offsetParent !== null)
      .filter((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width < 43.5 || height < 43.5;
      })
      .map((element) => element.textContent?.trim() || element.ariaLabel || element.className),
  );
}

async function tabTo(page: import('@playwright/test').Page, name: RegExp): Promise<void> {
  for (let press = 0; press < 60; press += 1) {
    const here = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement | null;
      return element?.ariaLabel ?? element?.textContent?.trim() ?? '';
    });
    if (name.test(here)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`no way by Tab to ${name}`);
}
