/** What people do in a class, step by step. */
import type { Page } from '@playwright/test';
import { expect } from './fixtures.ts';

/** Several pages of a class run in one browser. */
const SLOW = { timeout: 45_000 };

export interface OpenedHere {
  readonly code: string;
}

/** Opens a class about the first start there is, and comes to its page. */
export async function openClassHere(
  page: Page,
  url: string,
  way: 'Everyone on one plant' | 'A copy each',
): Promise<OpenedHere> {
  await page.goto(`${url}/#/teach`);
  await page.getByRole('link', { name: 'Open a class' }).click();
  await page.getByRole('radio', { name: way }).check();
  await page.getByRole('button', { name: 'Open the class' }).click();
  const code = page.locator('.class-code');
  await expect(code).toHaveText(/^[A-Z0-9]{3} [A-Z0-9]{3}$/, SLOW);
  return { code: ((await code.textContent()) ?? '').replace(/\s/g, '') };
}

export async function joinClass(page: Page, url: string, code: string, name: string) {
  await page.goto(`${url}/#/class/${code}`);
  await page.getByLabel('Your name').fill(name);
  await page.getByRole('button', { name: 'Join', exact: true }).click();
  await expect(page.getByRole('region', { name: 'The class' })).toContainText(name, SLOW);
}

/** Opens a panel of the class's page, whichever is open. */
export async function openPanel(page: Page, button: string): Promise<void> {
  const opener = page.getByRole('button', { name: button, exact: true });
  if ((await opener.getAttribute('aria-pressed')) !== 'true') await opener.click();
}

/** Where a run stands and which run it is: the hash belongs to that moment. */
export async function runOf(page: Page) {
  return page.evaluate(() => {
    const { runAt, runHead, runHash, runMode } = document.documentElement.dataset;
    return { at: Number(runAt), head: Number(runHead), hash: runHash, mode: runMode };
  });
}

/** All of them have come to where the first one stands, and are the same run bit for bit. */
export async function expectSameRun(first: Page, ...others: readonly Page[]): Promise<void> {
  const { at, hash } = await runOf(first);
  expect(hash).toBeTruthy();
  for (const page of others) {
    await expect
      .poll(async () => {
        const now = await runOf(page);
        return `${now.at} ${now.hash}`;
      }, SLOW)
      .toBe(`${at} ${hash}`);
  }
}

/** Waits until a run has gone on beyond a moment, s. */
export async function waitBeyond(page: Page, atS: number): Promise<void> {
  await expect.poll(async () => (await runOf(page)).at, SLOW).toBeGreaterThan(atS);
}

export { SLOW };
