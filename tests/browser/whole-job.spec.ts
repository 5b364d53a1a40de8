/**
 * Whole jobs in a real browser, from the Practise page to the debrief: by keys alone, by fingers
 * alone, by guessing, and with the tab killed in the middle.
 */
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';
import { activate, check, choose, openTab, tabTo, typeInto } from './keyboard-hands.ts';
import { readMarks } from './run-marks.ts';

test('by keyboard alone: a blocked strainer measured, isolated, cleaned, proved and handed over', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await page.goto('/');
  await activate(page, page.getByRole('link', { name: /Practise/ }).first());
  await activate(page, page.getByRole('link', { name: /Steam lost before the night shift/ }));
  for (const tool of ['Manometer', 'Multimeter', 'Leak spray']) {
    await check(page, page.getByRole('checkbox', { name: tool, exact: true }));
  }
  await activate(page, page.getByRole('button', { name: 'Go to the plant' }));
  await activate(page, page.getByRole('button', { name: 'Begin work' }));
  await expect(page.locator('.panel-shows')).toContainText('pressure low');

  await test.step('people, sheet, tools', async () => {
    await openTab(page, 'Card');
    await activate(page, page.getByRole('button', { name: 'Who was here?' }));
    await activate(page, page.getByRole('button', { name: 'Read the last visit’s sheet' }));
    await expect(page.locator('.bench')).toContainText('179 mbar');
    await openTab(page, 'Tools');
    await connect(page, 'Manometer', 'Gas before the strainer', 'From');
    await connect(page, 'Manometer', 'Gas behind the strainer', 'From');
    await expect(page.locator('.meter-reading')).toHaveCount(2);
  });
  await test.step('a start with both manometers on', async () => {
    await openTab(page, 'Acts');
    await activate(page, page.getByRole('button', { name: 'Reset', exact: true }));
    await stepByKeys(page, 'main trial');
    await stepByKeys(page, 'lockout');
    await openTab(page, 'Tools');
    await activate(page, page.getByRole('button', { name: 'Pin all readings' }));
  });
  await test.step('volts on the ladder, live and then dead', async () => {
    await openTab(page, 'Ladder', '.plant');
    await putLead(page, 'wire L1');
    await putLead(page, 'wire N');
    await expect(page.locator('.ladder-meter-reading')).toHaveText(/^1[12]\d(\.\d)? V/);
    await page.keyboard.press('1');
    await isolate(page);
    await expect(page.locator('.ladder-meter-reading')).toHaveText(/^[0-2](\.\d+)? V/);
    await openTab(page, 'Tools');
    await activate(page, page.getByRole('button', { name: /^Pin the reading of the Multimeter/ }));
  });
  await test.step('notes, suspects, claim', async () => {
    await openTab(page, 'Notes');
    await expect(page.locator('.pin')).toHaveCount(3);
    const addPart = page.getByRole('combobox', { name: 'Add a part' });
    for (const part of ['gas regulator', 'strainer']) {
      await choose(page, addPart, part);
      await activate(page, page.getByRole('button', { name: 'Add', exact: true }));
      await expect(addPart).toBeFocused();
    }
    await activate(page, page.getByRole('button', { name: 'More likely: strainer' }));
    await expect(page.locator('.suspects li')).toHaveText([/^strainer/, /^gas regulator/]);
    await typeInto(page, page.getByLabel('Write a note'), 'Good before it, falls behind it.');
    await activate(page, page.getByRole('button', { name: 'Keep the note' }));
    await expect(page.locator('.note-list')).toContainText('falls behind it');
    await openTab(page, 'Finish');
    await choose(page, page.getByRole('combobox', { name: 'Part', exact: true }), 'strainer');
    await typeInto(page, page.getByLabel(/^What is wrong with it/), 'Dirt from the new pipe.');
    for (const place of [/before the strainer/, /behind the strainer/]) {
      await check(page, page.getByRole('checkbox', { name: place }));
    }
    await activate(page, page.getByRole('button', { name: 'Name it' }));
    await expect(page.locator('.claims')).toContainText('strainer');
  });
  await test.step('cleaned, and its joints sprayed under pressure', async () => {
    await openTab(page, 'Acts');
    await openFold(page, 'Repair');
    const form = page.getByRole('form', { name: 'Repair' });
    await choose(page, form.getByRole('combobox', { name: 'Part' }), 'strainer');
    await choose(page, form.getByRole('combobox', { name: /What do you do/ }), /^clean/);
    await activate(page, form.getByRole('button', { name: 'Do it' }));
    await expect(form).toContainText('Done: clean, strainer.');
    await openFold(page, 'Isolate and lock');
    const acts = page.locator('.acts');
    await activate(page, acts.getByRole('button', { name: 'Take my lock off: Manual cock' }));
    await activate(page, acts.getByRole('button', { name: '5 %: Manual cock', exact: true }));
    await runSeconds(page, 10);
    await activate(page, acts.getByRole('button', { name: 'Open: Manual cock' }));
    await openTab(page, 'Tools');
    await connect(page, 'Leak spray', 'Joint between cock and strainer', 'Where');
    await connect(page, 'Leak spray', 'Joint behind the strainer', 'Where');
    await runSeconds(page, 70);
    for (const name of [
      /^Pin the reading of the Leak spray, .*cock and strainer/,
      /^Pin the reading of the Leak spray, .*behind the strainer/,
    ]) {
      await activate(page, page.getByRole('button', { name }));
    }
  });
  await test.step('proved by a whole start', async () => {
    await openTab(page, 'Finish');
    await activate(page, page.getByRole('button', { name: /^Mended/ }));
    await openTab(page, 'Acts');
    await openFold(page, 'Isolate and lock');
    const acts = page.locator('.acts');
    await activate(page, acts.getByRole('button', { name: 'Take my lock off: Mains isolator' }));
    await activate(page, acts.getByRole('button', { name: 'Switch on' }));
    await runSeconds(page, 3);
    await openFold(page, 'Panel');
    await activate(page, page.getByRole('button', { name: 'Reset', exact: true }));
    await stepByKeys(page, 'modulation');
    await runSeconds(page, 65);
    await openTab(page, 'Finish');
    await expect(page.locator('.proof li[data-met="false"]')).toHaveCount(0, { timeout: 30_000 });
  });
  await test.step('handed over and closed', async () => {
    await typeInto(page, page.getByLabel('What was done'), 'Basket cleaned, joints tested.');
    await typeInto(page, page.getByLabel('What to watch'), 'Look at the basket again in a week.');
    await activate(page, page.getByRole('button', { name: 'Sign and hand over' }));
    await activate(page, page.getByRole('button', { name: 'Close the job' }));
  });
  await test.step('the debrief finds the cause right and nothing unsafe', async () => {
    await expectRightAndSafe(page, 'strainer');
  });
});

