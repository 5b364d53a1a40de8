import { type Browser, chromium } from '@playwright/test';
import { createPageServer, listenOnFreePort } from '../../server/index.ts';
import { CHROMIUM_ARGUMENTS, findChromium } from './chromium.ts';
import { buildPageIfStale } from './page-build.ts';
import { DIST } from './paths.ts';

/** Builds and serves the page to this machine alone and opens a browser for as long as `use` takes. */
export async function withPage<T>(
  use: (browser: Browser, address: string) => Promise<T>,
): Promise<T> {
  const executablePath = findChromium();
  if (executablePath === undefined) {
    throw new Error('No Chromium found on PATH; the environment variable CHROMIUM can name one.');
  }
  await buildPageIfStale();
  const server = await createPageServer({ root: DIST });
  try {
    const port = await listenOnFreePort(server, { port: 0, host: '127.0.0.1' });
    const browser = await chromium.launch({ executablePath, args: [...CHROMIUM_ARGUMENTS] });
    try {
      return await use(browser, `http://127.0.0.1:${port}/`);
    } finally {
      await browser.close();
    }
  } finally {
    await server.close();
  }
}
