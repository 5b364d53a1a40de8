import type { Page } from '@playwright/test';
import { expect } from './fixtures.ts';

/** Nothing to scroll sideways, and no button, tab or link standing by itself that a finger would miss. */
export async function expectFits(page: Page): Promise<void> {
  const wide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(wide, 'wider than the screen').toBeLessThanOrEqual(0);
  const small = await page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        'button, [role="tab"], summary, select, textarea, a.button, a.back',
      ),
    ]
      .filter((element) => element.offsetParent !== null)
      .filter((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width < 43.5 || height < 43.5;
      })
      .map((element) => element.textContent?.trim() || element.ariaLabel || element.className),
  );
  expect(small, 'small targets').toEqual([]);
}