test.describe('by fingers', () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

  test('by touch alone: a wire that came off found between two terminals, put back and proved', async ({
    page,
  }) => {
    test.setTimeout(240_000);
    await takeJob(page, 'Laundry', 'The evening wash will not start');
    const { bench, acts, tab, tap, connectAt } = fingers(page);
    await test.step('a start with leads on the ladder and a manometer', async () => {
      await connectAt('Manometer', 'Pilot gas behind its regulator', 'From');
      await page.locator('.plant').getByRole('tab', { name: 'Ladder' }).tap();
      await page.locator('.ladder svg.takes-leads').waitFor();
      await tapTerminal(page, /^12pilot valve relay ?contact$/, 2);
      await tapTerminal(page, /^12pilot valve$/, 2);
      await tab('Acts');
      await tap('Reset');
      await stepByTaps(page, 'pilot trial');
      const volts = page.locator('.ladder-meter-reading');
      await runFor(
        page,
        1,
        () => tap('Run at 1 times real time'),
        () => tap('Pause'),
      );
      await expect(page.locator('html')).toHaveAttribute('data-run-step', 'pilot trial');
      await expect(volts).toHaveText(/^1[12]\d(\.\d)? V/);
      await tab('Tools');
      await tap('Pin all readings');
      await page.getByRole('button', { name: /^Red \+/ }).tap();
      await tapTerminal(page, /^12pilot valve$/, 1);
      await expect(volts).toHaveText(/^-?[0-2](\.\d+)? V/);
      await bench.getByRole('button', { name: /^Pin the reading of the Multimeter/ }).tap();
      await stepByTaps(page, 'lockout');
    });
    await test.step('isolated, locked, proved dead, put back', async () => {
      await page.getByRole('button', { name: /^Red \+/ }).tap();
      await tapTerminal(page, /^12isolator$/, 2);
      await expect(page.locator('.ladder-meter-reading')).toHaveText(/^1[12]\d(\.\d)? V/);
      await tab('Acts');
      await acts.locator('summary', { hasText: 'Isolate and lock' }).tap();
      await tap('Switch off');
      await tap('Put my lock on: Mains isolator');
      await runFor(
        page,
        5,
        () => tap('Run at 5 times real time'),
        () => tap('Pause'),
      );
      await expect(page.locator('.ladder-meter-reading')).toHaveText(/^-?[0-2](\.\d+)? V/);
      await tab('Tools');
      await bench.getByRole('button', { name: /^Pin the reading of the Multimeter/ }).tap();
      await tab('Acts');
      await repairByTaps(page, 'pilot valve wiring', /^refit/);
      await acts.locator('summary', { hasText: 'Isolate and lock' }).tap();
      await tap('Take my lock off: Mains isolator');
      await tap('Switch on');
    });
    await test.step('named, proved, handed over', async () => {
      await claimByTaps(page, 'pilot valve wiring', [/contact|relay/, /pilot.valve:1/]);
      await startByTaps(page);
      await handOverByTaps(page, 'Wire put back under its screw.');
    });
    await expectRightAndSafe(page, 'pilot valve wiring');
  });
});

