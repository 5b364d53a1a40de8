import AxeBuilder from '@axe-core/playwright';
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

test('meter leads by keyboard: walked to, put on, read, found by name, taken off', async ({
  page,
}) => {
  await openMeter(page);
  const ladder = page.locator('.ladder');
  const where = page.getByText(/red lead/).last();
  await ladder.focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('Enter');
  await expect(where).toContainText('red lead on wire L ·');
  await expect(where).toContainText('black lead in its holder');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await expect(where).toContainText('black lead on wire N');
  await expect(reading(page)).toHaveText(/^1[12]\d(\.\d)? V/);

  const search = page.getByRole('combobox', { name: 'Find a wire, terminal or device' });
  await search.fill('fan relay');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(search).toHaveValue(/^fan relay, terminal 1, wire /);
  await page.getByRole('button', { name: 'Put red lead here' }).press('Enter');
  await expect(where).toContainText('red lead on fan relay, terminal 1');
  // The relay is at rest: from its coil to neutral there are no volts.
  await expect(reading(page)).toHaveText(/^[0-2](\.\d+)? V/);
  const found = await ladder.locator('.ladder-found').boundingBox();
  const view = await ladder.boundingBox();
  expect(found?.y).toBeGreaterThanOrEqual(view?.y ?? 0);
  expect((found?.y ?? 0) + (found?.height ?? 0)).toBeLessThanOrEqual(
    (view?.y ?? 0) + (view?.height ?? 0),
  );

  await page.getByRole('button', { name: 'Leads off' }).press('Enter');
  await expect(reading(page)).toHaveText('Not connected');
});

test('meter leads by mouse: dragged from the holder, dragged on, tapped off', async ({ page }) => {
  await openMeter(page);
  const ladder = page.locator('.ladder');
  const where = page.getByText(/red lead/).last();
  const heads = ladder.locator('circle.ladder-screw');
  const [first, second] = [await centreOf(heads.nth(0)), await centreOf(heads.nth(1))];
  await drag(page, await centreOf(page.getByRole('button', { name: /^Red \+/ })), first);
  await expect(where).toContainText('red lead on wire');
  await page.mouse.click(second.x, second.y);
  await expect(where).toContainText('black lead on wire');
  await expect(reading(page)).toHaveText(/ V/);

  const probe = ladder.locator('.ladder-probe.is-from .ladder-probe-handle');
  const at = await centreOf(ladder.locator('.ladder-element circle.ladder-screw').first());
  await drag(page, await centreOf(probe), at);
  await expect(where).toContainText('terminal');
  await page.mouse.click(at.x, at.y);
  await expect(where).toContainText('red lead in its holder');
  // A lead that is taken does not move the paper.
  expect(await ladder.evaluate((host) => host.scrollTop)).toBe(0);
  // Let go beside the ladder, a lead is back in its holder.
  await page.mouse.click(at.x, at.y);
  await expect(where).toContainText('red lead on');
  const chart = await centreOf(page.getByRole('region', { name: 'Start chart' }));
  await drag(page, await centreOf(probe), chart);
  await expect(where).toContainText('red lead in its holder');
});

test('symbols are North American when one asks for them, and so at the next visit', async ({
  page,
}) => {
  await openRun(page, '/#/practise/watch/laundry-healthy-start');
  await page.getByRole('tab', { name: 'Ladder' }).click();
  const shapes = () =>
    page
      .locator('.ladder')
      .evaluate((host) => [...host.querySelectorAll('path')].map((each) => each.getAttribute('d')));
  const button = page.getByRole('button', { name: /^IEC symbols/ });
  await button.waitFor();
  const iec = await shapes();
  await button.click();
  await expect(page.getByRole('button', { name: /^N. American symbols/ })).toBeVisible();
  const american = await shapes();
  expect(american).not.toEqual(iec);
  await page.reload();
  await page.getByRole('tab', { name: 'Ladder' }).click();
  await page.getByRole('button', { name: /^N. American symbols/ }).waitFor();
  expect(await shapes()).toEqual(american);
});

test('axe finds nothing serious on the ladder with its meter and its search open', async ({
  page,
}) => {
  await openMeter(page);
  await page.getByRole('combobox', { name: 'Find a wire, terminal or device' }).fill('fan');
  const { violations } = await new AxeBuilder({ page }).analyze();
  const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  expect(serious.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html)}`)).toEqual([]);
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

test.describe('by touch', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

  test('meter leads are put on by one tap each', async ({ page }) => {
    await openMeter(page);
    const ladder = page.locator('.ladder');
    const heads = ladder.locator('circle.ladder-screw');
    for (const place of [0, 1]) {
      const at = await centreOf(heads.nth(place));
      await page.touchscreen.tap(at.x, at.y);
    }
    await expect(page.getByText(/red lead/).last()).toContainText('black lead on wire');
    await expect(reading(page)).toHaveText(/ V/);
  });
});

async function openMeter(page: Page) {
  await openRun(page, '/#/practise/watch/laundry-healthy-start');
  await page.getByRole('tab', { name: 'Ladder' }).click();
  await page.getByRole('button', { name: 'Multimeter' }).click();
  await page.locator('.ladder svg.takes-leads').waitFor();
  await pause(page);
  await page.getByRole('button', { name: 'Follow the step' }).click();
  await page.locator('.ladder').evaluate((host) => host.scrollTo(0, 0));
}

function reading(page: Page) {
  return page.locator('.ladder-meter-reading');
}

async function centreOf(place: Locator) {
  const box = await place.boundingBox();
  if (box === null) throw new Error('not to be seen');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function drag(page: Page, from: Finger, to: Finger) {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2);
  await page.mouse.move(to.x, to.y);
  await page.mouse.up();
}

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
