/** A scenario of one's own: begun from a plant, changed by form and text, mended, run, saved, found again. */
import type { Page } from '@playwright/test';
import { expectContrast, expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';

const textOf = (page: Page) => page.getByRole('textbox', { name: 'The file as text' });

test('a start is begun from a plant, given a fault, mended, run, saved and found again', async ({
  page,
}) => {
  // What it can be told by takes a slow machine its time.
  test.slow();
  await page.goto('/#/teach');
  await page.getByRole('link', { name: 'Scenarios of your own' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Scenarios' })).toBeFocused();
  await expectNothingSerious(page, 'main');
  await page
    .getByRole('combobox', { name: 'Plant' })
    .selectOption({ label: 'School, heating boiler' });
  await page.getByLabel('Title').fill('No spark today');
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'No spark today' })).toBeVisible();
  await expect(page.getByText('In order.')).toBeVisible();

  // A remark of the writer outlives whatever the form does.
  const text = textOf(page);
  await text.fill((await text.inputValue()).replace('until:', '# half past seven\nuntil:'));
  await page.getByRole('button', { name: 'Add to: Faults' }).click();
  await page.getByRole('searchbox', { name: 'Search the catalogue' }).fill('electrode gap');
  const fault = page.getByRole('combobox', { name: 'Fault', exact: true });
  const [id = ''] = await fault.locator('option[value]:not([value=""])').allTextContents();
  await fault.selectOption(id);
  await expect(text).toHaveValue(new RegExp(`- \\{ fault: ${id}, severity: [\\d.]+ \\}`));
  await expect(text).toHaveValue(/\n# half past seven\nuntil:/);
  await expect(page.getByText('In order.')).toBeVisible();

  const severity = page.getByRole('textbox', { name: 'Severity' });
  await severity.fill('1e6');
  await expect(page.getByText('One thing to mend')).toBeVisible();
  await expect(severity).toHaveAttribute('aria-invalid', 'true');
  await page.getByRole('button', { name: /^Line \d+ .*severity/i }).click();
  await expect(text).toBeFocused();
  const line = await text.evaluate((area: HTMLTextAreaElement) =>
    area.value.slice(area.selectionStart).split('\n', 1).join(),
  );
  expect(line).toMatch(/^1000000/);
  await page.keyboard.press('ControlOrMeta+z');
  await expect(page.getByText('In order.')).toBeVisible();
  await page.getByRole('slider', { name: /Severity/ }).press('ArrowLeft');
  await expect(page.getByText('In order.')).toBeVisible();
  await expectNothingSerious(page, 'main');

  await page.getByRole('button', { name: 'Run it', exact: true }).first().click();
  const run = page.getByRole('region', { name: 'As it runs' });
  await expect(run.locator('.author-chart canvas').first()).toBeVisible();
  await expect(
    run
      .getByRole('region', { name: /Events/ })
      .getByRole('listitem')
      .first(),
  ).toBeVisible();
  await run.getByRole('button', { name: 'Take this as what a run must do' }).click();
  await expect(text).toHaveValue(/\nexpect:\n {2}steps:\n/);
  await expect(run.getByText('The file has changed since this run.')).toBeVisible();

  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('Saved on this device.')).toBeVisible();
  const told = page.getByRole('region', { name: 'What it can be told by' });
  await expect(told.getByText(/Difficulty \d of 5/)).toBeVisible({ timeout: 120_000 });
  await expectNothingSerious(page, 'main');

  const written = await text.inputValue();
  await page.reload();
  await expect(text).toHaveValue(written);
  await page.getByRole('link', { name: '← Scenarios' }).click();
  await page.getByRole('link', { name: 'No spark today' }).click();
  await expect(text).toHaveValue(written);
});

