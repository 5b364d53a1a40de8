/** Looking closely, and what hangs on the drawings while one works. */
import type { Page } from '@playwright/test';
import { expectContrast, expectNothingSerious } from './axe.ts';
import { expect, test } from './fixtures.ts';

const ADDRESS = '/#/practise/job/dairy-after-the-road-works';
/** The strainer on a page of 1366 × 768, and the empty row above the gas train. */
const STRAINER = { x: 121, y: 476 };
const ABOVE_TRAIN = { x: 0, y: 360, width: 420, height: 90 };
/** Fewer pixels of one colour are no tag. */
const TAG_PIXELS = 400;

test('a close-up opens from the menu of an item on the schematic', async ({ page }) => {
  await begin(page);
  await page.locator('.schematic canvas').waitFor();
  await page.mouse.click(STRAINER.x, STRAINER.y);
  const menu = page.getByRole('group', { name: 'Gas strainer' });
  await menu.getByRole('button', { name: 'Look at: Strainer, inside' }).click();
  await expect(page.getByRole('tab', { name: 'Close-up' })).toHaveAttribute(
    'aria-selected',
    'true',
  );
  await expect(page.locator('.close-up figcaption')).toHaveText('Strainer, inside');
  await expect(page.locator('.close-up-drawing')).toBeVisible();
});

test('a close-up opens from the Look form, and the plant comes back by its tab', async ({
  page,
}) => {
  await begin(page);
  await look(page, 'Strainer, inside');
  await expect(page.locator('.close-up figcaption')).toHaveText('Strainer, inside');
  await expect(page.locator('.seen')).toContainText('Strainer');
  await page.getByRole('tab', { name: 'Schematic' }).click();
  await expect(page.locator('.schematic canvas')).toBeVisible();
});

test('a connected tool hangs its reading on the schematic, and takes it along', async ({
  page,
}) => {
  await begin(page);
  await page.locator('.schematic canvas').waitFor();
  await expect.poll(() => accentPixels(page)).toBeLessThan(TAG_PIXELS);
  await connect(page, 'Manometer', 'Gas behind the strainer');
  await expect.poll(() => accentPixels(page)).toBeGreaterThan(TAG_PIXELS);
  await page.getByRole('button', { name: /^Take the Manometer off/ }).click();
  await expect.poll(() => accentPixels(page)).toBeLessThan(TAG_PIXELS);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in ${colorScheme} colours`, () => {
    test.use({ colorScheme });

    test('axe finds nothing serious on tools, a ladder with leads, and a close-up', async ({
      page,
    }) => {
      await begin(page);
      await connect(page, 'Manometer', 'Gas behind the strainer');
      await connectMultimeter(page);
      await page.locator('.schematic canvas').waitFor();
      await expectClean(page);
      await page.getByRole('tab', { name: 'Ladder' }).click();
      await page.locator('.ladder-drawing').waitFor();
      await expect(page.locator('.ladder-where')).toContainText('red lead on');
      await expectClean(page);
      await look(page, 'Strainer, inside');
      await expectClean(page);
    });
  });
}

async function expectClean(page: Page): Promise<void> {
  await expectNothingSerious(page, 'body');
  await expectContrast(page, 'body');
}

async function begin(page: Page): Promise<void> {
  await page.goto(ADDRESS);
  await page.getByRole('button', { name: 'Take everything' }).click();
  await page.getByRole('button', { name: 'Go to the plant' }).click();
  await page.getByRole('button', { name: 'Begin work' }).click();
}

async function openTab(page: Page, name: string): Promise<void> {
  await page.locator('.bench').getByRole('tab', { name, exact: true }).click();
}

async function look(page: Page, what: string): Promise<void> {
  await openTab(page, 'Look');
  await page.getByRole('combobox', { name: 'Look at' }).selectOption({ label: what });
  await page.getByRole('button', { name: 'Look', exact: true }).click();
  await page.locator('.close-up-drawing').waitFor();
}

async function connect(page: Page, tool: string, from: string): Promise<void> {
  await openTab(page, 'Tools');
  const form = page.getByRole('form', { name: 'Connect a tool' });
  await form.getByRole('combobox', { name: 'Tool' }).selectOption({ label: tool });
  await form.getByRole('combobox', { name: 'From' }).selectOption({ label: from });
  await form.getByRole('button', { name: 'Connect' }).click();
  await expect(page.locator('.meter-reading').last()).toContainText(/\d/);
}

async function connectMultimeter(page: Page): Promise<void> {
  const form = page.getByRole('form', { name: 'Connect a tool' });
  await form.getByRole('combobox', { name: 'Tool' }).selectOption({ label: 'Multimeter' });
  await form.getByRole('combobox', { name: 'From' }).selectOption({ index: 3 });
  await form.getByRole('combobox', { name: 'To', exact: true }).selectOption({ index: 6 });
  await form.getByRole('button', { name: 'Connect' }).click();
  await expect(page.locator('.meter')).toHaveCount(2);
}

/** How much of the row above the gas train has the colour of a tag. */
async function accentPixels(page: Page): Promise<number> {
  const png = await page.screenshot({ clip: ABOVE_TRAIN });
  return page.evaluate(
    async (bytes) => {
      const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)]));
      const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
      if (pen === null) throw new Error('no 2D canvas');
      pen.drawImage(bitmap, 0, 0);
      const { data } = pen.getImageData(0, 0, bitmap.width, bitmap.height);
      const accent = [0x24, 0x50, 0x6b];
      let count = 0;
      for (let i = 0; i < data.length; i += 4) {
        if (accent.every((part, k) => Math.abs((data[i + k] ?? 0) - part) < 6)) count++;
      }
      return count;
    },
    [...png],
  );
}
