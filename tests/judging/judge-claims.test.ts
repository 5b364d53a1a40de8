import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import { NO_FAULT } from '../../machines/job/index.ts';
import { createRun, type RunSetup, type TimedAction } from '../../src/engine/index.ts';
import { judgeClaims, needlessWork, standingClaims } from '../../src/judging/work/index.ts';
import { answerOfDrill, answerOfJob } from '../../src/scenario/index.ts';
import { shippedSetup } from '../support/library.ts';

const DAIRY = library.plants.find(({ id }) => id === 'dairy');
if (DAIRY === undefined) throw new Error('no dairy');
const answerTo = (faults: string[], more: { cause?: string[]; accept?: string[] } = {}) =>
  answerOfJob(
    {
      faults: faults.map((fault) => ({ fault, severity: 1, onset: 'start' as const })),
      cause: more.cause,
      accept: more.accept,
    } as Parameters<typeof answerOfJob>[0],
    DAIRY,
  );
const claim = (part: string, why: number[] = [0]) => ({ part, why });
const STRAINER = 'strainer blocked';
const JAMMED = 'damper jammed short of purge';

describe('a claim', () => {
  const answer = answerTo([STRAINER]);
  it('that names the part is right, with its readings or without them', () => {
    expect(judgeClaims(answer, [claim('strainer')])).toEqual({
      claims: [{ part: 'strainer', right: true, supported: true, another: false, fault: STRAINER }],
      missed: [],
    });
    expect(judgeClaims(answer, [claim('strainer', [])]).claims).toMatchObject([
      { right: true, supported: false },
    ]);
  });
  it('that names a sound part is wrong, and the cause is still to be found', () => {
    const { claims, missed } = judgeClaims(answer, [claim('gas regulator')]);
    expect(claims).toMatchObject([{ right: false, fault: null }]);
    expect(missed).toEqual(['strainer']);
  });
  it('that names every part that comes to mind is right once only', () => {
    const { claims } = judgeClaims(
      answer,
      ['strainer', 'fan belt', NO_FAULT].map((p) => claim(p)),
    );
    expect(claims.map(({ right }) => right)).toEqual([true, false, false]);
  });
  it('by an accepted fault is right by another name, and nothing is missed', () => {
    const accepting = answerTo([STRAINER], { accept: [JAMMED] });
    const part = accepting.accepted[0]?.part ?? '';
    const { claims, missed } = judgeClaims(accepting, [claim(part)]);
    expect(claims).toMatchObject([{ right: true, another: true, fault: JAMMED }]);
    expect(missed).toEqual([]);
  });
  it('that was taken back is not judged', () => {
    expect(
      standingClaims([
        { t: 1, type: 'claim', part: 'fan belt', why: [], mechanism: '' },
        { t: 2, type: 'withdraw' },
        { t: 3, type: 'claim', part: 'strainer', why: [], mechanism: '' },
      ]).map(({ part }) => part),
    ).toEqual(['strainer']);
  });
});

describe('two causes', () => {
  it('are both to be found: the one that nobody named is said', () => {
    const answer = answerTo([STRAINER, JAMMED]);
    const other = answer.causes[1]?.part;
    expect(judgeClaims(answer, [claim('strainer')]).missed).toEqual([other]);
  });
  it('of which the job takes one as the cause ask for that one', () => {
    const answer = answerTo([STRAINER, JAMMED], { cause: [STRAINER] });
    expect(judgeClaims(answer, [claim('strainer')]).missed).toEqual([]);
  });
  it('taken by a drill are found by naming one of them', () => {
    const answer = answerOfDrill({ claim: [STRAINER, JAMMED] }, DAIRY);
    expect(answer && judgeClaims(answer, [claim('strainer')]).missed).toEqual([]);
    expect(answer && judgeClaims(answer, [claim('fan belt')]).missed).toHaveLength(2);
  });
});

describe('a sound plant', () => {
  const answer = answerTo([]);
  it('is found by saying so, and by naming no part', () => {
    expect(judgeClaims(answer, [claim(NO_FAULT)])).toMatchObject({
      claims: [{ right: true }],
      missed: [],
    });
    expect(judgeClaims(answer, [claim('strainer')])).toMatchObject({
      claims: [{ right: false }],
      missed: [NO_FAULT],
    });
  });
});

describe('each shipped job and drill', () => {
  const exercises = [
    ...library.jobs.map((job) => [job.id, job.plant, job] as const),
    ...library.drills.flatMap((drill) =>
      drill.claim === undefined ? [] : [[drill.id, drill.plant, drill] as const],
    ),
  ];
  it.each(exercises)('%s can be answered by a part that the form offers', (_, id, exercise) => {
    const plant = library.plants.find((one) => one.id === id);
    if (plant === undefined) throw new Error(id);
    const answer =
      'card' in exercise ? answerOfJob(exercise, plant) : answerOfDrill(exercise, plant);
    if (answer === null) throw new Error('no answer');
    const offered = new Set(partsOf(plant.id));
    for (const { part } of answer.causes) expect(offered).toContain(part);
    const said = answer.causes.length === 0 ? [NO_FAULT] : answer.causes.map(({ part }) => part);
    const { claims, missed } = judgeClaims(
      answer,
      said.map((part) => claim(part)),
    );
    expect(missed).toEqual([]);
    expect(claims.every(({ right, another }) => right && !another)).toBe(true);
  });
});

describe('work without need', () => {
  const setup: RunSetup = {
    ...shippedSetup('healthy-start'),
    actions: [],
    faults: [{ fault: STRAINER, severity: 0.9, onset: { kind: 'start' } }],
  };
  const repair = (t: number, part: string, way: 'replace' | 'clean'): TimedAction => ({
    t,
    type: 'repair',
    part,
    way,
  });
  const works = (...log: TimedAction[]) =>
    needlessWork(createRun(setup), setup, [STRAINER], log, [{ t: 5, type: 'arrive', tools: [] }]);
  it('is that on sound parts, with what a new part cost', () => {
    const [first, ...more] = works(
      repair(9, 'fan belt', 'replace'),
      repair(10, 'strainer', 'clean'),
    );
    expect(first).toMatchObject({ part: 'fan belt', way: 'replace' });
    expect(first?.cost).toBeGreaterThan(0);
    expect(more).toEqual([]);
  });
  it('is mending again what is mended, and not what was done before the visit', () => {
    expect(works(repair(9, 'strainer', 'clean'), repair(10, 'strainer', 'replace'))).toMatchObject([
      { part: 'strainer', way: 'replace' },
    ]);
    expect(works(repair(2, 'fan belt', 'replace'))).toEqual([]);
  });
  it('is a new fuse in place of a whole one', () => {
    expect(works(repair(9, 'control fuse', 'replace'))).toHaveLength(1);
  });
});

function partsOf(plant: string): string[] {
  const start = library.scenarios.find((one) => one.plant === plant)?.id ?? '';
  return createRun(shippedSetup(start))
    .parts()
    .map(({ part }) => part);
}
