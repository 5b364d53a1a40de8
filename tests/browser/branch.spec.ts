/** Branches: a job gone on with otherwise from a moment of it, played to its claim, and compared. */
import type { Page } from '@playwright/test';
import { expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';
import { expectOpen, readMarks } from './run-marks.ts';
import { seedWork, wanderingWork } from './seeded-work.ts';

const WEIGHED = { timeout: 90_000 };
const SIZES = [
  { width: 1920, height: 1080 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
];

test('a branch from the moment of a guess, left and reloaded in the middle, played to its claim, lies beside the own way', async ({
  page,
}) => {
  test.setTimeout(300_000);
  const work = wanderingWork();
  await seedWork(page, work);
  await page.goto(`/#/practise/job/${work.id}`);
  const early = page.locator('.moment').filter({ hasText: 'Worked on the gas regulator' });
  await expect(early).toBeVisible(WEIGHED);
  await early.getByRole('button', { name: /^Go on from moment/ }).click();

  await test.step('the plant stands as just before it, and the page says that it is a branch', async () => {
    await expect(page).toHaveURL(/\/branch\/1$/);
    await expectOpen(page);
    expect((await readMarks(page)).headS).toBeCloseTo(492, 0);
    await expect(page.locator('.branch-strip')).toContainText('From 8:12.0 on, otherwise');
    await openTab(page, 'Notes');
    await expect(page.locator('.suspects li')).toHaveText([/^gas regulator/, /^low-gas switch/]);
    await expectNothingSerious(page, '.branch-strip');
  });
  await test.step('a reading in place of the guess', async () => {
    await openTab(page, 'Tools');
    const form = page.getByRole('form', { name: 'Connect a tool' });
    await form.getByRole('combobox', { name: 'Tool' }).selectOption({ label: 'Manometer' });
    await form
      .getByRole('combobox', { name: 'From' })
      .selectOption({ label: 'Gas behind the strainer' });
    await form.getByRole('button', { name: 'Connect' }).click();
    // The multimeter that was on at that moment is on again.
    await expect(page.locator('.meter-reading')).toHaveText([/V$/, /mbar$/]);
    await openTab(page, 'Acts');
    await page.getByRole('button', { name: 'Reset', exact: true }).click();
    await stepTo(page, 'purge');
  });
  await test.step('a reload in the middle goes on where it was', async () => {
    const before = await readMarks(page);
    await page.reload();
    await expectOpen(page);
    await expect.poll(async () => readMarks(page)).toEqual(before);
    await expect(page.locator('.branch-strip')).toBeVisible();
  });
  await test.step('on to the reading and the claim', async () => {
    await stepTo(page, 'main trial');
    await openTab(page, 'Tools');
    await page.getByRole('button', { name: 'Pin all readings' }).click();
    await openTab(page, 'Finish');
    await page
      .getByRole('checkbox', { name: /behind the strainer/ })
      .first()
      .check();
    await page.getByRole('combobox', { name: 'Part', exact: true }).selectOption('strainer');
    await page.getByRole('button', { name: 'Name it' }).click();
    await page.getByRole('button', { name: 'Close the branch and compare' }).click();
  });
  await test.step('the two side by side', async () => {
    const table = page.getByRole('table');
    await expect(table).toBeVisible(WEIGHED);
    await expect(page.locator('.compared')).toContainText(/came to its cause \d+ min sooner/);
    await expect(rowOf(page, 'Named').getByRole('cell')).toHaveText([
      'strainer (right)',
      'strainer (right)',
    ]);
    const worked = rowOf(page, 'Work before the readings spoke for it').getByRole('cell');
    await expect(worked).toHaveText(['1', '0']);
    const [own, branch] = await minutesIn(page, 'Minutes to the last cause named');
    expect(branch).toBeLessThan(own ?? 0);
    await expectNothingSerious(page, 'body');
    for (const size of SIZES) {
      await page.setViewportSize(size);
      await expectFits(page);
    }
  });
  await test.step('the own work is as it was, and knows its branch', async () => {
    await page.getByRole('link', { name: 'Back to the debrief' }).click();
    await expect(page.getByRole('region', { name: 'Gone on otherwise' })).toContainText(
      'From 8:12.0 on',
      WEIGHED,
    );
    const kept = await page.evaluate(
      (key) => JSON.parse(localStorage.getItem(key) ?? '{}'),
      `flamewright.work.job.${work.id}`,
    );
    expect(kept.log).toEqual(JSON.parse(JSON.stringify(work.log)));
    expect(kept.desk).toEqual(JSON.parse(JSON.stringify(work.desk)));
  });
});

test('a branch is listed on the Practise page as what it is, gone back into, and erased', async ({
  page,
}) => {
  test.setTimeout(240_000);
  const work = wanderingWork();
  await seedWork(page, work);
  await page.goto(`/#/practise/job/${work.id}`);
  await page.getByRole('button', { name: 'Go on from moment 1 otherwise' }).click(WEIGHED);
  await expectOpen(page);
  await page.goto('/#/practise');
  const entry = page.locator('.saved-entry').filter({ hasText: 'A branch' });
  await expect(entry).toHaveCount(1);
  await entry.getByRole('link', { name: /^Go on/ }).click();
  await expectOpen(page);
  await page.getByRole('button', { name: 'Close the branch and compare' }).click();
  await expect(page.locator('.compared')).toContainText('has named no cause yet', WEIGHED);
  await page.getByRole('button', { name: 'Go on with the branch' }).click();
  await expect(page.locator('.branch-strip')).toBeVisible();
  await page.getByRole('button', { name: 'Close the branch and compare' }).click();
  await page.getByRole('button', { name: 'Erase the branch' }).click();
  await page.getByRole('button', { name: 'Erase', exact: true }).click();
  await expect(page.getByRole('heading', { name: /^Debrief: / })).toBeVisible();
  expect(await branchHeadS(page, work.id)).toBeNull();
  await page.goto(`/#/practise/job/${work.id}/branch/1`);
  await expect(page.getByText('This branch is not on this device.')).toBeVisible();
});

async function openTab(page: Page, name: string): Promise<void> {
  await page.locator('.bench').getByRole('tab', { name, exact: true }).click();
}

function rowOf(page: Page, name: string) {
  return page.getByRole('row').filter({ has: page.getByRole('rowheader', { name, exact: true }) });
}

async function minutesIn(page: Page, row: string): Promise<number[]> {
  const texts = await rowOf(page, row).getByRole('cell').allTextContents();
  return texts.map((text) => Number.parseFloat(text));
}

function branchHeadS(page: Page, id: string): Promise<number | null> {
  return page.evaluate((key) => {
    const text = localStorage.getItem(key);
    return text === null ? null : (JSON.parse(text).headS as number);
  }, `flamewright.work-branch.job.1.${id}`);
}

/** From step to step, until the run stands at the first moment of one. */
async function stepTo(page: Page, wanted: string): Promise<void> {
  for (let i = 0; i < 30; i += 1) {
    const before = await readMarks(page);
    await page.getByRole('button', { name: 'Next step' }).click();
    await expect
      .poll(async () => (await readMarks(page)).headS, { timeout: 60_000 })
      .toBeGreaterThan(before.headS);
    await expect
      .poll(
        async () => {
          const { mode, shownS, atS } = await readMarks(page);
          return mode === 'paused' && shownS === atS;
        },
        { timeout: 60_000 },
      )
      .toBe(true);
    if ((await readMarks(page)).step === wanted) return;
  }
  throw new Error(`never came to ${wanted}`);
}
