/** A class with its instructor, learners on devices of their own, and a projector. */
import { expectNothingSerious } from './axe.ts';
import {
  expectSameRun,
  joinClass,
  openClassHere,
  openPanel,
  runOf,
  SLOW,
  waitBeyond,
} from './class-hands.ts';
import { expect, test } from './class-server.ts';
import { expectFits } from './fits.ts';

const DESK = { width: 1366, height: 768 };
const WALL = { width: 1280, height: 720 };
const PHONE = { width: 390, height: 844 };

// Five pages of a class, each with its run, share one machine.
test.describe.configure({ timeout: 240_000 });

test('a class on one plant: driven, broken, asked and reloaded, every screen shows the same run', async ({
  classUrl,
  people,
}) => {
  const teacher = await people.onDevice('instructor', DESK);
  const { code } = await openClassHere(teacher, classUrl, 'Everyone on one plant');

  // The projector shows the way in, without anything to press.
  await openPanel(teacher, 'Projector …');
  const link = teacher.getByRole('link', { name: 'Open the projector’s window' });
  const wall = await people.onDevice('projector', WALL);
  await wall.goto(`${classUrl}/${await link.getAttribute('href')}`);
  await expect(wall.getByRole('img', { name: new RegExp(`class/${code}`) })).toBeVisible(SLOW);
  await expect(wall.getByRole('button')).toHaveCount(0);
  await expectNothingSerious(wall, 'body');

  const ada = await people.onDevice('Ada', PHONE);
  await joinClass(ada, classUrl, code, 'Ada');
  const cy = await people.onDevice('Cy', PHONE);
  await joinClass(cy, classUrl, code, 'Cy');
  await expect(wall.getByText('2 in')).toBeVisible(SLOW);
  await teacher.getByRole('button', { name: 'Begin', exact: true }).click();

  // Driven from the instructor's page; someone who comes late stands where all stand.
  await teacher.getByRole('combobox', { name: /^Speed/ }).selectOption('16×');
  await waitBeyond(ada, 20);
  const bo = await people.onDevice('Bo', PHONE);
  await joinClass(bo, classUrl, code, 'Bo');
  await waitBeyond(bo, 20);
  await teacher.getByRole('button', { name: 'the plant', exact: true }).click();
  await waitBeyond(wall, 20);
  await teacher.getByRole('button', { name: 'Freeze', exact: true }).click();
  await expectSameRun(teacher, ada, bo, cy, wall);

  // A fault: everyone's plant has it, nobody's page names it.
  await openPanel(teacher, 'Fault …');
  await teacher.getByRole('searchbox', { name: 'Search' }).fill('pilot valve stuck shut');
  await teacher.getByRole('button', { name: /^pilot valve stuck shut/ }).click();
  await expectNothingSerious(teacher, '.class-panel');
  await teacher.getByRole('button', { name: 'Put it in now' }).click();
  await expect(teacher.getByRole('button', { name: 'Take it out' })).toBeVisible(SLOW);
  const { at } = await runOf(teacher);
  await teacher.getByRole('button', { name: 'Run', exact: true }).click();
  await waitBeyond(teacher, at + 10);
  await teacher.getByRole('button', { name: 'Freeze', exact: true }).click();
  await expectSameRun(teacher, ada, bo, cy, wall);
  await expect(ada.getByText('pilot valve stuck shut')).toHaveCount(0);

  // Back by half a minute, for all.
  const before = (await runOf(teacher)).at;
  await teacher.getByRole('button', { name: 'Back …' }).click();
  await teacher.getByRole('button', { name: 'by 30 s' }).click();
  await expect.poll(async () => (await runOf(teacher)).at, SLOW).toBeLessThan(before - 25);
  await expectSameRun(teacher, ada, bo, cy, wall);

  // One question: asked, answered, shown.
  await openPanel(teacher, 'Ask …');
  await teacher.getByRole('button', { name: 'My own' }).click();
  await teacher.getByRole('textbox', { name: 'Question' }).fill('What opens first?');
  await teacher.getByRole('textbox', { name: 'Option 1' }).fill('The vent valve');
  await teacher.getByRole('textbox', { name: 'Option 2' }).fill('The main valves');
  await teacher.getByRole('button', { name: 'Ask everyone' }).click();
  await ada.getByRole('radio', { name: 'The vent valve' }).check();
  await ada.getByRole('button', { name: 'Give this answer' }).click();
  await expect(teacher.getByText('1 of 3 have answered.')).toBeVisible(SLOW);
  await openPanel(teacher, 'Projector …');
  await teacher.getByRole('button', { name: 'the question', exact: true }).click();
  await expect(wall.getByRole('heading', { name: 'What opens first?' })).toBeVisible(SLOW);
  await expect(wall.getByRole('meter')).toHaveCount(0);
  await openPanel(teacher, 'Ask …');
  await teacher.getByRole('button', { name: 'Show the answers to everyone' }).click();
  await expect(wall.getByRole('meter', { name: 'The vent valve' })).toHaveText('1', SLOW);
  await expect(bo.getByRole('heading', { name: 'What was answered' })).toBeVisible(SLOW);

  // Pages that are loaded anew stand where they stood, the leading one too.
  const stood = await runOf(teacher);
  await teacher.reload();
  await expect.poll(async () => (await runOf(teacher)).hash, SLOW).toBe(stood.hash);
  await ada.reload();
  await expectSameRun(teacher, ada, bo, cy);

  await teacher.getByRole('button', { name: 'Close the class' }).click();
  await teacher.getByRole('button', { name: 'Close it', exact: true }).click();
  await expect(teacher.getByText('Closed', { exact: true })).toBeVisible(SLOW);
});

