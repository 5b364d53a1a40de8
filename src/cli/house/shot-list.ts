import type { Page } from '@playwright/test';
import { en } from '../../i18n/en/index.ts';
import { addMessages, say } from '../../i18n/index.ts';

addMessages(en);

export interface Shot {
  readonly name: string;
  /** What follows the # of the address. */
  readonly route: string;
  readonly prepare?: (page: Page) => Promise<void>;
}

const HEALTHY = '/practise/watch/healthy-start';
const LAUNDRY = '/practise/watch/laundry-healthy-start';
const SCHOOL = '/practise/watch/school-healthy-start';
const JOB = '/practise/job/dairy-after-the-road-works';
const DRILL = '/practise/drill/laundry-where-the-string-ends';
const LESSON = '/practise/lesson/dairy-guided-start';
/** More presses than there are steps: a run that is not there by then will not get there. */
const MOST_STEPS = 40;
const STEP_LIMIT_MS = 60_000;

/** Every page and every main state, in the order in which a learner meets them. */
export const SHOTS: readonly Shot[] = [
  { name: 'front', route: '/' },
  { name: 'practise', route: '/practise' },
  { name: 'learner', route: '/practise/map' },
  { name: 'teach', route: '/teach' },
  { name: 'quiz', route: '/quiz', prepare: quizReady },
  { name: 'quiz-asked', route: '/quiz', prepare: (page) => beginQuiz(page, 'short') },
  {
    name: 'quiz-answered',
    route: '/quiz',
    prepare: async (page) => {
      await beginQuiz(page, 'short');
      await answerQuestion(page);
    },
  },
  { name: 'quiz-exam', route: '/quiz', prepare: (page) => beginQuiz(page, 'exam') },
  { name: 'quiz-result', route: '/quiz', prepare: takeQuiz },
  { name: 'watch-at-rest', route: HEALTHY },
  { name: 'watch-purge', route: HEALTHY, prepare: (page) => runTo(page, 'purge') },
  { name: 'watch-pilot-trial', route: HEALTHY, prepare: (page) => runTo(page, 'pilot trial') },
  { name: 'watch-modulation', route: HEALTHY, prepare: (page) => runTo(page, 'modulation') },
  ...[
    ['laundry', LAUNDRY],
    ['school', SCHOOL],
  ].flatMap(([plant, route]) => [
    { name: `${plant}-at-rest`, route },
    { name: `${plant}-purge`, route, prepare: (page: Page) => runTo(page, 'purge') },
    { name: `${plant}-modulation`, route, prepare: (page: Page) => runTo(page, 'modulation') },
  ]),
  { name: 'ladder-at-rest', route: HEALTHY, prepare: openLadder },
  {
    name: 'ladder-purge',
    route: LAUNDRY,
    prepare: async (page) => {
      await openLadder(page);
      await runTo(page, 'purge');
    },
  },
  {
    name: 'ladder-modulation',
    route: SCHOOL,
    prepare: async (page) => {
      await openLadder(page);
      await runTo(page, 'modulation');
    },
  },
  {
    name: 'watch-lockout',
    route: '/practise/watch/jammed-damper',
    prepare: (page) => runTo(page, 'lockout'),
  },
  { name: 'job-card', route: JOB },
  { name: 'job-at-the-plant', route: JOB, prepare: arrive },
  { name: 'job-tools', route: JOB, prepare: connectTools },
  { name: 'job-close-up', route: JOB, prepare: lookClosely },
  { name: 'job-acts', route: JOB, prepare: (page) => openWork(page, 'job.tab.acts') },
  {
    name: 'job-ladder',
    route: JOB,
    prepare: async (page) => {
      await connectTools(page);
      await openLadder(page);
    },
  },
  {
    name: 'job-ladder-na',
    route: JOB,
    prepare: async (page) => {
      await connectTools(page);
      await openLadder(page);
      await page.getByRole('button', { name: say('ladder.symbols.IEC.long') }).click();
    },
  },
  { name: 'job-claim', route: JOB, prepare: (page) => openWork(page, 'job.tab.finish') },
  { name: 'job-debrief', route: JOB, prepare: guessAndClose },
  {
    name: 'drill',
    route: DRILL,
    prepare: (page) => page.getByRole('button', { name: say('drill.begin') }).click(),
  },
  { name: 'lesson-stop', route: LESSON, prepare: toFirstQuestion },
  {
    name: 'show-modulation',
    route: '/teach/show/healthy-start',
    prepare: (page) => runTo(page, 'modulation'),
  },
];

async function quizReady(page: Page): Promise<void> {
  await page.locator('.quiz-way:not([aria-disabled="true"])').first().waitFor();
}

