/** Guided work, practice and assessment: how much is said on the way, and that it fits. */
import type { Page } from '@playwright/test';
import { expectContrast, expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';
import { activate, check, choose, openTab } from './keyboard-hands.ts';

const ADDRESS = '/#/practise/job/dairy-after-the-road-works';
/** The atlas is fetched and the log run again, on whatever machine this is. */
const REASONED = { timeout: 60_000 };
const SIZES = [
  [390, 844],
  [820, 1180],
  [1366, 768],
  [1920, 1080],
] as const;

test('by keyboard: four rungs of a hint, the check that it proposes, and what came of it', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await page.goto(ADDRESS);
  await expect(page.getByRole('radio', { name: /^Guided/ })).toBeChecked();
  await check(page, page.getByRole('radio', { name: /^Guided/ }));
  await check(page, page.getByRole('checkbox', { name: 'Manometer', exact: true }));
  await activate(page, page.getByRole('button', { name: 'Go to the plant' }));
  await activate(page, page.getByRole('button', { name: 'Begin work' }));
  await expect(page.locator('.guidance-said')).toContainText('You have arrived', REASONED);

  const hint = page.locator('.guidance-hint');
  for (let rung = 0; rung < 4; rung += 1) {
    await activate(page, hint);
    await expect(hint).toBeFocused();
    await expect(page.locator('.guidance-rungs > li')).toHaveCount(rung + 1);
  }
  await expect(hint).toHaveAttribute('aria-disabled', 'true');
  await expect(page.locator('.guidance-rungs > li').nth(2)).toContainText('min.');

  const which = (await page.locator('.guidance-rungs > li').nth(2).textContent()) ?? '';
  const looked = /^Look at the ([^,:]+)/.exec(which)?.[1] ?? 'manual cocks';
  await openTab(page, 'Look');
  await choose(
    page,
    page.getByRole('combobox', { name: 'Look at' }),
    new RegExp(`^${looked.charAt(0).toUpperCase()}${looked.slice(1)}`),
  );
  await activate(page, page.getByRole('button', { name: 'Look', exact: true }));
  await expect(page.locator('.guidance-said')).toContainText(`Look at the ${looked}`, REASONED);
  await expect(page.locator('.guidance-rungs')).toHaveCount(0);
  await expect(hint).toHaveText(/^(Give me a hint|No hint is left)$/);

  await openTab(page, 'Notes');
  for (const part of ['strainer', 'scanner']) {
    await choose(page, page.getByRole('combobox', { name: 'Add a part' }), part);
    await activate(page, page.getByRole('button', { name: 'Add', exact: true }));
  }
  const suspects = page.locator('.suspects li:has(.suspect-readings)');
  await expect(suspects).toHaveCount(2);
  await expect(suspects.first()).toContainText('Speaks for it', REASONED);
  await expect(suspects.last()).toContainText('Speaks against it', REASONED);
  await activate(page, page.getByRole('button', { name: 'Less likely: strainer' }));
  await expect(suspects.last()).toContainText('Speaks for it', REASONED);
});

test('in an assessment nothing is said before the end', async ({ page }) => {
  await arrive(page, 'Assessment');
  await expect(page.locator('.guidance')).toHaveText(/shown at the end/);
  await expect(page.getByRole('button', { name: /hint|How am I doing/ })).toHaveCount(0);
  await suspect(page, 'strainer');
  await expect(page.locator('.suspects li')).toHaveCount(1);
  await expect(page.locator('.suspect-readings')).toHaveCount(0);
});

test('in practice it is said for the asking, of that moment, and can be put away', async ({
  page,
}) => {
  await arrive(page, 'Practice');
  await suspect(page, 'strainer');
  await expect(page.locator('.suspect-readings')).toHaveCount(0);
  await expect(page.locator('.guidance-hint')).toHaveCount(0);
  await page.getByRole('button', { name: 'How am I doing?' }).click();
  await expect(page.locator('.guidance-said')).toContainText('Suspected first', REASONED);
  await expect(page.locator('.guidance-as-of')).toHaveText(/^As it stood at/);
  await expect(page.locator('.suspect-readings')).toContainText('Speaks for it');
  await page.getByRole('button', { name: 'Put away' }).click();
  await expect(page.locator('.guidance-said, .suspect-readings')).toHaveCount(0);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme} colours`, () => {
    test.use({ colorScheme });

    test('axe finds nothing serious in what is said, hinted and held against suspects', async ({
      page,
    }) => {
      await page.goto(ADDRESS);
      await page.getByRole('button', { name: 'Go to the plant' }).waitFor();
      await expectNothingSerious(page, 'body');
      await arrive(page, 'Guided');
      await climb(page);
      await suspect(page, 'strainer');
      await page.locator('.suspect-standing').first().waitFor();
      await expectNothingSerious(page, 'body');
      await expectContrast(page, '.side');
    });
  });
}

for (const [width, height] of SIZES) {
  test(`at ${width} × ${height} guidance fits, and covers neither plant nor bench`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await page.goto(ADDRESS);
    await page.getByRole('button', { name: 'Go to the plant' }).waitFor();
    await expectFits(page);
    await arrive(page, 'Guided');
    await climb(page);
    await expectFits(page);
    const panel = await boxOf(page, '.guidance');
    if (width > 1024) {
      const plant = await boxOf(page, '.plant');
      expect(plant.x + plant.width).toBeLessThanOrEqual(panel.x + 1);
    }
    const bench = await boxOf(page, '.bench');
    expect(panel.y + panel.height).toBeLessThanOrEqual(bench.y + 1);
    // Tabs, and room to work under them.
    expect(bench.height).toBeGreaterThan(200);
    await suspect(page, 'strainer');
    await page.locator('.suspect-standing').first().waitFor();
    await expectFits(page);
  });
}

async function arrive(page: Page, mode: 'Guided' | 'Practice' | 'Assessment'): Promise<void> {
  await page.goto(ADDRESS);
  await page.getByRole('radio', { name: new RegExp(`^${mode}`) }).check();
  await page.getByRole('button', { name: 'Take everything' }).click();
  await page.getByRole('button', { name: 'Go to the plant' }).click();
  await page.getByRole('button', { name: 'Begin work' }).click();
}

async function climb(page: Page): Promise<void> {
  await page.locator('.guidance-said').waitFor(REASONED);
  for (let rung = 0; rung < 4; rung += 1) {
    await page.locator('.guidance-hint').click();
    await expect(page.locator('.guidance-rungs > li')).toHaveCount(rung + 1);
  }
}

async function suspect(page: Page, part: string): Promise<void> {
  await page.locator('.bench').getByRole('tab', { name: 'Notes', exact: true }).click();
  await page.getByRole('combobox', { name: 'Add a part' }).selectOption(part);
  await page.getByRole('button', { name: 'Add', exact: true }).click();
}

async function boxOf(page: Page, part: string) {
  const box = await page.locator(part).first().boundingBox();
  if (box === null) throw new Error(`${part} is not there`);
  return box;
}
