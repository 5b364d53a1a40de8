/** A package inside a learning system: begun, left, taken up elsewhere, ended, and what the system knows of it. */
import { readFileSync } from 'node:fs';
import type { FrameLocator, Page } from '@playwright/test';
import { unzipSync } from 'fflate';
import type { PackageForm } from '../../src/records/lms/index.ts';
import { expect, test } from './fixtures.ts';
import { packageFolder } from './lms/package-folder.ts';
import { recordStore, verbOf } from './lms/record-store.ts';
import { PLAYER, scormPlayer } from './lms/scorm-player.ts';
import { ELSEWHERE, systemServer } from './lms/system-server.ts';
import { itemsOf } from './quiz-hands.ts';

const ROOM = 4096;
const ITEMS = itemsOf('calculation', 2).map(({ id }) => id);

function quizPackage(form: PackageForm) {
  return packageFolder({
    form,
    title: 'Two sums',
    mastery: 0.5,
    xapi: '1.0.3',
    exercise: { kind: 'quiz', mode: 'standard', items: ITEMS },
  });
}

/** @returns whether it was right */
async function answer(at: Page | FrameLocator, text: string): Promise<boolean> {
  await at.locator('.item-response').getByRole('textbox').fill(text);
  await at.getByRole('radio', { name: /^Fairly sure/ }).check();
  await at.getByRole('button', { name: 'Answer', exact: true }).click();
  const verdict = at.locator('.quiz-verdict');
  await expect(verdict).toBeVisible();
  return (await verdict.getAttribute('data-right')) === 'true';
}

/** The next page is as on a device that has nothing of the work. */
async function forget(page: Page, origin: string): Promise<void> {
  await page.goto(origin + ELSEWHERE);
  await page.evaluate(() => localStorage.clear());
}

test('by SCORM 1.2 a quiz is left in the middle, gone on with on another device, and its score and status are known', async ({
  page,
}) => {
  const player = scormPlayer();
  const server = await systemServer(quizPackage('scorm12'), player.script);
  try {
    const quiz = page.frameLocator('iframe').frameLocator('iframe');
    const heading = quiz.getByRole('heading', { level: 1 });
    const finished = () => player.calls().filter(([name]) => name === 'LMSFinish').length;
    await page.goto(server.origin + PLAYER);
    await expect(heading).toHaveText('1 of 2');
    await expect(quiz.getByText('Two sums')).toBeVisible();
    await expect(quiz.getByRole('link')).toHaveCount(0);
    const first = await answer(quiz, '1');
    await page.goto('about:blank');
    await expect.poll(() => player.kept()?.cmi.core.exit).toBe('suspend');
    await expect.poll(finished).toBe(1);
    expect(player.kept()?.cmi.core.lesson_status).toBe('incomplete');
    const [, , time] =
      player.calls().find(([, element]) => element?.endsWith('session_time')) ?? [];
    expect(time).toMatch(/^\d{4}:\d\d:\d\d\.\d\d$/);

    await forget(page, server.origin);
    await page.goto(server.origin + PLAYER);
    await expect(quiz.locator('.quiz-verdict')).toContainText('Fairly sure, 75 %');
    await quiz.getByRole('button', { name: 'Next question' }).click();
    await expect(heading).toHaveText('2 of 2');
    const second = await answer(quiz, '1');
    await quiz.getByRole('button', { name: 'See the result' }).click();
    const right = Number(first) + Number(second);
    await expect(heading).toHaveText(`${right} of 2 right`);
    const status = right >= 1 ? 'passed' : 'failed';
    await expect(quiz.locator('.package-strip')).toContainText(`${right * 50} of 100`);
    await page.goto('about:blank');
    const core = () => player.kept()?.cmi.core;
    await expect.poll(finished).toBe(2);
    await expect.poll(() => core()?.lesson_status).toBe(status);
    expect(core()?.score).toMatchObject({ raw: String(right * 50), min: '0', max: '100' });

    // Once more, where nothing of it is: the result can be read, and is not told again.
    await forget(page, server.origin);
    const before = player.calls().length;
    await page.goto(server.origin + PLAYER);
    await expect(heading).toHaveText(`${right} of 2 right`);
    await expect(quiz.locator('.quiz-questions > li')).toHaveCount(2);
    await page.goto('about:blank');
    await expect.poll(finished).toBe(3);
    expect(player.calls().slice(before).flat()).not.toContain('cmi.core.score.raw');
    expect(core()?.lesson_status).toBe(status);

    for (const [name, ...rest] of player.calls()) {
      expect([name, ...rest].at(-1), `${name} ${rest}`).toBe('true');
    }
    const kept = player.calls().filter(([, element]) => element === 'cmi.suspend_data');
    expect(kept.length).toBeGreaterThan(1);
    for (const [, , value = ''] of kept) expect(value.length).toBeLessThanOrEqual(ROOM);
    expect(player.calls().filter(([name]) => name === 'LMSInitialize').length).toBe(3);
    expect(finished()).toBe(3);
  } finally {
    await server.close();
  }
});