test('text that is not in order is kept as it was typed, and Escape lets Tab out of it', async ({
  page,
}) => {
  await page.goto('/#/teach/scenarios/start/dirty-lens');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('A pilot that nobody sees');
  await expect(textOf(page)).not.toBeEditable();
  await page.getByRole('button', { name: 'Copy to change it' }).click();
  await expect(page.getByText('not saved yet')).toBeVisible();
  const text = textOf(page);
  await text.fill('id: [half\n');
  await expect(page.getByText('The form waits as it was')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Line 1 / })).toBeVisible();
  await text.press('Tab');
  await expect(text).toHaveValue('id: [half\n  ');
  await text.press('Escape');
  await text.press('Tab');
  await expect(text).not.toBeFocused();
  await page.goto('/#/teach/scenarios');
  await page.getByRole('link', { name: 'dirty-lens-own' }).click();
  await expect(textOf(page)).toHaveValue('id: [half\n  ');
});

test.describe('with a conflict', () => {
  // The browser says so of what the page asked for and was refused.
  test.use({ allowedMessages: ['the server responded with a status of 409'] });

  test('the library of the server keeps versions, and tells of a conflict without losing either', async ({
    page,
    browser,
  }) => {
    test.slow();
    // Another name for each run: the library keeps all that was ever in it.
    const name = `shared-${Date.now()}`;
    await page.goto('/#/teach/scenarios/start/healthy-start');
    await page.getByRole('button', { name: 'Copy to change it' }).click();
    await expect(page.getByText('not saved yet')).toBeVisible();
    const text = textOf(page);
    const rename = async (id: string) =>
      text.fill((await text.inputValue()).replace(/^id: .*$/m, `id: ${id}`));
    await rename(name);
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect(page).toHaveURL(new RegExp(`/start/${name}$`));
    const shelf = page.getByRole('region', { name: 'Library on the server' });
    await shelf.getByRole('button', { name: 'Save to the server' }).click();
    await expect(shelf.getByText('The server has it as version 1.')).toBeVisible();

    const context = await browser.newContext({ serviceWorkers: 'block' });
    const other = await context.newPage();
    await other.goto(`/#/teach/scenarios/start/${name}`);
    const theirs = textOf(other);
    await expect(theirs).toHaveValue(await text.inputValue());
    await theirs.fill(`${await theirs.inputValue()}# theirs\n`);
    const theirShelf = other.getByRole('region', { name: 'Library on the server' });
    await theirShelf.getByRole('button', { name: 'Save to the server' }).click();
    await expect(theirShelf.getByText('The server has it as version 2.')).toBeVisible();
    await context.close();

    await text.fill(`${await text.inputValue()}# mine\n`);
    await shelf.getByRole('button', { name: 'Save to the server' }).click();
    await expect(shelf.getByText('Someone saved version 2 meanwhile.')).toBeVisible();
    await expect(text).toHaveValue(/# mine\n$/);
    await shelf.getByRole('button', { name: 'Save mine as the next version' }).click();
    await expect(shelf.getByText('The server has it as version 3.')).toBeVisible();
    await shelf.getByText('Versions: 3').click();
    await expectNothingSerious(page, 'main');
    await shelf.getByRole('button', { name: 'Bring back version 2' }).click();
    await expect(text).toHaveValue(/# theirs\n$/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(text).toHaveValue(/# mine\n$/);

    await page.goto('/#/teach/scenarios');
    const listed = page
      .getByRole('region', { name: 'Library on the server' })
      .getByRole('listitem')
      .filter({ has: page.locator(`a[href$="/${name}"]`) });
    await expect(listed).toContainText('Version 3');
  });
});

test.describe('in dark colours on a phone', () => {
  test.use({ colorScheme: 'dark', viewport: { width: 390, height: 844 } });

  test('both pages fit, with text and form as two tabs, and have enough contrast', async ({
    page,
  }) => {
    await page.goto('/#/teach/scenarios');
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expectFits(page);
    await expectContrast(page, 'main');
    await page.goto('/#/teach/scenarios/job/school-first-frost');
    await expect(page.getByRole('tab', { name: 'Form' })).toHaveAttribute('aria-selected', 'true');
    await expect(page.getByLabel('Title')).toHaveValue('First frost at the music school');
    await expectFits(page);
    await expectContrast(page, 'main');
    await page.getByRole('tab', { name: 'Text' }).click();
    await expect(textOf(page)).toHaveValue(/^# yaml-language-server/);
    await expectFits(page);
    await expectContrast(page, 'main');
  });
});