test('parts swapped until it works: the debrief says what was unsafe, what it cost, and that nothing was measured', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await takeJob(page, 'School', 'Cold classrooms after half-term', 'click');
  await openTabBy(page, 'Acts');
  for (const [part, way] of [
    ['airflow switch', /^replace/],
    ['airflow switch wiring', /^replace/],
    ['gas regulator', /^replace/],
    ['airflow switch tube', /^replace/],
  ] as const) {
    await repairBy(page, part, way);
  }
  await claimBy(page, 'airflow switch tube');
  await page.getByRole('button', { name: /^Mended/ }).click();
  await startBy(page);
  await openTabBy(page, 'Finish');
  // It runs, but no joint of the train that was opened has been tested.
  await expect(page.locator('.proof li[data-met="false"]')).not.toHaveCount(0);
  await page.getByLabel('What was done').fill('New parts until it ran.');
  await page.getByRole('button', { name: 'Sign and hand over' }).click();
  await page.getByRole('button', { name: 'Close the job' }).click();

  await expect(page.locator('.truth li')).toHaveAttribute('data-stands', 'false', {
    timeout: 60_000,
  });
  await expect(page.locator('.claims')).toContainText('no reading');
  await expect(page.getByText(/nothing unsafe/i)).toHaveCount(0);
  const unsafe = page.locator('.conduct li[data-severity="unsafe"]');
  await expect(unsafe.filter({ hasText: 'airflow switch' }).first()).toContainText(
    /State of the plant then: .*on/,
  );
  await expect(unsafe.filter({ hasText: 'gas regulator' }).first()).toContainText('cock');
  const minutes = page.getByRole('region', { name: 'Minutes and parts' });
  await expect(minutes).toContainText(/parts [1-9]\d*/);
  await expect(minutes).toContainText('gas regulator');
});

test('a tab killed in the middle of a start: the plant, its tools and the pad come back as they were', async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  await takeJob(page, 'Dairy', 'Steam lost before the night shift', 'click');
  await connectBy(page, 'Manometer', 'Gas before the strainer', 'From');
  await connectBy(page, 'Manometer', 'Gas behind the strainer', 'From');
  await expect(page.locator('.meter-reading').nth(1)).toContainText('mbar');
  await openTabBy(page, 'Acts');
  await page.getByRole('button', { name: 'Reset', exact: true }).click();
  await stepTo(page, 'purge', () => page.getByRole('button', { name: 'Next step' }).click());
  const before = await readMarks(page);
  await openTabBy(page, 'Tools');
  // What is put on paper is saved at once, with the moment it was put there.
  await page.getByRole('button', { name: 'Pin all readings' }).click();
  const readings = await page.locator('.meter-reading').allTextContents();
  await openTabBy(page, 'Notes');
  const pins = await page.locator('.pin').allTextContents();
  expect(pins).toHaveLength(2);
  await expect.poll(() => savedHeadS(page)).toBe(before.headS);

  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await again.goto('/#/practise');
  await again.getByRole('link', { name: /^Go on: / }).click();
  await expect(again.locator('html')).toHaveAttribute('data-run-phase', 'open');
  await expectStill(again);
  const after = await readMarks(again);
  expect(after).toEqual(before);
  await openTabBy(again, 'Tools');
  await expect(again.locator('.meter-reading')).toHaveCount(2);
  // A tool that comes back has been connected all the while.
  await expect(again.locator('.meter-reading')).toHaveText(readings);
  await openTabBy(again, 'Notes');
  await expect(again.locator('.pin')).toHaveText(pins);
  await stepTo(again, 'lockout', () => again.getByRole('button', { name: 'Next step' }).click());
});