test('a copy each: the board says where everyone stands, and a run is opened, compared and shown', async ({
  classUrl,
  people,
}) => {
  const teacher = await people.onDevice('instructor', DESK);
  const { code } = await openClassHere(teacher, classUrl, 'A copy each');
  const ada = await people.onDevice('Ada', PHONE);
  const bo = await people.onDevice('Bo', PHONE);
  await joinClass(ada, classUrl, code, 'Ada');
  await joinClass(bo, classUrl, code, 'Bo');
  const board = teacher.getByRole('listbox');
  await expect(board.getByRole('option')).toHaveCount(2, SLOW);
  await teacher.getByRole('button', { name: 'Begin', exact: true }).click();
  await teacher.getByRole('combobox', { name: /^Speed/ }).selectOption('8×');
  await waitBeyond(ada, 15);
  await waitBeyond(bo, 15);
  await teacher.getByRole('button', { name: 'Freeze', exact: true }).click();
  await expect.poll(async () => (await runOf(ada)).mode, SLOW).toBe('paused');
  await expectNothingSerious(teacher, '.teach-class');

  // To one seat alone, chosen by key.
  await board.focus();
  await teacher.keyboard.press('ArrowRight');
  await teacher.keyboard.press('Space');
  await expect(teacher.getByText('For seat 2')).toBeVisible();
  await openPanel(teacher, 'Hint …');
  await teacher.getByRole('textbox', { name: 'To Seat 2' }).fill('Look at the vent.');
  await teacher.getByRole('button', { name: 'Send the hint' }).click();
  await expect(bo.getByText('Look at the vent.')).toBeVisible(SLOW);
  await expect(ada.getByText('Look at the vent.')).toHaveCount(0);
  const stoodAt = (await runOf(bo)).at;
  await teacher.getByRole('button', { name: 'Back …' }).click();
  await teacher.getByRole('button', { name: 'by 10 s' }).click();
  await expect.poll(async () => (await runOf(bo)).head, SLOW).toBeCloseTo(stoodAt - 10, 0);
  expect((await runOf(ada)).head).toBeGreaterThan(12);

  // The run of one, as it stands on the learner's own device.
  await board.focus();
  await teacher.keyboard.press('Enter');
  await expectSameRun(bo, teacher);
  await teacher.getByRole('button', { name: 'Back to the board' }).click();
  await board.getByRole('option', { name: /Ada/ }).click();
  await teacher.getByRole('button', { name: 'Compare seats 1 and 2' }).click();
  await expect(teacher.getByRole('row', { name: /vent valve/ })).toBeVisible(SLOW);
  await expectNothingSerious(teacher, '.compare');
  await teacher.getByRole('button', { name: 'Back to the board' }).click();

  // Into the spotlight, without a name.
  await board.getByRole('option', { name: /Bo/ }).click();
  await openPanel(teacher, 'Projector …');
  await teacher.getByRole('button', { name: 'Seat 1 into the spotlight' }).click();
  const wall = await people.onDevice('projector', WALL);
  const link = teacher.getByRole('link', { name: 'Open the projector’s window' });
  await wall.goto(`${classUrl}/${await link.getAttribute('href')}`);
  await expect(wall.getByRole('heading', { name: 'Seat 1' })).toBeVisible(SLOW);
  await expectSameRun(ada, wall);
  await expect(wall.getByText('Ada')).toHaveCount(0);

  await bo.reload();
  await expect.poll(async () => (await runOf(bo)).head, SLOW).toBeCloseTo(stoodAt - 10, 0);

  for (const size of [{ width: 820, height: 1180 }, PHONE]) {
    await teacher.setViewportSize(size);
    await expectFits(teacher);
  }
});
