import { defineConfig } from '@playwright/test';
import { CHROMIUM_ARGUMENTS, findChromium } from './src/cli/house/chromium.ts';
import { PLAYWRIGHT_REPORT } from './src/cli/house/stages.ts';

/** Apart from the port of `npm start`, so that a page someone is using is left alone. */
const port = Number(process.env.BROWSER_TEST_PORT ?? 4199);
const executablePath = findChromium();

export default defineConfig({
  testDir: 'tests/browser',
  outputDir: 'test-results',
  forbidOnly: process.env.CI !== undefined,
  retries: 0,
  // One at a time: a page draws with all that the small machine of CI has.
  workers: 1,
  timeout: 90_000,
  // A slow machine must not fail a test.
  expect: { timeout: 15_000 },
  reporter: [['list'], ['json', { outputFile: PLAYWRIGHT_REPORT }]],
  use: {
    baseURL: `http://localhost:${port}`,
    viewport: { width: 1366, height: 768 },
    // What is kept for offline use has tests of its own; elsewhere it would only take time.
    serviceWorkers: 'block',
    locale: 'en-GB',
    timezoneId: 'UTC',
    // A trace would weigh on the very frames that are measured.
    trace: 'off',
    screenshot: 'only-on-failure',
    launchOptions: {
      args: [...CHROMIUM_ARGUMENTS],
      ...(executablePath === undefined ? {} : { executablePath }),
    },
  },
  webServer: {
    command: `${JSON.stringify(process.execPath)} --import tsx src/cli/house/start.ts`,
    url: `http://localhost:${port}/healthz`,
    env: { PORT: String(port) },
    reuseExistingServer: false,
    gracefulShutdown: { signal: 'SIGTERM', timeout: 5_000 },
    timeout: 180_000,
  },
});
