import library from 'virtual:library';
import { describe, expect, it, vi } from 'vitest';
import { foldDesk } from '../../machines/job/index.ts';
import {
  type JudgedWork,
  judgeExercise,
  partsOfWork,
  readyExercise,
  resultOfJob,
} from '../../src/judging/index.ts';
import { createReasoner } from '../../src/judging/reasoning/index.ts';
import { caseOfExercise, exerciseSetup } from '../../src/judging/work/index.ts';
import { openHost } from '../app/session/real-host.ts';
import { atlasText, HANDED_IN, JOB, SHORT, SHORT_JOB, SHORT_WORK, VISIT } from './handed-in.ts';

const ATLAS = atlasText('dairy');
const SCHOOL = atlasText('school');
const judged = judgeExercise(library, JOB, ATLAS, HANDED_IN);
if (!judged.ok) throw new Error(JSON.stringify(judged));
const whole: JudgedWork = judged;

/** As the page makes it: its worker judges, its second worker reasons, and the result is made of both. */
function asThePage() {
  const host = openHost({
    ...JOB,
    log: VISIT.log as never,
    untilS: VISIT.headS,
    setupHash: VISIT.setupHash,
    hash: VISIT.hash ?? '',
  });
  host.tell({ type: 'ask', ask: 1, question: { of: 'judge', desk: [...VISIT.desk] } });
  const answer = host.of('answer').at(-1)?.answer;
  if (answer?.of !== 'judge') throw new Error('not judged');
  const found = caseOfExercise(library, 'job', JOB.id);
  const job = library.jobs.find(({ id }) => id === JOB.id);
  if (found === null || job === undefined) throw new Error('no job');
  const reasoning = createReasoner(ATLAS, found).reason(VISIT.log, VISIT.desk, VISIT.headS);
  const desk = foldDesk('job', { tools: job.tools }, VISIT.desk);
  return {
    verdict: answer.verdict,
    reasoning,
    result: resultOfJob(job, desk, answer.verdict, reasoning),
  };
}

/** Each judging runs the visit three times, and half an hour more. */
vi.setConfig({ testTimeout: 120_000 });

describe('finished work judged again from its logs', () => {
  it('comes out as in the page that it was done in, its hash too', () => {
    const { verdict, reasoning, result } = asThePage();
    expect(whole.result).toEqual(result);
    expect(whole.verdict).toEqual(verdict);
    expect(whole.reasoning).toEqual(reasoning);
    expect(whole.hash).toBe(VISIT.hash);
    expect(whole.finished).toBe(true);
  });

  it('comes out the same by an exercise made ready once or anew', () => {
    const once = readyExercise(library, SHORT_JOB, SCHOOL);
    const first = once?.judge(SHORT);
    expect(first).toMatchObject({ ok: true, hash: SHORT_WORK.hash });
    expect(once?.judge(SHORT)).toEqual(first);
    // What it judged before has left nothing behind.
    expect(readyExercise(library, SHORT_JOB, SCHOOL)?.judge(SHORT)).toEqual(first);
  });

  it('goes by the verdict alone where the plant has no atlas', () => {
    const without = judgeExercise(library, SHORT_JOB, null, SHORT);
    expect(without).toMatchObject({ ok: true, reasoning: null });
    const { parts, outcome } = partsOfWork(without, null);
    expect(parts).toMatchObject({ found: null, pathScore: null });
    expect(outcome).toBeCloseTo(0.15, 12);
  });

  it('that was left half done is judged by what was done, and says so', () => {
    const parts = partsOfWork(judgeExercise(library, SHORT_JOB, SCHOOL, SHORT), null);
    expect(parts).toMatchObject({ finished: false, refused: false, parts: { found: 'not found' } });
    expect(parts.remarks.map(({ code }) => code)).toEqual(['not finished']);
    expect(parts.outcome).toBeLessThan(0.5);
  });

  it('takes an exercise that the library has not got from what is given beside it', () => {
    const others = { ...library, jobs: library.jobs.filter(({ id }) => id !== SHORT_JOB.id) };
    const jobs = library.jobs.filter(({ id }) => id === SHORT_JOB.id);
    expect(judgeExercise(others, SHORT_JOB, null, SHORT)).toMatchObject({
      ok: false,
      why: 'no such exercise',
    });
    const judged = judgeExercise(others, { ...SHORT_JOB, given: { jobs } }, null, SHORT);
    expect(judged).toMatchObject({ ok: true, hash: SHORT_WORK.hash });
  });

  it('is refused where it was done at another version of the exercise, or from another seed', () => {
    const other = library.jobs.filter(({ id }) => id === SHORT_JOB.id);
    const jobs = other.map((job) => ({ ...job, initial: { ...job.initial, hour: 3 } }));
    for (const name of [
      { ...SHORT_JOB, given: { jobs } },
      { ...SHORT_JOB, seed: 99 },
    ]) {
      expect(judgeExercise(library, name, null, SHORT)).toMatchObject({ why: 'other setup' });
    }
  });
});

describe('a drill', () => {
  const drill = library.drills.find(({ options }) => options !== undefined);
  if (drill === undefined) throw new Error('no drill with options');
  const { id, right = 0 } = drill;
  const answered = (option: number) => {
    const own = exerciseSetup(library, 'drill', id);
    return judgeExercise(library, { kind: 'drill', id }, null, {
      log: own?.setup.actions ?? [],
      desk: [
        { t: drill.arriveAt + 1, type: 'begin' },
        { t: drill.arriveAt + 5, type: 'answer', step: '', option },
      ],
      untilS: drill.arriveAt + 5,
    });
  };

  it('is right by its right option and by no other', () => {
    expect(answered(right)).toMatchObject({ ok: true, result: { outcome: 1 }, finished: true });
    expect(answered(right === 0 ? 1 : 0)).toMatchObject({ ok: true, result: { outcome: 0 } });
  });
});

describe('what a page claims of its work', () => {
  const { hash } = whole;
  const outcome = whole.result?.outcome ?? 0;

  it('is believed where it is what the log gives', () => {
    const parts = partsOfWork(whole, { outcome, hash });
    expect(parts).toMatchObject({ outcome, refused: false, remarks: [] });
    // The last bits of a sum are no forgery.
    expect(partsOfWork(whole, { outcome: outcome + 1e-12, hash }).refused).toBe(false);
  });

  it('is refused with both figures where it is another outcome, and what the log gives stands', () => {
    const parts = partsOfWork(whole, { outcome: 1, hash });
    expect(parts).toMatchObject({ outcome, refused: true });
    expect(parts.remarks).toEqual([
      { code: 'outcome differs', where: '', detail: '', claimed: 1, found: outcome },
    ]);
    expect(partsOfWork(whole, { outcome: outcome + 1e-6, hash }).refused).toBe(true);
  });

  it('is refused where the run is another one: a log cut behind, or made elsewhere', () => {
    const log = SHORT.log.slice(0, -1);
    const cut = judgeExercise(library, SHORT_JOB, null, { ...SHORT, log });
    const parts = partsOfWork(cut, { outcome: null, hash: SHORT_WORK.hash });
    expect(parts.refused).toBe(true);
    expect(parts.remarks[0]).toMatchObject({ code: 'hash differs', claimed: SHORT_WORK.hash });
    expect(parts.remarks[0]?.found).not.toBe(SHORT_WORK.hash);
  });
});