/** The same questions each time. */
async function beginQuiz(page: Page, mode: 'short' | 'exam'): Promise<void> {
  await quizReady(page);
  await page.evaluate(() => {
    Math.random = () => 0.25;
  });
  await page.locator(`.quiz-way[data-mode="${mode}"]`).click();
  await questionReady(page);
}

async function questionReady(page: Page): Promise<void> {
  await page.locator('.quiz-form').waitFor({ timeout: STEP_LIMIT_MS });
  // Where there is a record of a start, its chart comes after the words.
  const chart = page.locator('.item-drawn .chart-host canvas, .item-drawn .chart-host svg').first();
  if ((await page.locator('.item-drawn').count()) > 0) {
    await chart.waitFor({ timeout: STEP_LIMIT_MS });
  }
}

async function answerQuestion(page: Page): Promise<void> {
  const response = page.locator('.item-response');
  const [radio, leave] = [response.getByRole('radio'), response.locator('.item-leave button')];
  if ((await radio.count()) > 0) await radio.first().check();
  else if ((await leave.count()) > 0) await leave.click();
  else await response.getByRole('textbox').first().fill('1');
  await page.locator('.quiz-sure').getByRole('radio').nth(2).check();
  await page.locator('.quiz-give button').click();
  await page.locator('.quiz-verdict').waitFor();
}

async function takeQuiz(page: Page): Promise<void> {
  await beginQuiz(page, 'short');
  for (;;) {
    await answerQuestion(page);
    await page.locator('.quiz-give button').click();
    await page.locator('.quiz-form, .quiz-questions').waitFor({ timeout: STEP_LIMIT_MS });
    if ((await page.locator('.quiz-questions').count()) > 0) return;
  }
}

async function arrive(page: Page): Promise<void> {
  await page.getByRole('button', { name: say('job.card.all') }).click();
  await page.getByRole('button', { name: say('job.card.go') }).click();
  await page.getByRole('button', { name: say('job.begin') }).waitFor();
}

type WorkTab = 'job.tab.tools' | 'job.tab.look' | 'job.tab.acts' | 'job.tab.finish';

async function openWork(page: Page, tab: WorkTab): Promise<void> {
  await arrive(page);
  await page.getByRole('button', { name: say('job.begin') }).click();
  await page
    .locator('.bench')
    .getByRole('tab', { name: say(tab) })
    .click();
}

async function connectTools(page: Page): Promise<void> {
  await openWork(page, 'job.tab.tools');
  const form = page.getByRole('form', { name: say('job.tools.connect') });
  const choose = (name: string, index: number) =>
    form.getByRole('combobox', { name, exact: true }).selectOption({ index });
  const connect = form.getByRole('button', { name: say('job.tools.do-connect') });
  await choose(say('job.tools.from'), 2);
  await connect.click();
  await choose(say('job.tools.from'), 4);
  await connect.click();
  await choose(say('job.tools.tool'), 1);
  await choose(say('job.tools.from'), 3);
  await choose(say('job.tools.to'), 4);
  await connect.click();
  await page.locator('.meter').nth(2).waitFor();
}

async function lookClosely(page: Page): Promise<void> {
  await openWork(page, 'job.tab.look');
  await page.getByRole('button', { name: say('job.look.look'), exact: true }).click();
  await page.locator('.close-up-drawing').waitFor();
}

async function guessAndClose(page: Page): Promise<void> {
  await openWork(page, 'job.tab.finish');
  await page
    .getByRole('combobox', { name: say('job.finish.part'), exact: true })
    .selectOption({ index: 5 });
  await page.getByRole('button', { name: say('job.finish.do-claim') }).click();
  await page.getByRole('button', { name: say('job.finish.prove') }).click();
  await page.getByLabel(say('job.finish.done')).fill('–');
  await page.getByRole('button', { name: say('job.finish.do-handover') }).click();
  await page.getByRole('button', { name: say('job.finish.close') }).click();
  await page.getByRole('heading', { name: say('debrief.truth') }).waitFor();
}

async function toFirstQuestion(page: Page): Promise<void> {
  await page.getByRole('button', { name: say('lesson.begin') }).click();
  await page.locator('.option').first().waitFor();
}

async function openLadder(page: Page): Promise<void> {
  await page.getByRole('tab', { name: say('app.plant.ladder') }).click();
  await page.locator('.ladder-drawing').waitFor();
}

async function runTo(page: Page, step: string): Promise<void> {
  const now = page.locator('[data-step]').first();
  await now.waitFor();
  for (let press = 0; press < MOST_STEPS; press++) {
    const before = await now.getAttribute('data-step');
    if (before === step) return;
    await page.getByRole('button', { name: say('app.run.next-step') }).click();
    await page.waitForFunction(
      (from) => document.querySelector('[data-step]')?.getAttribute('data-step') !== from,
      before,
      { timeout: STEP_LIMIT_MS },
    );
  }
  throw new Error(`The run did not come to "${step}".`);
}
