/** What goes wrong is said, with a way on. */
import { expect, test } from './fixtures.ts';

test('an address of no scenario says so and leads to another', async ({ page }) => {
  await page.goto('/#/practise/watch/no-such-start');
  await expect(page.getByRole('alert')).toContainText('There is no scenario of this name.');
  await page.getByRole('link', { name: 'Choose another start' }).click();
  await expect(page.getByRole('heading', { name: 'Practise' })).toBeVisible();
});

test('an address of no quiz says so and leads to the quizzes', async ({ page }) => {
  await page.goto('/#/quiz/take/20260504090000000');
  await expect(page.getByRole('heading', { level: 1, name: 'No such quiz here' })).toBeVisible();
  await page.getByRole('link', { name: 'Choose a quiz' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Quiz' })).toBeVisible();
});

test('scripting of each frame can be measured', async ({ page }, info) => {
  await page.goto('/?measure#/practise/watch/healthy-start');
  await page.getByRole('button', { name: 'Run at 5 times real time' }).click();
  await page.waitForFunction(() => (window.flamewrightFrameCostsMs?.length ?? 0) > 200);
  const costs = await page.evaluate(() => window.flamewrightFrameCostsMs ?? []);
  const sorted = costs.slice(60).sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(sorted.length * share)]?.toFixed(2);
  info.annotations.push({ type: 'frame cost, ms', description: `p50 ${at(0.5)}, p95 ${at(0.95)}` });
  expect(costs.every((cost) => cost >= 0)).toBe(true);
});

test('a start drawn blind shows neither its title nor its fault', async ({ page }) => {
  await page.goto('/#/practise');
  await page.getByRole('button', { name: 'Choose one for me and do not say which' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Something is wrong');
  await expect(page).toHaveURL(/#\/practise\/blind\/\d+$/);
  await expect(page.locator('html')).toHaveAttribute('data-run-phase', 'open');
});
