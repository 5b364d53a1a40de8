/** Results of a small class: found by readings, by luck and unsafely, forged, a quiz, a lesson left. */
import {
  type ClassResult,
  classResultSchema,
  NOTHING_JUDGED,
} from '../../../src/records/class/index.ts';
import { ANSWERS } from '../answers.ts';

const JOB = { kind: 'job', id: 'a-job', title: 'After the road works', plant: 'dairy' } as const;
const BASE = {
  ...NOTHING_JUDGED,
  what: JOB,
  attempt: 1,
  startedISO: '2026-03-02T09:00:00.000Z',
  handedInISO: '2026-03-02T09:41:30.000Z',
};
/** The ohms range on a live pair of wires. */
const PLACES = { range: 'ohms', place: '11', other: '12', volts: 230 };
const finding = (rule: string, severity: 'unsafe' | 'careless', t: number) => ({
  rule,
  severity,
  t,
  what: { code: `conduct.ohms-live.what`, params: PLACES },
  state: { code: `conduct.ohms-live.state`, params: PLACES },
});
const PARTS = {
  found: 'by readings',
  pathScore: 0.8,
  minutes: 43.2,
  redundant: 1,
  premature: 0,
} as const;

export const BY_READINGS: ClassResult = {
  ...BASE,
  seat: 1,
  nickname: 'Ada',
  outcome: 0.9,
  finished: true,
  parts: PARTS,
  claims: [{ part: 'strainer', right: true, supported: true }],
};
export const BY_LUCK: ClassResult = {
  ...BASE,
  seat: 2,
  nickname: '=HYPERLINK("x")',
  outcome: 0.03,
  finished: true,
  parts: { found: 'by trying parts', pathScore: 0.2, minutes: 120, redundant: 4, premature: 2 },
  conduct: [finding('SC-7', 'unsafe', 1200.5), finding('SC-2', 'careless', 900)],
  claims: [
    { part: 'gas regulator', right: false, supported: false },
    { part: 'strainer', right: true, supported: false },
  ],
};
export const LATER_AND_BETTER: ClassResult = {
  ...BY_LUCK,
  attempt: 2,
  startedISO: '2026-03-02T10:00:00.000Z',
  handedInISO: '2026-03-02T10:20:00.000Z',
  outcome: 0.7,
  parts: { ...PARTS, pathScore: 0.4, minutes: 60 },
  conduct: [finding('SC-2', 'careless', 900)],
};
export const FORGED: ClassResult = {
  ...BASE,
  seat: 3,
  nickname: 'Sam, or "Samson"',
  remarks: [
    {
      code: 'not ordered',
      where: 'log.12',
      detail: 'insert-fault at 190 s',
      claimed: null,
      found: null,
    },
  ],
  refused: true,
};
export const OVERSTATED: ClassResult = {
  ...BASE,
  seat: 4,
  nickname: '',
  outcome: 0.2,
  finished: true,
  parts: { found: 'not found', pathScore: 0.8, minutes: 90, redundant: 0, premature: 0 },
  conduct: [finding('SC-2', 'careless', 300)],
  missed: ['strainer'],
  remarks: [{ code: 'outcome differs', where: '', detail: '', claimed: 1, found: 0.2 }],
  refused: true,
};
export const QUIZ: ClassResult = {
  ...BASE,
  what: { kind: 'quiz', id: 'quiz', title: 'A short quiz', plant: '' },
  seat: 1,
  nickname: 'Ada',
  startedISO: '2026-03-03T09:00:00.000Z',
  handedInISO: '2026-03-03T09:20:00.000Z',
  outcome: 0.5,
  finished: true,
  quiz: { right: 2, asked: 4, answers: [...ANSWERS] },
};
export const LEFT: ClassResult = {
  ...BASE,
  what: { kind: 'lesson', id: 'a-lesson', title: 'A first start', plant: 'school' },
  seat: 5,
  nickname: 'Bo',
  remarks: [{ code: 'not finished', where: '', detail: '', claimed: null, found: null }],
};

export const RESULTS: readonly ClassResult[] = [
  OVERSTATED,
  LATER_AND_BETTER,
  BY_READINGS,
  BY_LUCK,
  FORGED,
  QUIZ,
  LEFT,
].map((result) => classResultSchema.parse(result));
/** Those of the one job. */
export const OF_JOB = RESULTS.filter(({ what }) => what.kind === 'job');
