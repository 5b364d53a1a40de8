/** A job in the browser: its pages, its saved work, and that nothing is given away. */
import type { BrowserContext, Page } from '@playwright/test';
import { expectContrast, expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';

const ADDRESS = '/#/practise/job/dairy-after-the-road-works';
const TABS = ['Card', 'Tools', 'Look', 'Acts', 'Notes', 'Finish'];

test('nothing is lost when the tab is killed: desk, tools, log and time come back', async ({
  page,
  context,
}) => {
  await begin(page);
  await connectManometer(page);
  await page.getByRole('button', { name: /^Pin the reading of the Manometer/ }).click();
  await openTab(page, 'Card');
  await page.getByRole('button', { name: 'What happened?' }).click();
  await openTab(page, 'Acts');
  await page.locator('summary', { hasText: 'Isolate and lock' }).click();
  await page.getByRole('button', { name: 'Shut: Manual cock' }).click();
  await expect(page.getByRole('button', { name: 'Shut: Manual cock' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await expect.poll(async () => (await headS(page)) % 60).toBeGreaterThan(4);
  const before = await headS(page);

  const again = await kill(page, context);
  await again.goto(ADDRESS);
  await expect(again.locator('.phases [aria-current="step"]')).toHaveText('Finding the cause');
  await expect(again.locator('html')).toHaveAttribute('data-run-mode', 'paused');
  // Two simulated seconds are what may be lost, and the run has gone on since it was read.
  expect(await headS(again)).toBeGreaterThan(before - 2.5);
  await openTab(again, 'Tools');
  await expect(again.locator('.meter')).toHaveCount(1);
  await expect(again.locator('.meter-reading')).toContainText('mbar');
  await openTab(again, 'Notes');
  await expect(again.locator('.pin')).toHaveCount(1);
  await openTab(again, 'Card');
  await expect(again.locator('.answer').first()).not.toBeEmpty();
  await openTab(again, 'Acts');
  await again.locator('summary', { hasText: 'Isolate and lock' }).click();
  await expect(again.getByRole('button', { name: 'Shut: Manual cock' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );

  await again.goto('/#/practise');
  await expect(again.getByRole('link', { name: /^Go on: / })).toBeVisible();
});

test('the plant gives nothing away: no faults, no trends, no pressures without a tool', async ({
  page,
}) => {
  await begin(page);
  await expect(page.getByRole('tab', { name: 'Faults' })).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Trends' })).toHaveCount(0);
  await page.getByRole('tab', { name: 'List' }).click();
  await expect(page.locator('.job-list')).toContainText('Damper told');
  await expect(page.locator('.job-list')).not.toContainText('mbar');
  await page.getByRole('tab', { name: 'Ladder' }).click();
  await page.locator('.ladder[data-phase="shown"]').waitFor();
  await expect(page.locator('.ladder-tools')).toContainText('cold and dead');
});

test('from the card to the debrief: a wrong cause is told apart from the right one', async ({
  page,
}) => {
  await begin(page);
  await openTab(page, 'Finish');
  await page.getByRole('combobox', { name: 'Part', exact: true }).selectOption('gas regulator');
  await page.getByRole('button', { name: 'Name it' }).click();
  await expect(page.getByText('with no reading to support it')).toBeVisible();
  await page.getByRole('button', { name: /^Mended/ }).click();
  await expect(page.getByRole('tabpanel', { name: 'Finish' })).toBeFocused();
  await page.getByLabel('What was done').fill('Nothing yet.');
  await page.getByRole('button', { name: 'Sign and hand over' }).click();
  await page.getByRole('button', { name: 'Close the job' }).click();
  await expect(page.getByRole('heading', { name: 'What was the matter' })).toBeVisible();
  await expect(page.locator('.truth')).toContainText('Still there');
  await expect(page.locator('.truth')).toContainText('strainer');
  await expectNothingSerious(page, 'body');
  await page.getByRole('button', { name: 'Look at the run again' }).click();
  await expect(page.locator('.replay-events')).toContainText('Fault stands');
  await page.getByRole('button', { name: 'Back to the debrief' }).click();

  await page.getByRole('button', { name: 'Do it again from the beginning' }).click();
  await page.getByRole('button', { name: 'Begin anew' }).click();
  await expect(page.getByRole('button', { name: 'Go to the plant' })).toBeVisible();
});

test('axe finds nothing serious on the card and in any part of the work', async ({ page }) => {
  await page.goto(ADDRESS);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await expectNothingSerious(page, 'body');
  await begin(page);
  await page.locator('.schematic canvas').waitFor();
  await connectManometer(page);
  await expectNothingSerious(page, 'body');
  for (const tab of TABS) {
    await openTab(page, tab);
    for (const fold of await page.locator('.acts summary').all()) await fold.click();
    await expectNothingSerious(page, '.side');
  }
  await openTab(page, 'Look');
  await page.getByRole('button', { name: 'Look', exact: true }).click();
  await page.locator('.close-up-drawing').waitFor();
  await expectNothingSerious(page, 'body');
});

test.describe('in dark colours', () => {
  test.use({ colorScheme: 'dark' });

  test('axe finds enough contrast at work', async ({ page }) => {
    await begin(page);
    await connectManometer(page);
    for (const tab of TABS) {
      await openTab(page, tab);
      await expectContrast(page, 'body');
    }
  });
});

for (const width of [390, 820, 1366, 1920]) {
  test(`at ${width} wide a job fits the screen and its targets are 44 px`, async ({ page }) => {
    await page.setViewportSize({ width, height: width === 390 ? 844 : 1080 });
    await page.goto(ADDRESS);
    await page.getByRole('button', { name: 'Go to the plant' }).waitFor();
    await expectFits(page);
    await begin(page);
    await connectManometer(page);
    for (const tab of TABS) {
      await openTab(page, tab);
      await expectFits(page);
    }
  });
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

async function connectManometer(page: Page): Promise<void> {
  await openTab(page, 'Tools');
  const form = page.getByRole('form', { name: 'Connect a tool' });
  await form.getByRole('combobox', { name: 'Tool' }).selectOption({ label: 'Manometer' });
  await form
    .getByRole('combobox', { name: 'From' })
    .selectOption({ label: 'Gas behind the strainer' });
  await form.getByRole('button', { name: 'Connect' }).click();
  await expect(page.locator('.meter-reading')).toContainText('mbar');
}

async function headS(page: Page): Promise<number> {
  return Number(await page.locator('html').getAttribute('data-run-head'));
}

/** As the system ends a tab: without a word to the page. */
async function kill(page: Page, context: BrowserContext): Promise<Page> {
  await page.close({ runBeforeUnload: false });
  return context.newPage();
}
