/** The debrief: what happened, how one went about it, each claim judged, and one page on paper. */
import type { Page } from '@playwright/test';
import { expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';
import { readMarks } from './run-marks.ts';
import { seedWork, wanderingWork } from './seeded-work.ts';

const ADDRESS = '/#/practise/job/dairy-after-the-road-works';
/** Weighing decisions goes through the whole atlas, and this machine may be busy. */
const WEIGHED = { timeout: 90_000 };

test('a right cause without a reading is told as luck, a wrong one as wrong, what stands as standing', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await begin(page);
  await openTab(page, 'Card');
  await page.getByRole('button', { name: 'Read the commissioning sheet' }).click();
  await openTab(page, 'Finish');
  await claim(page, 'strainer');
  await page.getByRole('button', { name: 'Name another cause as well' }).click();
  await claim(page, 'fan belt');
  await close(page);
  const [right, wrong] = [page.locator('.judged > li').nth(0), page.locator('.judged > li').nth(1)];
  await expect(right).toContainText('Right');
  await expect(right).toContainText('a lucky guess');
  await expect(wrong).toContainText('Wrong');
  await expect(wrong).toContainText('it was a guess');
  await expect(page.locator('.truth')).toContainText('it will be back');
  await expect(page.getByRole('region', { name: 'Minutes and parts' })).toContainText(
    'People and papers',
  );
  await expect(page.getByRole('heading', { name: 'Moments worth going back to' })).toBeVisible(
    WEIGHED,
  );
  await expect(page.getByRole('region', { name: 'Decisions', exact: true })).toContainText(
    'The best way',
  );
  await expectNothingSerious(page, 'body');
  await expectFits(page);
  await expectOneSheet(page);
});

test('what was unsafe stands first; decisions above the chart move its cursor; moments say what would have told more', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await openSeeded(page);
  const headings = await page.locator('main h2').allTextContents();
  expect(headings[0]).toMatch(/^Before anything else: \d+ unsafe acts/);
  expect(headings[1]).toBe('What happened');

  const happened = page.getByRole('region', { name: 'What happened' });
  await happened.getByRole('button', { name: /Worked on the gas regulator: replace/ }).click();
  await expect.poll(async () => (await readMarks(page)).shownS).toBeCloseTo(492, 0);
  await expect(happened.getByRole('slider')).toHaveAttribute('aria-valuenow', /^492/);

  const moments = page.locator('.moment');
  const count = await moments.count();
  expect(count).toBeGreaterThanOrEqual(3);
  expect(count).toBeLessThanOrEqual(5);
  const early = moments.filter({ hasText: 'Worked on the gas regulator' });
  await expect(early).toContainText('What it could be, by the readings so far');
  await expect(early).toContainText('What would have told more');
  await expect(early).toContainText(/Cost beside the best: \d+ min/);

  const decisions = page.getByRole('region', { name: 'Decisions', exact: true });
  await expect(decisions).toContainText('Checks that could tell nothing new');
  await expect(decisions).toContainText('Work before the readings spoke for it');
  await expect(page.getByRole('region', { name: 'Your suspects against' })).toContainText(
    'You ranked suspects 3 times',
  );
  await expect(page.getByRole('region', { name: 'The best way through' })).toContainText('min');
  await expect(page.getByRole('region', { name: 'To take away' })).toContainText(
    'Before you replace the gas regulator',
  );
  await expectNothingSerious(page, 'body');
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await expectFits(page);
  }
  await expectOneSheet(page);
});

test('replay opens at a moment, steps from decision to decision, and gives the focus back', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await openSeeded(page);
  const see = page.getByRole('button', { name: 'See moment 2 again in the run' });
  await see.click();
  await expect(page.locator('.replay-at')).toContainText(/^Moment 2 of \d/);
  const before = (await readMarks(page)).shownS;
  await page.getByRole('button', { name: 'Next decision' }).click();
  await expect.poll(async () => (await readMarks(page)).shownS).toBeGreaterThan(before);
  await page.getByRole('button', { name: 'Decision before' }).click();
  await expect.poll(async () => (await readMarks(page)).shownS).toBe(before);
  await expectNothingSerious(page, '.side');
  await page.getByRole('button', { name: 'Back to the debrief' }).click();
  await expect(see).toBeFocused();
  await expect(see).toBeInViewport();
});

test('without the network for what weighs decisions, the rest of the debrief stands and says so', async ({
  page,
  allowedMessages,
}) => {
  test.setTimeout(180_000);
  (allowedMessages as string[]).push('ERR_FAILED', 'Failed to load resource');
  await page.route(/\/atlas\/\w+\.atlas/, (route) => route.abort());
  await seedWork(page, wanderingWork());
  await page.goto(ADDRESS);
  await expect(page.getByText(/could not be loaded: it needs the network/)).toBeVisible(WEIGHED);
  await expect(page.locator('.truth li')).toHaveAttribute('data-stands', 'false');
  await expect(page.getByRole('heading', { name: 'Moments worth going back to' })).toHaveCount(0);
  await expectOneSheet(page);
});

const SIZES = [
  { width: 1920, height: 1080 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
];

async function openSeeded(page: Page): Promise<void> {
  await seedWork(page, wanderingWork());
  await page.goto(ADDRESS);
  await expect(page.getByRole('heading', { name: 'Moments worth going back to' })).toBeVisible(
    WEIGHED,
  );
}

/** One A4 page with nothing on it to press. */
async function expectOneSheet(page: Page): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('button')).toHaveCount(0);
  await expect(page.locator('.printed')).toContainText('To take away');
  const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  expect([...pdf.matchAll(/\/Type\s*\/Page\b/g)]).toHaveLength(1);
}

async function begin(page: Page): Promise<void> {
  await page.goto(ADDRESS);
  await page.getByRole('button', { name: 'Go to the plant' }).click();
  await page.getByRole('button', { name: 'Begin work' }).click();
}

async function openTab(page: Page, name: string): Promise<void> {
  await page.locator('.bench').getByRole('tab', { name, exact: true }).click();
}

async function claim(page: Page, part: string): Promise<void> {
  await page.getByRole('combobox', { name: 'Part', exact: true }).selectOption(part);
  await page.getByRole('button', { name: 'Name it' }).click();
}

async function close(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Mended/ }).click();
  await page.getByLabel('What was done').fill('Nothing yet.');
  await page.getByRole('button', { name: 'Sign and hand over' }).click();
  await page.getByRole('button', { name: 'Close the job' }).click();
  await page.getByRole('heading', { name: 'What was the matter' }).waitFor();
}
