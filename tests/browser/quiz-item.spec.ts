/** A question by itself: picked on the drawing, on a phone, and looked at again on the record. */
import type { Locator, Page } from '@playwright/test';
import { expectNothingSerious } from './axe.ts';
import { expectFits } from './fits.ts';
import { expect, test } from './fixtures.ts';
import { asked, itemsOf, openQuiz, seed, TAKE } from './quiz-hands.ts';

const idOf = (kind: Parameters<typeof itemsOf>[0]) => itemsOf(kind, 1)[0]?.id ?? '';
const SURE = /^Fairly sure/;

async function ask(page: Page, ...ids: string[]): Promise<void> {
  await seed(page, openQuiz('short', ids));
  await page.goto(TAKE);
  await asked(page);
}

async function give(page: Page): Promise<void> {
  await page.getByRole('radio', { name: SURE }).check();
  await page.getByRole('button', { name: 'Answer', exact: true }).click();
  await page.locator('.item-reasons').waitFor();
}

/** Taps over the drawing, as someone would who does not see it, until the wanted thing is said. */
async function tapUntil(canvas: Locator, said: Locator, wanted: RegExp): Promise<boolean> {
  const box = await canvas.boundingBox();
  if (box === null) throw new Error('no drawing');
  for (let y = 40; y < box.height; y += 34) {
    for (let x = 40; x < box.width; x += 34) {
      await canvas.tap({ position: { x, y } });
      if (wanted.test((await said.textContent()) ?? '')) return true;
    }
  }
  return false;
}

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test('a place is picked on the drawing or in the list, and both say the same', async ({
    page,
  }) => {
    await ask(page, idOf('where'));
    const options = page.locator('.item-option input');
    const said = page.locator('.item-picked');
    const canvas = page.locator('.item-spot canvas');
    await canvas.waitFor();
    await expectFits(page);
    expect(await tapUntil(canvas, said, /^Picked: /)).toBe(true);
    await expect(page.locator('.item-option input:checked')).toHaveCount(1);
    const picked = page.locator('.item-option:has(input:checked) > span').last();
    await expect(said).toHaveText(`Picked: ${await picked.textContent()}.`);
    // From the drawing to the list: one more by key, and the words follow.
    const first = await page
      .locator('.item-option input:checked')
      .evaluate((chosen) => [...document.querySelectorAll('.item-option input')].indexOf(chosen));
    await options.nth(first).focus();
    await page.keyboard.press('ArrowDown');
    await expect(options.nth(first)).not.toBeChecked();
    await expect(said).toHaveText(`Picked: ${await picked.textContent()}.`);
    // What is no answer is said, and takes nothing away.
    expect(await tapUntil(canvas, said, /not one of the places/)).toBe(true);
    await expect(page.locator('.item-option input:checked')).toHaveCount(1);
  });

  test('every kind of answer fits the screen, and a wrong number is said to be none', async ({
    page,
  }) => {
    await ask(page, idOf('calculation'), idOf('order'), idOf('cause'));
    await expectFits(page);
    const number = page.getByRole('textbox', { name: 'Your number' });
    await number.fill('1,2.3');
    await expect(number).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByText(/^That is no number/)).toBeVisible();
    await number.fill('12,5');
    await expect(number).toHaveAttribute('aria-invalid', 'false');
    // The same amount, whatever unit it is shown in.
    await page.getByRole('button', { name: /^Units: SI/ }).click();
    await page.getByRole('button', { name: /^Units: US/ }).click();
    await expect(number).toHaveValue('12.5');
    await give(page);
    await expect(page.getByText('Worked solution')).toBeVisible();
    await expectFits(page);
    await page.getByRole('button', { name: 'Next question' }).click();
    await asked(page);
    const lines = page.locator('.item-order-text');
    const [first = '', second = ''] = await lines.allTextContents();
    await page.getByRole('button', { name: `Later: ${first}` }).click();
    await expect(lines.first()).toHaveText(second);
    await expect(lines.nth(1)).toHaveText(first);
    await expect(page.getByRole('button', { name: `Later: ${first}` })).toBeFocused();
    await expectFits(page);
    // Back as it was: that may be left so, by key, and the focus stays there.
    await page.getByRole('button', { name: `Earlier: ${first}` }).click();
    const leave = page.getByRole('button', { name: 'Leave the order as it is' });
    await leave.press('Enter');
    await expect(leave).toBeFocused();
    await expect(leave).toHaveAttribute('aria-pressed', 'true');
    await give(page);
    await page.getByRole('button', { name: 'Next question' }).click();
    await asked(page);
    await page.locator('.item-drawn[data-kind="chart"] canvas').first().waitFor();
    await expectFits(page);
  });
});

test('the record opens at the moment that decides, runs on past its end, and gives the focus back', async ({
  page,
}) => {
  await ask(page, idOf('cause'));
  await page.locator('.item-options input').first().check();
  await give(page);
  const see = page.getByRole('button', { name: /^See it on the record/ }).first();
  await see.focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: /^On the record, at / });
  const clock = dialog.getByRole('timer');
  const title = await dialog.getByRole('heading', { level: 2 }).first().textContent();
  const at = /at (\S+)$/.exec(title ?? '')?.[1] ?? '';
  await expect(clock).toHaveText(at);
  await expect(dialog.locator('.chart canvas').first()).toBeVisible();
  await expectNothingSerious(page, '.item-replay');
  await dialog.getByRole('button', { name: 'End of the record' }).click();
  await expect(clock).not.toHaveText(at);
  const end = (await clock.textContent()) ?? '';
  await dialog.getByRole('button', { name: '20 times real time' }).click();
  await expect
    .poll(async () => secondsOf(await clock.textContent()))
    .toBeGreaterThan(secondsOf(end) + 5);
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(see).toBeFocused();
});

test('what follows is shown where it comes, after the end of what was asked about', async ({
  page,
}) => {
  await ask(page, idOf('what follows'));
  await page.locator('.item-options input').first().check();
  await give(page);
  await page.locator('.item-reasons li[data-right="true"] .item-see').click();
  const dialog = page.getByRole('dialog', { name: /^On the record, at / });
  const title = (await dialog.getByRole('heading', { level: 2 }).first().textContent()) ?? '';
  const clock = dialog.getByRole('timer');
  await expect(clock).toHaveText(title.replace(/^.* at /, ''));
  const decidedS = secondsOf(await clock.textContent());
  await dialog.getByRole('button', { name: 'End of the record' }).click();
  await expect.poll(async () => secondsOf(await clock.textContent())).toBeLessThan(decidedS);
});

test('a wire that is named is found on the ladder, which tells nothing of what is live', async ({
  page,
}) => {
  await ask(page, wired());
  await page.getByRole('button', { name: 'Ladder drawing' }).press('Enter');
  const show = page.getByRole('button', { name: /^Show wire / }).first();
  await show.click();
  await expect(show).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('.item-ladder .ladder svg')).toBeVisible();
  await expect(page.locator('.item-ladder')).not.toContainText(/\blive\b/);
  await expectNothingSerious(page, '.item-drawn[data-kind="ladder"]');
});

/** An item whose readings are of wires. */
function wired(): string {
  const card = itemsOf('next check', 10, 'dairy').find(({ topic }) =>
    topic.includes('safety relay'),
  );
  return card?.id ?? '';
}

/** Of a clock as it is written: '4:22.5'. */
function secondsOf(text: string | null): number {
  const [minutes = '0', seconds = '0'] = (text ?? '').split(':');
  return Number(minutes) * 60 + Number(seconds);
}
