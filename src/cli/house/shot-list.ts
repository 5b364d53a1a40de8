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
/** More presses than there are steps: a run that is not there by then will not get there. */
const MOST_STEPS = 40;
const STEP_LIMIT_MS = 60_000;

/** Every page and every main state, in the order in which a learner meets them. */
export const SHOTS: readonly Shot[] = [
  { name: 'front', route: '/' },
  { name: 'practise', route: '/practise' },
  { name: 'teach', route: '/teach' },
  { name: 'quiz', route: '/quiz' },
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
  {
    name: 'show-modulation',
    route: '/teach/show/healthy-start',
    prepare: (page) => runTo(page, 'modulation'),
  },
];

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
