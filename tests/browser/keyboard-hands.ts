/** Hands on a keyboard: nothing here points, and nothing takes the focus but the keys. */
import type { Locator, Page } from '@playwright/test';
import { expect } from './fixtures.ts';

/** More stops than any page here has between two places. */
const MOST_STOPS = 250;

/** Tab, or Shift and Tab where the place lies behind, until the focus is there. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let stops = 0; stops < MOST_STOPS; stops += 1) {
    const way = await target.evaluate((wanted) => {
      const at = document.activeElement ?? document.body;
      if (at === wanted) return 'there';
      const apart = at.compareDocumentPosition(wanted);
      return apart & Node.DOCUMENT_POSITION_PRECEDING ? 'behind' : 'ahead';
    });
    if (way === 'there') return;
    await page.keyboard.press(way === 'behind' ? 'Shift+Tab' : 'Tab');
  }
  throw new Error(`no key leads to ${target}`);
}

export async function activate(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeEnabled();
  await tabTo(page, target);
  await page.keyboard.press('Enter');
}

export async function check(page: Page, box: Locator): Promise<void> {
  await tabTo(page, box);
  await page.keyboard.press('Space');
  await expect(box).toBeChecked();
}

/** Through a closed list by arrow keys; what they pass must not count as chosen for good. */
export async function choose(page: Page, list: Locator, text: string | RegExp): Promise<void> {
  await tabTo(page, list);
  const steps = await list.evaluate(
    (select, wanted) => {
      if (!(select instanceof HTMLSelectElement)) throw new Error('not a list');
      const fits = new RegExp(wanted);
      const to = [...select.options].findIndex(({ label }) => fits.test(label));
      if (to < 0) throw new Error(`not in the list: ${wanted}`);
      return to - select.selectedIndex;
    },
    typeof text === 'string' ? `^${text}$` : text.source,
  );
  for (let i = 0; i < Math.abs(steps); i += 1) {
    await page.keyboard.press(steps > 0 ? 'ArrowDown' : 'ArrowUp');
  }
  await expect(list).toBeFocused();
  await expect(list.locator('option:checked')).toHaveText(text);
}

export async function typeInto(page: Page, field: Locator, text: string): Promise<void> {
  await tabTo(page, field);
  await page.keyboard.type(text);
}

/** Tabs of the bench or of the plant: the row is one stop, arrows move along it. */
export async function openTab(page: Page, name: string, row = '.bench'): Promise<void> {
  const tab = page.locator(row).getByRole('tab', { name, exact: true });
  await tabTo(page, page.locator(row).getByRole('tab', { selected: true }));
  const count = await page.locator(row).getByRole('tab').count();
  for (let i = 0; i < count; i += 1) {
    if ((await tab.getAttribute('aria-selected')) === 'true') break;
    await page.keyboard.press('ArrowRight');
  }
  await expect(tab).toBeFocused();
}
