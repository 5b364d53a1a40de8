/** The learner map: from results on the device to what to practise next, out as a file and in again. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expectContrast, expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';

const KEY = 'flamewright.results';
const ADDRESS = '/#/practise/map';

const job = (day: number, id: string, skills: readonly string[], more: object = {}) => ({
  kind: 'job',
  id,
  startedISO: `2026-05-0${day}T09:00:00.000Z`,
  atISO: `2026-05-0${day}T10:00:00.000Z`,
  skills,
  difficulty: -2,
  guidance: 'practice',
  hints: 0,
  outcome: 0.9,
  conduct: 'clean',
  parts: { found: 'by readings', pathScore: 0.8 },
  ...more,
});
const RESULTS = [
  job(1, 'laundry-evening-wash', ['fuel', 'wiring'], { guidance: 'guided', hints: 2 }),
  job(2, 'school-cold-classrooms', ['air', 'sequence']),
  job(3, 'dairy-every-other-time', ['sensing', 'sequence'], {
    outcome: 0.02,
    conduct: 'unsafe',
    parts: { found: 'not found', pathScore: 0.3 },
  }),
  job(4, 'laundry-where-the-volts-stop', ['ignition'], {
    kind: 'drill',
    guidance: null,
    outcome: 0,
    conduct: null,
    parts: { found: null, pathScore: null },
  }),
];

test('a newcomer is led from the first page to the map in two clicks, and on to a first lesson', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('link', { name: /^Practise/ }).click();
  await expect(page.locator('.next-line')).toContainText('A guided start');
  await page.getByRole('link', { name: 'Learner map' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Learner map' })).toBeFocused();
  await expect(page.locator('.skill-word')).toHaveText(Array(9).fill('not yet tried'));
  await expect(page.getByRole('button', { name: 'Export results' })).toBeDisabled();
  await page.locator('.next-list a').first().click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('A guided start');
});

test('results show by skill, in a table, and each with its parts; a suggestion sets its guidance', async ({
  page,
}) => {
  await openMap(page);
  const sensing = page.getByRole('button', { name: /^Flame sensing/ });
  await expect(sensing).toContainText('1 result, 3 May');
  await expect(page.getByRole('button', { name: /^Combustion/ })).toContainText('not yet tried');
  const unsafe = page.getByRole('row', { name: /It runs when you come/ });
  await expect(unsafe).toContainText('not found');
  await expect(unsafe).toContainText('unsafe');

  await sensing.focus();
  await page.keyboard.press('Enter');
  await expect(sensing).toHaveAttribute('aria-pressed', 'true');
  await expect(
    page.getByRole('heading', { name: 'Results that tell of flame sensing' }),
  ).toBeVisible();
  await expect(page.locator('.learner-history tbody tr')).toHaveCount(1);
  await page.getByRole('button', { name: 'All skills' }).click();
  await expect(page.locator('.learner-history tbody tr')).toHaveCount(4);

  await page.getByRole('button', { name: 'Table' }).click();
  const row = page.getByRole('row', { name: /^Fuel/ });
  await expect(row).toContainText('1 May');
  await expect(page.locator('.learner-skills tbody tr')).toHaveCount(9);

  const guided = page.locator('.next-list a', { hasText: 'guided' }).first();
  await guided.click();
  await expect(page.getByRole('radio', { name: /^Guided/ })).toBeChecked();
});

test('results go out as a file, are erased, and come in again; a broken file is refused with its place', async ({
  page,
}) => {
  await openMap(page);
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export results' }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toBe('flamewright-results.json');
  const text = readFileSync(await download.path(), 'utf8');

  await page.getByRole('button', { name: 'Erase all results' }).click();
  await page.getByRole('button', { name: 'Erase', exact: true }).click();
  await expect(page.getByText('All results are erased.')).toBeVisible();
  await expect(page.locator('.skill-word')).toHaveText(Array(9).fill('not yet tried'));

  await bringIn(page, text.replace('"outcome": 0.02', '"outcome": 2'));
  await expect(page.locator('.learner-said')).toContainText('results.2.outcome');
  await expect(page.locator('.learner-said')).toContainText('a number from 0 to 1');
  await bringIn(page, 'My results');
  await expect(page.locator('.learner-said')).toContainText('no results of Flamewright');
  await expect(page.locator('.skill-word')).toHaveText(Array(9).fill('not yet tried'));

  await bringIn(page, text);
  await expect(page.getByText('4 results taken in.')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('button', { name: /^Fuel/ })).toContainText('1 result');
});

test('another page that adds a result shows here, and nothing is lost', async ({
  page,
  context,
}) => {
  await openMap(page);
  const other = await context.newPage();
  await other.goto(ADDRESS);
  await other.getByRole('heading', { level: 1 }).waitFor();
  const more = job(5, 'school-first-frost', ['combustion']);
  await bringIn(other, JSON.stringify(fileOf([more])));
  await expect(page.getByRole('button', { name: /^Combustion/ })).toContainText('1 result');
  await expect(page.getByRole('button', { name: /^Fuel/ })).toContainText('1 result');
});

test('a drill that was answered counts once, however often its answer is read', async ({
  page,
}) => {
  await page.goto('/#/practise/drill/laundry-where-the-string-ends');
  await page.getByRole('button', { name: /^Begin/ }).click();
  await page.getByRole('radio', { name: 'at the high limit' }).check();
  await page.getByRole('button', { name: 'That is my answer' }).click();
  await expect(page.getByText('This counts in your learner map.')).toBeVisible();
  await page.reload();
  await page.getByRole('link', { name: 'See the map' }).click();
  await expect(page.getByRole('button', { name: /^Wiring/ })).toContainText('1 result');
  await expect(page.getByRole('row', { name: /Where does the string end/ })).toContainText(
    'answered right',
  );
});

test('a job that was handed over counts for its skills, for conduct, and with its guidance', async ({
  page,
}) => {
  await page.goto('/#/practise/job/dairy-after-the-road-works/assessment');
  await page.getByRole('button', { name: 'Go to the plant' }).click();
  await page.getByRole('button', { name: 'Begin work' }).click();
  await page.locator('.bench').getByRole('tab', { name: 'Finish', exact: true }).click();
  await page.getByRole('combobox', { name: 'Part', exact: true }).selectOption('fan belt');
  await page.getByRole('button', { name: 'Name it' }).click();
  await page.getByRole('button', { name: /^Mended/ }).click();
  await page.getByLabel('What was done').fill('Nothing yet.');
  await page.getByRole('button', { name: 'Sign and hand over' }).click();
  await page.getByRole('button', { name: 'Close the job' }).click();
  await page.getByRole('link', { name: 'See the map' }).click({ timeout: 60_000 });
  for (const skill of ['Fuel', 'Sequence', 'Conduct']) {
    await expect(page.getByRole('button', { name: new RegExp(`^${skill}`) })).toContainText(
      '1 result',
    );
  }
  const row = page.getByRole('row', { name: /Steam lost before the night shift/ });
  await expect(row).toContainText('not found');
  await expect(row).toContainText('assessment');
});

for (const [width, height] of [
  [1366, 768],
  [1920, 1080],
  [820, 1180],
  [390, 844],
] as const) {
  test(`at ${width} wide the map fits, and axe finds nothing serious`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openMap(page);
    await expectFits(page);
    await page.getByRole('button', { name: /^Limits/ }).click();
    await expectFits(page);
    await expectNothingSerious(page, 'body');
    await page.getByRole('button', { name: 'Table' }).click();
    await expectFits(page);
    await expectNothingSerious(page, 'body');
  });
}

test.describe('in dark colours', () => {
  test.use({ colorScheme: 'dark' });
  test('the map has enough contrast', async ({ page }) => {
    await openMap(page);
    await page.getByRole('button', { name: /^Limits/ }).click();
    await expectContrast(page, 'body');
  });
});

async function openMap(page: Page): Promise<void> {
  await page.goto('/');
  await page.evaluate(([key, text]) => localStorage.setItem(key, text), [
    KEY,
    JSON.stringify(fileOf(RESULTS)),
  ] as const);
  await page.goto(ADDRESS);
  await page.getByRole('heading', { level: 1, name: 'Learner map' }).waitFor();
}

async function bringIn(page: Page, text: string): Promise<void> {
  await page.getByLabel('Import results').setInputFiles({
    name: 'results.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
}

function fileOf(results: readonly object[]) {
  return { file: 'flamewright results', v: 1, erasedISO: null, results };
}