type Press = 'click' | 'tap';

/** From the Practise page to the plant, with everything in the bag. */
async function takeJob(page: Page, plant: string, title: string, press: Press = 'tap') {
  await page.goto('/#/practise');
  await page
    .getByRole('group', { name: /plant/i })
    .getByRole('button', { name: new RegExp(plant) })
    [press]();
  await page.getByRole('link', { name: new RegExp(title) })[press]();
  await page.getByRole('button', { name: 'Take everything' })[press]();
  await page.getByRole('button', { name: 'Go to the plant' })[press]();
  await page.getByRole('button', { name: 'Begin work' })[press]();
}

function openTabBy(page: Page, name: string, press: Press = 'click') {
  return page.locator('.bench').getByRole('tab', { name, exact: true })[press]();
}

function fingers(page: Page) {
  return {
    bench: page.locator('.bench'),
    acts: page.locator('.acts'),
    tab: (name: string) => openTabBy(page, name, 'tap'),
    tap: (name: string) => page.getByRole('button', { name, exact: true }).tap(),
    connectAt: (tool: string, place: string, field: 'From' | 'Where') =>
      connectBy(page, tool, place, field, 'tap'),
  };
}

async function connectBy(
  page: Page,
  tool: string,
  place: string,
  field: 'From' | 'Where',
  press: Press = 'click',
) {
  await openTabBy(page, 'Tools', press);
  const form = page.getByRole('form', { name: 'Connect a tool' });
  await form.getByRole('combobox', { name: 'Tool' }).selectOption({ label: tool });
  await form.getByRole('combobox', { name: field }).selectOption({ label: place });
  await form.getByRole('button', { name: 'Connect' })[press]();
}

async function tapTerminal(page: Page, device: RegExp, terminal: 1 | 2) {
  const screws = page
    .locator('.ladder-element')
    .filter({ hasText: device })
    .locator('circle.ladder-screw');
  const screw = screws.nth(terminal - 1);
  await screw.scrollIntoViewIfNeeded();
  const box = await screw.boundingBox();
  if (box === null) throw new Error(`no terminal of ${device}`);
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
}

function stepByTaps(page: Page, wanted: string) {
  return stepTo(page, wanted, () => page.getByRole('button', { name: 'Next step' }).tap());
}

async function repairBy(page: Page, part: string, way: RegExp, press: Press = 'click') {
  const form = page.getByRole('form', { name: 'Repair' });
  if (!(await form.isVisible())) {
    await page.locator('.acts summary', { hasText: 'Repair' })[press]();
  }
  await form.getByRole('combobox', { name: 'Part' }).selectOption({ label: part });
  const ways = form.getByRole('combobox', { name: /What do you do/ });
  const labels = await ways.locator('option').allTextContents();
  await ways.selectOption({ label: labels.find((label) => way.test(label)) ?? '' });
  await form.getByRole('button', { name: 'Do it' })[press]();
  await expect(form).toContainText('Done: ');
}

function repairByTaps(page: Page, part: string, way: RegExp) {
  return repairBy(page, part, way, 'tap');
}

async function claimBy(page: Page, part: string, press: Press = 'click') {
  await openTabBy(page, 'Finish', press);
  await page.getByRole('combobox', { name: 'Part', exact: true }).selectOption(part);
  await page.getByRole('button', { name: 'Name it' })[press]();
}

async function claimByTaps(page: Page, part: string, evidence: readonly RegExp[]) {
  await openTabBy(page, 'Finish', 'tap');
  for (const name of evidence) {
    const box = page.locator('.evidence').getByRole('checkbox', { name }).first();
    if (!(await box.isChecked())) await box.tap();
  }
  await claimBy(page, part, 'tap');
  await page.getByRole('button', { name: /^Mended/ }).tap();
}

/** Reset, and a start that is held in service. */
async function startBy(page: Page, press: Press = 'click') {
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  await openTabBy(page, 'Acts', press);
  if (!(await button('Reset').isVisible())) {
    await page.locator('.acts summary', { hasText: 'Panel' })[press]();
  }
  const run = (s: number) =>
    runFor(
      page,
      s,
      () => button('Run at 20 times real time')[press](),
      () => button('Pause')[press](),
    );
  await run(3);
  await button('Run at 1 times real time')[press]();
  await button('Reset')[press]();
  await stepTo(page, 'modulation', () => button('Next step')[press]());
  await run(65);
}

function startByTaps(page: Page) {
  return startBy(page, 'tap');
}