test('a drill goes on at the plant on another device, and its answer is the score', async ({
  page,
}) => {
  const exercise = { kind: 'drill', id: 'laundry-where-the-string-ends' } as const;
  const wish = {
    form: 'scorm12',
    title: 'A drill',
    mastery: 0.5,
    xapi: '1.0.3',
    exercise,
  } as const;
  const player = scormPlayer();
  const server = await systemServer(packageFolder(wish), player.script);
  try {
    const drill = page.frameLocator('iframe').frameLocator('iframe');
    await page.goto(server.origin + PLAYER);
    await drill.getByRole('button', { name: /^Begin/ }).click();
    await drill.getByRole('radio').first().waitFor();
    await forget(page, server.origin);
    await expect.poll(() => player.kept()?.cmi.suspend_data ?? '').not.toBe('');
    await page.goto(server.origin + PLAYER);
    await drill.getByRole('radio', { name: 'at the high limit' }).check();
    await drill.getByRole('button', { name: 'That is my answer' }).click();
    await expect(drill.locator('.package-strip')).toContainText('passed, 100 of 100');
    await expect(drill.getByRole('heading', { name: 'What was the matter' })).toBeVisible();
    await expect.poll(() => player.kept()?.cmi.core.lesson_status).toBe('passed');
    expect(player.kept()?.cmi.suspend_data.length).toBeLessThanOrEqual(ROOM);
  } finally {
    await server.close();
  }
});

test('by cmi5 statements come in their order, once each, and the work goes on from the record store', async ({
  page,
}) => {
  const store = recordStore();
  const server = await systemServer(quizPackage('cmi5'), store.script);
  const verbs = () => store.statements.map(verbOf);
  try {
    const heading = page.getByRole('heading', { level: 1 });
    await page.goto(store.launch(server.origin));
    await expect(heading).toHaveText('1 of 2');
    const first = await answer(page, '1');
    await page.goto('about:blank');
    await expect.poll(verbs).toEqual(['initialized', 'terminated']);
    await expect.poll(() => store.states.get('flamewright') ?? '').toContain('"answer');

    await forget(page, server.origin);
    await page.goto(store.launch(server.origin));
    await page.getByRole('button', { name: 'Next question' }).click();
    const second = await answer(page, '1');
    await page.getByRole('button', { name: 'See the result' }).click();
    const right = Number(first) + Number(second);
    await expect(heading).toHaveText(`${right} of 2 right`);
    await page.getByRole('button', { name: 'Back to the learning system' }).click();
    await expect(page).toHaveTitle('Back');
    const judged = right >= 1 ? 'passed' : 'failed';
    const session = ['initialized', 'completed', judged, 'terminated'];
    await expect.poll(() => verbs().slice(2)).toEqual(session);
    const told = store.statements.find((one) => verbOf(one) === judged);
    expect(told?.result?.score?.scaled).toBe(right / 2);

    // The pass is of one session: a page loaded again says so, and goes on by itself.
    const address = store.launch(server.origin, 'Review');
    await page.goto(address);
    await expect(page.locator('.package-strip')).toContainText('Opened to look at');
    await expect(heading).toHaveText(`${right} of 2 right`);
    await page.reload();
    await expect(page.locator('.package-strip')).toContainText('is over');
    await expect(heading).toHaveText(`${right} of 2 right`);
    await expect.poll(() => verbs().slice(6)).toEqual(['initialized', 'terminated']);
    expect(new Set(store.statements.map(({ id }) => id)).size).toBe(store.statements.length);
    expect(store.complaints).toEqual([]);
  } finally {
    await server.close();
  }
});

test('the page makes a package of itself, and names in it the exercise that was chosen', async ({
  page,
}) => {
  await page.goto('/#/teach');
  await page.getByRole('link', { name: /^A package for a learning system/ }).click();
  await page.getByRole('button', { name: 'A drill', exact: true }).click();
  await page.getByRole('button', { name: 'cmi5', exact: true }).click();
  await page.getByLabel('Passed from, of 100').fill('170');
  await expect(page.getByRole('button', { name: 'Make the package' })).toBeDisabled();
  await page.getByLabel('Passed from, of 100').fill('60');
  await page.getByLabel('Title in the learning system').fill('Drill & <tea>');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make the package' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toBe('flamewright-drill-tea-cmi5.zip');
  await expect(page.getByRole('status').filter({ hasText: /^Saved: / })).toBeVisible();
  const made = unzipSync(readFileSync(await download.path()));
  const text = (path: string) => new TextDecoder().decode(made[path]);
  const chosen = await page.getByLabel('Which one').inputValue();
  const { exercise, title, mastery, form } = JSON.parse(text('exercise.json'));
  expect({ exercise, title, mastery, form }).toEqual({
    exercise: { kind: 'drill', id: chosen },
    title: 'Drill & <tea>',
    mastery: 0.6,
    form: 'cmi5',
  });
  expect(text('cmi5.xml')).toContain('Drill &amp; &lt;tea&gt;');
  const { id } = JSON.parse(text('exercise.json'));
  const wish = { form, title, mastery, exercise, xapi: '1.0.3' as const };
  const same = packageFolder(wish);
  expect(JSON.parse(new TextDecoder().decode(same['exercise.json'])).id).toBe(id);
  expect(Object.keys(made).sort()).toEqual(Object.keys(same).sort());
  for (const path of Object.keys(same).filter((each) => each !== 'cmi5.xml')) {
    expect(Buffer.from(made[path] ?? []).equals(Buffer.from(same[path] ?? [])), path).toBe(true);
  }
});
