import type { Page } from '@playwright/test';
import { keyOfWork } from '../../src/app/work/keep-work.ts';
import type { WorkRecord } from '../../src/app/work/work-record.ts';
import { finishedWork } from '../support/finished-work.ts';
import { WANDERING_JOB, wanderingVisit } from '../support/wandering-visit.ts';

let made: WorkRecord | null = null;

/** A long way round through a real job of the dairy, done by acts. */
export function wanderingWork(): WorkRecord {
  made ??= finishedWork(WANDERING_JOB, wanderingVisit);
  return made;
}

/** The device keeps this work from the first page on; what the page writes later stays. */
export async function seedWork(page: Page, work: WorkRecord): Promise<void> {
  const { kind, id } = work;
  await page.addInitScript(
    ({ key, text }) => {
      if (localStorage.getItem('seeded') !== null) return;
      localStorage.setItem('seeded', 'yes');
      localStorage.setItem(key, text);
    },
    { key: keyOfWork({ kind, id }), text: JSON.stringify(work) },
  );
}
