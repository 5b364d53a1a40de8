/** A server of classes with a data folder of its own, and the people of a class, each on a device. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from '@playwright/test';
import { DIST, ROOT } from '../../src/cli/house/paths.ts';
import { loadLibrary } from '../../src/cli/library.ts';
import { startServer } from '../../src/server/index.ts';
import { test as base, expect } from './fixtures.ts';

export interface ClassPeople {
  /** Opens a page on a device of its own: what is kept there no other page sees. */
  onDevice(name: string, size: { width: number; height: number }): Promise<Page>;
}

interface ClassFixtures {
  readonly classUrl: string;
  readonly people: ClassPeople;
}

export const test = base.extend<ClassFixtures>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the pattern to know what a fixture needs.
  classUrl: async ({}, use) => {
    const dataFolder = await mkdtemp(join(tmpdir(), 'flamewright-class-'));
    const server = await startServer({
      root: process.env.BROWSER_TEST_PAGE ?? DIST,
      settings: { port: 0, host: '127.0.0.1', dataFolder, log: 'error' },
      library: () => loadLibrary(ROOT),
    });
    await use(server.url);
    await server.stop();
    await rm(dataFolder, { recursive: true, force: true });
  },
  people: async ({ browser, complaints, allowedMessages }, use) => {
    const pages: Page[] = [];
    await use({
      async onDevice(name, viewport) {
        const page = await devicePage(browser, viewport);
        pages.push(page);
        const note = (text: string) => {
          const isAllowed = ['Service Worker registration blocked', ...allowedMessages].some(
            (one) => text.includes(one),
          );
          if (!isAllowed) complaints.push(`${name}: ${text}`);
        };
        page.on('console', (message) => {
          if (['error', 'warning'].includes(message.type())) note(message.text());
        });
        page.on('pageerror', (error) => note(`uncaught: ${error.message}`));
        return page;
      },
    });
    for (const page of pages) await page.context().close();
  },
});

async function devicePage(browser: Browser, viewport: { width: number; height: number }) {
  const context = await browser.newContext({
    viewport,
    serviceWorkers: 'block',
    locale: 'en-GB',
    timezoneId: 'UTC',
    reducedMotion: 'reduce',
  });
  return context.newPage();
}

export { expect };
