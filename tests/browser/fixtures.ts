/** Every browser test starts here: a page that complains on its console has failed its test. */
import { test as base, expect } from '@playwright/test';

/** Said by Playwright itself where a test keeps the page from being kept for offline use. */
const BLOCKED = 'Service Worker registration blocked';

interface Fixtures {
  /** Messages a test expects, by a part of their text; all others fail it. */
  readonly allowedMessages: string[];
  readonly complaints: string[];
}

export const test = base.extend<Fixtures>({
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the pattern to know what a fixture needs.
  allowedMessages: async ({}, use) => {
    await use([]);
  },
  complaints: [
    async ({ context, page, allowedMessages }, use) => {
      const complaints: string[] = [];
      const note = (text: string) => {
        if (text.startsWith(BLOCKED)) return;
        if (!allowedMessages.some((allowed) => text.includes(allowed))) complaints.push(text);
      };
      // Of every page: a test may end one and open another.
      context.on('console', (message) => {
        if (message.type() === 'error' || message.type() === 'warning') {
          note(`${message.text()} (${message.location().url})`);
        }
      });
      context.on('weberror', (error) => note(`uncaught: ${error.error().message}`));
      page.on('crash', () => note('the page crashed'));
      await use(complaints);
      expect(complaints, 'unexpected console messages').toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
