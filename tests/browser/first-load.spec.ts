import { gzipSync } from 'node:zlib';
import { measureFirstLoad } from '../../src/cli/house/first-load.ts';
import { DIST } from '../../src/cli/house/paths.ts';
import { expect, test } from './fixtures.ts';

const LIMIT_BYTES = 350 * 1024;

test('the first page fetches no more than 350 kB of packed script, and no drawing library', async ({
  page,
}) => {
  const scripts: Promise<Buffer>[] = [];
  page.on('response', (response) => {
    if (/\.js(\?|$)/.test(response.url())) scripts.push(response.body());
  });
  await page.goto('/');
  await page.waitForLoadState('networkidle');
  const texts = await Promise.all(scripts);
  const packedBytes = texts.reduce((sum, text) => sum + gzipSync(text).length, 0);
  expect(texts.length).toBeGreaterThan(0);
  expect(packedBytes).toBeLessThanOrEqual(LIMIT_BYTES);
  expect(texts.filter((text) => text.includes('pixi'))).toHaveLength(0);
});

test('the built entry and all it imports at once stay within 350 kB packed', () => {
  const load = measureFirstLoad(DIST);
  expect(load.scripts.length).toBeGreaterThan(0);
  expect(load.gzipBytes).toBeLessThanOrEqual(LIMIT_BYTES);
});

test('a start that is watched loads the engine and nothing that reasons', async ({ page }) => {
  const scripts: Promise<string>[] = [];
  page.context().on('response', (response) => {
    // One that comes as the test ends has nothing more to tell.
    if (/\.js(\?|$)/.test(response.url())) scripts.push(response.text().catch(() => ''));
  });
  await page.goto('/#/practise/watch/healthy-start');
  await page.locator('canvas').first().waitFor();
  await page.waitForLoadState('networkidle');
  const texts = await Promise.all(scripts);
  // An act of the engine's tables, and the words with which an unreadable atlas is turned away.
  expect(texts.filter((text) => text.includes('reset-limits')).length).toBeGreaterThan(0);
  expect(texts.filter((text) => text.includes('not an atlas of this version'))).toHaveLength(0);
});
