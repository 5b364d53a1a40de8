import type { Locator, Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';
import { lookBackTo, openRun, pause, runTo } from './run-marks.ts';

test('the ladder by keyboard: opened, moved, zoomed; live in words, and as it was when looked back to', async ({
  page,
}) => {
  await openRun(page, '/#/practise/watch/laundry-healthy-start');
  await page.getByRole('tab', { name: 'Schematic' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Ladder' })).toBeFocused();
  const ladder = page.getByRole('group', { name: /^Ladder diagram/ });
  const drawing = ladder.locator('svg');
  await expect(drawing).toBeVisible();

  await ladder.focus();
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => ladder.evaluate((host) => host.scrollTop)).toBeGreaterThan(0);
  const width = await drawing.evaluate((svg) => svg.clientWidth);
  await page.keyboard.press('+');
  expect(await drawing.evaluate((svg) => svg.clientWidth)).toBeGreaterThan(width);
  await page.keyboard.press('0');
  expect(await drawing.evaluate((svg) => svg.clientWidth)).toBe(width);

  const rungs = page.getByRole('region', { name: 'Rungs in words' }).getByRole('listitem');
  const fanRelay = rungs.filter({ hasText: 'output: fan' });
  await expect(fanRelay).toContainText('fan relay without current');
  await runTo(page, 'purge');
  await expect(fanRelay).toContainText('fan relay energised');
  await expect(fanRelay).toContainText('Of this step');
  await pause(page);
  await lookBackTo(page, 2);
  await expect(fanRelay).toContainText('fan relay without current');
});

test('the ladder is moved by dragging it with a mouse, and zoomed by the wheel with Ctrl', async ({
  page,
}) => {
  await openRun(page, '/#/practise/watch/laundry-healthy-start');
  await page.getByRole('tab', { name: 'Ladder' }).click();
  const ladder = page.locator('.ladder');
  await ladder.locator('svg').waitFor();
  await pause(page);
  await page.getByRole('button', { name: 'Follow the step' }).click();
  await ladder.evaluate((host) => host.scrollTo(0, 500));
  const box = await boxOf(ladder);
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  await page.mouse.move(middle.x, middle.y - 60);
  await page.mouse.move(middle.x, middle.y - 120);
  await page.mouse.up();
  await page.mouse.move(middle.x, middle.y);
  expect((await viewOf(ladder)).top).toBeCloseTo(620, -1);

  await page.keyboard.down('Control');
  await page.mouse.wheel(0, -120);
  await page.keyboard.up('Control');
  const closer = await viewOf(ladder);
  expect(closer.width).toBeGreaterThan(box.width);
  // What was under the pointer stays there.
  const zoom = closer.width / box.width;
  expect(closer.top).toBeCloseTo((620 + box.height / 2) * zoom - box.height / 2, -1);
});

test.describe('on a tablet', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

  test('the ladder is scrolled by one finger, moved and zoomed by two', async ({ page }) => {
    await openRun(page, '/#/practise/watch/laundry-healthy-start');
    await page.getByRole('tab', { name: 'Ladder' }).tap();
    const ladder = page.locator('.ladder');
    await ladder.locator('svg').waitFor();
    await pause(page);
    await page.getByRole('button', { name: 'Follow the step' }).tap();
    await ladder.evaluate((host) => host.scrollTo(0, 500));
    const box = await boxOf(ladder);
    const x = box.x + box.width / 2;
    const y = box.y + box.height / 2;

    await drawFingers(page, [
      [
        { x: x - 50, y },
        { x: x - 50, y: y - 80 },
      ],
      [
        { x: x + 50, y },
        { x: x + 50, y: y - 80 },
      ],
    ]);
    const moved = await viewOf(ladder);
    expect(moved.top).toBeCloseTo(580, -1);
    expect(moved.width).toBeCloseTo(box.width, 0);

    await drawFingers(page, [
      [
        { x: x - 50, y },
        { x: x - 100, y },
      ],
      [
        { x: x + 50, y },
        { x: x + 100, y },
      ],
    ]);
    const zoomed = await viewOf(ladder);
    expect(zoomed.width / box.width).toBeCloseTo(2, 1);
    expect(zoomed.left).toBeGreaterThan(box.width * 0.4);

    await drawFingers(page, [
      [
        { x, y },
        { x, y: y - 100 },
      ],
    ]);
    await expect.poll(async () => (await viewOf(ladder)).top).toBeGreaterThan(zoomed.top + 60);
  });
});

interface Finger {
  readonly x: number;
  readonly y: number;
}

/** Fingers that come down together, go from one place to another, and are lifted. */
async function drawFingers(page: Page, ways: readonly (readonly [Finger, Finger])[]) {
  const cdp = await page.context().newCDPSession(page);
  const at = (share: number) =>
    ways.map(([from, to], id) => ({
      id,
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
    }));
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (let step = 1; step <= 10; step += 1) {
    await cdp.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / 10) });
  }
  await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await cdp.detach();
}

async function boxOf(ladder: Locator) {
  const box = await ladder.boundingBox();
  if (box === null) throw new Error('no ladder to be seen');
  return { ...box, width: (await viewOf(ladder)).width };
}

function viewOf(ladder: Locator) {
  return ladder.evaluate((host) => ({
    top: host.scrollTop,
    left: host.scrollLeft,
    width: host.querySelector('svg')?.clientWidth ?? 0,
  }));
}
