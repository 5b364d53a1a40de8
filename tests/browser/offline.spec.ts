import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DIST } from '../../src/cli/house/paths.ts';
import { createPageServer, listenOnFreePort } from '../../src/server/index.ts';
import { expect, test } from './fixtures.ts';
import { expectOpen, readMarks } from './run-marks.ts';

const READY = /opens without a network/;

test.use({ serviceWorkers: 'allow' });

test('after one load the page is complete without a network: a start runs to modulation, drawn and wired', async ({
  page,
  context,
}) => {
  await page.goto('/');
  await expect(page.getByText(READY)).toBeVisible();
  await context.setOffline(true);
  await page.reload();
  await page.goto('/#/practise/watch/healthy-start');
  await expectOpen(page);
  await expect(page.locator('.schematic canvas')).toBeVisible();
  await page.getByRole('button', { name: 'Run at 20 times real time' }).click();
  await expect
    .poll(async () => (await readMarks(page)).step, { timeout: 60_000 })
    .toBe('modulation');
  await page.getByRole('tab', { name: 'Ladder' }).click();
  await expect(page.locator('.ladder svg').first()).toBeVisible();
  const atlas = await page.evaluate(async () => (await fetch('./atlas/dairy.atlas')).status);
  expect(atlas).toBe(200);
});

test('a newer version waits until it is asked for, and what is saved on the device stays', async ({
  page,
}) => {
  const root = mkdtempSync(join(tmpdir(), 'flamewright-page-'));
  cpSync(DIST, root, { recursive: true });
  const server = await createPageServer({ root });
  try {
    const port = await listenOnFreePort(server, { port: 0, host: '127.0.0.1' });
    await page.goto(`http://127.0.0.1:${port}/`);
    await expect(page.getByText(READY)).toBeVisible();
    await page.evaluate(() => localStorage.setItem('flamewright.kept-by-the-test', 'work'));

    releaseAnother(root);
    await page.reload();
    await expect(page.locator('meta[name="release"]')).toHaveCount(0);
    await page.getByRole('button', { name: 'Take it now' }).click();
    await expect(page.locator('meta[name="release"]')).toHaveCount(1);
    const kept = await page.evaluate(() => localStorage.getItem('flamewright.kept-by-the-test'));
    expect(kept).toBe('work');
  } finally {
    await server.close();
    rmSync(root, { recursive: true, force: true });
  }
});

/** The same page again but for one line of its text, as a release would change it. */
function releaseAnother(root: string): void {
  const page = join(root, 'index.html');
  writeFileSync(
    page,
    readFileSync(page, 'utf8').replace('<title>', '<meta name="release" content="2"><title>'),
  );
  rmSync(`${page}.gz`, { force: true });
  const worker = join(root, 'sw.js');
  const text = readFileSync(worker, 'utf8');
  const changed = text.replace(
    /(url:"index\.html",revision:")[0-9a-f]+"|(revision:")[0-9a-f]+(",url:"index\.html")/,
    (match) => match.replace(/revision:"[0-9a-f]+"/, 'revision:"00000000000000000000000000000002"'),
  );
  expect(changed).not.toBe(text);
  writeFileSync(worker, changed);
  rmSync(`${worker}.gz`, { force: true });
}