async function handOverByTaps(page: Page, done: string) {
  await openTabBy(page, 'Finish', 'tap');
  await expect(page.locator('.proof li[data-met="false"]')).toHaveCount(0, { timeout: 30_000 });
  const field = page.getByLabel('What was done');
  await field.tap();
  await field.fill(done);
  await page.getByRole('button', { name: 'Sign and hand over' }).tap();
  await page.getByRole('button', { name: 'Close the job' }).tap();
}

function savedHeadS(page: Page): Promise<number> {
  return page.evaluate(() => {
    const heads = Object.values(localStorage).flatMap((text) => {
      const found = /"headS":([\d.]+)/.exec(String(text));
      return found === null ? [] : [Number(found[1])];
    });
    return Math.max(0, ...heads);
  });
}

/** The debrief of a job well done. */
async function expectRightAndSafe(page: Page, part: string) {
  await expect(page.locator('.truth li')).toHaveCount(1, { timeout: 60_000 });
  await expect(page.locator('.truth li')).toHaveAttribute('data-stands', 'false');
  await expect(page.locator('.claims')).toContainText(part);
  await expect(page.locator('.claims')).not.toContainText('no reading');
  await expect(page.locator('.conduct')).toHaveCount(0);
  await expect(page.getByText(/nothing unsafe/i)).toBeVisible();
  await expect(page.locator('.proof li[data-met="false"]')).toHaveCount(0);
}

/** Most steps a start goes through, with a lockout before it. */
const MOST_STEPS = 30;

/** From step to step, until the run stands at the first moment of one. */
async function stepTo(page: Page, wanted: string, next: () => Promise<void>) {
  for (let i = 0; i < MOST_STEPS; i += 1) {
    const before = await readMarks(page);
    await next();
    await expect
      .poll(async () => (await readMarks(page)).headS, { timeout: 60_000 })
      .toBeGreaterThan(before.headS);
    await expectStill(page);
    if ((await readMarks(page)).step === wanted) return;
  }
  throw new Error(`never came to ${wanted}`);
}

async function expectStill(page: Page) {
  await expect
    .poll(
      async () => {
        const { mode, shownS, atS } = await readMarks(page);
        return mode === 'paused' && shownS === atS;
      },
      { timeout: 60_000 },
    )
    .toBe(true);
}

/** Lets so many simulated seconds go by at least, and stops. */
async function runFor(page: Page, s: number, play: () => Promise<void>, stop: () => Promise<void>) {
  const { headS } = await readMarks(page);
  await play();
  await expect
    .poll(async () => (await readMarks(page)).headS, { timeout: 60_000, intervals: [100] })
    .toBeGreaterThan(headS + s);
  await stop();
  await expectStill(page);
}

function stepByKeys(page: Page, wanted: string) {
  return stepTo(page, wanted, () => page.keyboard.press('n'));
}

function runSeconds(page: Page, s: number) {
  const { keyboard } = page;
  return runFor(
    page,
    s,
    () => keyboard.press('4'),
    () => keyboard.press('p'),
  );
}

async function putLead(page: Page, place: string) {
  await typeInto(page, page.getByRole('combobox', { name: /^Find a wire/ }), place);
  await page.keyboard.press('Enter');
  await activate(page, page.getByRole('button', { name: /^Put .* lead here$/ }));
}

async function openFold(page: Page, name: string) {
  const fold = page.locator('.acts summary', { hasText: name }).first();
  await tabTo(page, fold);
  if (!(await fold.evaluate((summary) => summary.parentElement?.hasAttribute('open')))) {
    await page.keyboard.press('Enter');
  }
}

/** Supply off, cock shut, a lock on both. */
async function isolate(page: Page) {
  await openTab(page, 'Acts');
  await openFold(page, 'Isolate and lock');
  const acts = page.locator('.acts');
  await activate(page, acts.getByRole('button', { name: 'Switch off' }));
  await activate(page, acts.getByRole('button', { name: 'Put my lock on: Mains isolator' }));
  await activate(page, acts.getByRole('button', { name: 'Shut: Manual cock' }));
  await activate(page, acts.getByRole('button', { name: 'Put my lock on: Manual cock' }));
}

async function connect(page: Page, tool: string, place: string, field: 'From' | 'Where') {
  const form = page.getByRole('form', { name: 'Connect a tool' });
  await choose(page, form.getByRole('combobox', { name: 'Tool' }), tool);
  await choose(page, form.getByRole('combobox', { name: field }), place);
  await activate(page, form.getByRole('button', { name: 'Connect' }));
}
