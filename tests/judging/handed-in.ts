/** A real visit, handed in: what the tests of judging begin with. */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import type { HandedIn } from '../../src/judging/index.ts';
import { finishedWork } from '../support/finished-work.ts';
import { WANDERING_JOB, wanderingVisit } from '../support/wandering-visit.ts';

export const VISIT = finishedWork(WANDERING_JOB, wanderingVisit);
export const JOB = { kind: 'job', id: WANDERING_JOB } as const;

export const HANDED_IN: HandedIn = {
  log: VISIT.log,
  desk: VISIT.desk,
  untilS: VISIT.headS,
  setupHash: VISIT.setupHash,
};

/** Soon made and soon judged: one reading, then the work is left. */
export const SHORT_JOB = { kind: 'job', id: 'school-cold-classrooms' } as const;
export const SHORT_WORK = finishedWork(SHORT_JOB.id, ({ write, check, act }) => {
  write({ type: 'arrive', tools: ['manometer'] });
  write({ type: 'begin' });
  check('manometer: mid', 'inlet');
  act({ type: 'supply', on: false });
});
export const SHORT: HandedIn = {
  log: SHORT_WORK.log,
  desk: SHORT_WORK.desk,
  untilS: SHORT_WORK.headS,
  setupHash: SHORT_WORK.setupHash,
};

export function atlasText(plant: string): string {
  const file = new URL(`../../assets/page/atlas/${plant}.atlas`, import.meta.url);
  return gunzipSync(readFileSync(file)).toString();
}
