import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect } from './fixtures.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Nothing that axe calls serious or critical in a part of the page. */
export async function expectNothingSerious(page: Page, part: string): Promise<void> {
  await expectClean(new AxeBuilder({ page }).withTags(TAGS).include(part));
}

export async function expectContrast(page: Page, part: string): Promise<void> {
  await expectClean(new AxeBuilder({ page }).withRules(['color-contrast']).include(part));
}

async function expectClean(builder: AxeBuilder): Promise<void> {
  const { violations } = await builder.analyze();
  const serious = violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
  expect(serious).toEqual([]);
}
