import type { Page } from '@playwright/test';
import { expect } from './fixtures.ts';

/** Where the run stands, as the page writes it on its root element. */
export interface RunMarks {
  readonly shownS: number;
  readonly step: string;
  readonly mode: string;
  readonly atS: number;
  readonly headS: number;
  readonly hash: string;
}

export async function readMarks(page: Page): Promise<RunMarks> {
  const data = await page.evaluate(() => ({ ...document.documentElement.dataset }));
  return {
    shownS: Number(data.runTime),
    step: data.runStep ?? '',
    mode: data.runMode ?? '',
    atS: Number(data.runAt),
    headS: Number(data.runHead),
    hash: data.runHash ?? '',
  };
}

export async function openRun(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await expectOpen(page);
}

export async function expectOpen(page: Page): Promise<void> {
  await expect(page.locator('html')).toHaveAttribute('data-run-phase', 'open', { timeout: 20_000 });
}

export async function runTo(page: Page, step: string): Promise<void> {
  await page.getByRole('button', { name: 'Run at 20 times real time' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-run-step', step, { timeout: 60_000 });
}

/** Stops and waits until what is shown is where the run stands. */
export async function pause(page: Page): Promise<RunMarks> {
  const marks = await readMarks(page);
  if (marks.mode !== 'paused') await page.getByRole('button', { name: 'Pause' }).click();
  await expect
    .poll(async () => {
      const { mode, shownS, atS } = await readMarks(page);
      return mode === 'paused' && shownS === atS;
    })
    .toBe(true);
  return readMarks(page);
}

/** The chart's own cursor. */
export function cursorOf(page: Page) {
  return page.getByRole('region', { name: 'Start chart' }).getByRole('slider');
}

/** Looks back to a whole second by the keys of the chart's cursor. */
export async function lookBackTo(page: Page, tS: number): Promise<void> {
  await cursorOf(page).press('Home');
  await expect.poll(async () => (await readMarks(page)).atS).toBe(0);
  for (let s = 0; s < tS; s += 1) await page.keyboard.press('ArrowRight');
  await expect.poll(async () => (await readMarks(page)).atS).toBe(tS);
}
