/** A learner in a class: the door, the seat, another device, a line that breaks. */
import type { Page } from '@playwright/test';
import { connectInstructor, type InstructorClient } from '../../src/classroom/client/index.ts';
import type { OpenClass, OpenedClass } from '../../src/classroom/index.ts';
import { expectNothingSerious } from './axe.ts';
import { joinClass, runOf, SLOW, waitBeyond } from './class-hands.ts';
import { expect, test } from './class-server.ts';
import { expectFits } from './fits.ts';

const DESK = { width: 1366, height: 768 };
const TABLET = { width: 820, height: 1180 };
const PHONE = { width: 390, height: 844 };

const START: OpenClass['what'] = {
  kind: 'start',
  id: 'healthy-start',
  title: 'Healthy start',
  plant: 'dairy',
};
const DRILL: OpenClass['what'] = {
  kind: 'drill',
  id: 'laundry-where-the-string-ends',
  title: 'Where the string ends',
  plant: 'laundry',
};

interface Opened extends OpenedClass {
  readonly instructor: InstructorClient;
}

/** A class whose instructor is this test. */
async function openClass(url: string, what: OpenClass['what']): Promise<Opened> {
  const answer = await fetch(`${url}/api/classes`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ what, way: 'own copies' } satisfies OpenClass),
  });
  expect(answer.status).toBeLessThan(300);
  const opened = (await answer.json()) as OpenedClass;
  const instructor = connectInstructor({ class: opened.id, secret: opened.secret }, { url });
  return { ...opened, instructor };
}

const strip = (page: Page) => page.getByRole('region', { name: 'The class' });

test('in by the code as it is read aloud, waiting, at work, and back after a reload', async ({
  classUrl,
  people,
}) => {
  const { code, instructor } = await openClass(classUrl, START);
  const page = await people.onDevice('Kim', PHONE);
  await page.goto(`${classUrl}/#/`);
  await page.getByRole('link', { name: 'Join a class' }).click();
  await page.getByLabel('Code of the class').first().fill('o0');
  await expect(page.getByText('No code has O 0.').first()).toBeVisible();
  await expectNothingSerious(page, 'body');
  await expectFits(page);
  const aloud = `${code.slice(0, 3)} ${code.slice(3)}`.toLowerCase();
  await page.getByLabel('Code of the class').first().fill(aloud);
  await page.getByLabel('Your name').fill('Kim');
  await page.keyboard.press('Enter');

  await expect(strip(page)).toContainText('Seat 1', SLOW);
  await expect(page.getByText('It begins when your instructor begins.')).toBeVisible();
  await expect(page.getByText(/^PIN \d{4}$/)).toBeVisible();
  await expectNothingSerious(page, 'body');
  await expectFits(page);
  await instructor.say({ type: 'begin' });
  await waitBeyond(page, 6);
  await expectNothingSerious(page, 'body');

  await page.reload();
  await expect(strip(page)).toContainText('Seat 1', SLOW);
  await waitBeyond(page, 6);
  expect(instructor.store.read().roster.map(({ nickname }) => nickname)).toEqual(['Kim']);
  instructor.close();
});

test('the seat goes to another device with all its work, and can be taken back', async ({
  classUrl,
  people,
}) => {
  const { code, instructor } = await openClass(classUrl, START);
  await instructor.say({ type: 'begin' });
  const first = await people.onDevice('Kim', DESK);
  await joinClass(first, classUrl, code, 'Kim');
  await expect(first.getByText(/^PIN \d{4}$/)).toBeVisible(SLOW);
  const pin = ((await first.locator('.class-pin strong').textContent()) ?? '').trim();
  await waitBeyond(first, 8);
  await instructor.say({ type: 'freeze', to: 'all' });
  await expect(first.getByText('Your instructor has stopped the work.')).toBeVisible(SLOW);
  await first.getByRole('button', { name: 'Run at 2 times real time' }).click();
  await expect(first.getByText(/^Not now:/)).toBeVisible();
  await expect(strip(first)).toContainText('Connected, all saved', SLOW);
  const before = await runOf(first);

  const second = await people.onDevice('Kim’s telephone', PHONE);
  await second.goto(`${classUrl}/#/class/${code}`);
  await second.getByText('I have a seat already, on another device').click();
  await second.getByLabel('Seat number').fill('1');
  await second.getByLabel('PIN', { exact: true }).fill(pin === '0000' ? '1111' : '0000');
  await second.getByRole('button', { name: 'Take my seat on this device' }).click();
  await expect(second.getByText('This is not the PIN of that seat.')).toBeVisible(SLOW);
  await second.getByLabel('PIN', { exact: true }).fill(pin);
  await second.getByRole('button', { name: 'Take my seat on this device' }).click();
  await expect.poll(async () => (await runOf(second)).head, SLOW).toBeCloseTo(before.head, 0);

  await expect(first.getByText('Your seat is in use on another device')).toBeVisible(SLOW);
  await first.getByRole('button', { name: 'Take it back to this device' }).click();
  await expect.poll(async () => (await runOf(first)).head, SLOW).toBeCloseTo(before.head, 0);
  await expect(second.getByText('Your seat is in use on another device')).toBeVisible(SLOW);
  instructor.close();
});

test('without a line the work goes on, and all of it is handed in when the line is back', async ({
  classUrl,
  people,
  allowedMessages,
}) => {
  // The last is of sounds that had not been fetched before the line broke.
  allowedMessages.push('WebSocket connection', 'ERR_INTERNET_DISCONNECTED', 'data:audio/wav');
  const { code, id, secret, instructor } = await openClass(classUrl, DRILL);
  await instructor.say({ type: 'begin' });
  const page = await people.onDevice('Kim', TABLET);
  await joinClass(page, classUrl, code, 'Kim');
  await page.getByRole('button', { name: /^Begin/ }).click();
  await page.getByRole('radio').first().waitFor();
  await expect(strip(page)).toContainText('Saved', SLOW);

  await page.context().setOffline(true);
  await expect(strip(page)).toContainText('Kept here', SLOW);
  await page.getByRole('radio', { name: 'at the control fuse' }).check();
  await page.getByRole('button', { name: 'That is my answer' }).click();
  await expect(page.getByText('It is handed in as soon as the class is reached.')).toBeVisible(
    SLOW,
  );
  await expectNothingSerious(page, 'body');

  await page.context().setOffline(false);
  await expect(page.getByText('Handed in. The class’s server')).toBeVisible(SLOW);
  await expect
    .poll(async () => {
      const answer = await fetch(`${classUrl}/api/classes/${id}/results`, {
        headers: { authorization: `Bearer ${secret}` },
      });
      const { results } = (await answer.json()) as { results: { outcome: number | null }[] };
      return results.map(({ outcome }) => outcome);
    }, SLOW)
    .toEqual([0]);
  instructor.close();
});
