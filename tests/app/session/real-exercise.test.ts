/** Jobs over the real engine, bench and shipped library: what was left comes back bit for bit. */
import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import {
  createFrameHistory,
  firstKept,
  frameAt,
  writeFrames,
} from '../../../src/app/session/frame-history.ts';
import { factsSchema, type ToPage, toPageSchema } from '../../../src/app/session/protocol.ts';
import type { ToWorker } from '../../../src/app/session/to-worker.ts';
import type { ToolUse } from '../../../src/bench/index.ts';
import { checkOf } from '../../../src/bench/index.ts';
import { type Action, faultsFor } from '../../../src/engine/index.ts';
import { openHost } from './real-host.ts';

const JOB = {
  id: 'own-job',
  title: 'A job of this test',
  plant: 'dairy',
  seed: 3,
  initial: { pressureBar: 7.5, levelMm: 0, load: 0.4, hour: 8 },
  load: [],
  faults: [{ fault: 'damper jammed short of purge', severity: 25, onset: 'start' }],
  actions: [
    { at: 5, do: 'call-for-heat', on: true },
    { at: 400, do: 'set-load', load: 0.5 },
  ],
  arriveAt: 120,
} as unknown as (typeof library.jobs)[number];
const WITH_JOB = { ...library, jobs: [...library.jobs, JOB] };
const LESSON = { ...JOB, id: 'own-lesson', faults: [] } as unknown as (typeof library.lessons)[0];
const WITH_LESSON = { ...library, lessons: [...library.lessons, LESSON] };

const DAIRY = library.plants.find(({ id }) => id === JOB.plant);
/** What ends the fault of the job, asked of the catalogue. */
const MEND = (() => {
  const fault = DAIRY && faultsFor(DAIRY).find(({ id }) => id === JOB.faults[0]?.fault);
  const { part, way } = fault?.remedies[0] ?? { part: '', way: '' };
  return { type: 'repair', part, way } as Action;
})();

const openJob = (how: Partial<Parameters<typeof openHost>[0]> = {}) =>
  openHost({ kind: 'job', id: JOB.id, ...how }, WITH_JOB);

type Host = ReturnType<typeof openHost>;
const act = (host: Host, ...actions: Action[]): void => {
  for (const action of actions) host.tell({ type: 'act', action });
};
const logOf = (host: Host) => [...(host.of('log').at(-1)?.log ?? [])];
const plantOf = <K extends 'meters' | 'bench' | 'minutes'>(host: Host, key: K) =>
  host.of('batch').findLast((batch) => batch.plant?.[key] !== undefined)?.plant?.[key];

/** A visit: looking, isolating, mending, trying again, with the clock at several paces. */
function visit(host: Host): void {
  host.tell({ type: 'play', speed: 5 });
  host.live(1);
  act(
    host,
    { type: 'check', what: 'look', place: 'damper blade', other: '' },
    { type: 'supply', on: false },
    { type: 'lock', point: 'isolator', on: true },
  );
  host.live(1);
  act(host, MEND);
  host.tell({ type: 'pause' });
  act(host, { type: 'lock', point: 'isolator', on: false }, { type: 'supply', on: true });
  host.tell({ type: 'play', speed: 20 });
  act(host, { type: 'reset', pressed: true });
  host.live(0.5);
  act(host, { type: 'reset', pressed: false });
  host.live(3);
}

describe('a shipped exercise', () => {
  const all = [
    ...library.jobs.map(({ id }) => ['job', id] as const),
    ...library.drills.map(({ id }) => ['drill', id] as const),
    ...library.lessons.map(({ id }) => ['lesson', id] as const),
  ];

  it.each(all)(
    '%s %s opens with facts that the page accepts, when the learner comes',
    (kind, id) => {
      const host = openHost({ kind, id });
      const [opened] = host.of('opened');
      expect(host.of('failed')).toEqual([]);
      expect(factsSchema.safeParse(opened?.facts).error).toBeUndefined();
      expect(host.status().timeS).toBe(opened?.facts.arriveS);
      expect(opened?.facts.parts.length).toBeGreaterThan(10);
      expect(opened?.facts.lookPlaces.length).toBeGreaterThan(5);
    },
  );

  it('does not say what is wrong with its plant: one of the same plant has the same parts and places', () => {
    const open = (job: typeof JOB) =>
      openHost({ kind: 'job', id: job.id }, { ...library, jobs: [job] }).of('opened')[0]?.facts;
    const healthy = open({ ...JOB, faults: [] });
    const faulty = open(JOB);
    for (const key of ['parts', 'lookPlaces', 'testPoints', 'sheet', 'faults', 'tools'] as const) {
      expect(faulty?.[key]).toEqual(healthy?.[key]);
    }
  });
});

describe('a job', () => {
  it('is the same run bit for bit when it is gone on with from its log, at any point', () => {
    const whole = openJob();
    visit(whole);
    whole.tell({ type: 'pause' });
    const left = whole.status();
    const log = structuredClone(logOf(whole));
    const back = openJob({ log, untilS: left.headS, hash: left.hash });
    expect(back.of('failed')).toEqual([]);
    expect(back.status()).toMatchObject({ timeS: left.headS, hash: left.hash });
    for (const host of [whole, back]) {
      host.tell({ type: 'play', speed: 20 });
      host.live(2);
      act(host, { type: 'turn-cock', cock: 'cock', opening: 0.5 });
      host.live(2);
    }
    expect(back.status()).toMatchObject({ timeS: whole.status().timeS, hash: whole.status().hash });
    expect(back.events().map(({ t, type }) => [t, type])).toEqual(
      whole.events().map(({ t, type }) => [t, type]),
    );
  });

  it('says everything in words that the page takes', () => {
    const host = openJob();
    host.tell({ type: 'meters', uses: usesOf(host) });
    visit(host);
    const wrong = host
      .of('batch')
      .flatMap((message: ToPage) => toPageSchema.safeParse(message).error?.issues ?? []);
    expect(wrong).toEqual([]);
  });

  it('is the same run whatever tools are connected', () => {
    const bare = openJob();
    visit(bare);
    const measured = openJob();
    const uses = usesOf(measured);
    expect(uses.length).toBeGreaterThan(4);
    measured.tell({ type: 'meters', uses });
    visit(measured);
    expect(plantOf(measured, 'meters')?.filter(({ reading }) => reading !== null).length).toBe(
      uses.length,
    );
    expect(measured.status().hash).toBe(bare.status().hash);
  });

  it('goes on after a visit longer than the record, with the hour that is kept', () => {
    const untilS = 3900;
    const host = openJob({ log: logOf(openJob()), untilS });
    host.tell({ type: 'play', speed: 1 });
    host.live(1);
    const facts = host.of('opened')[0]?.facts;
    const history = createFrameHistory(facts?.channels.length ?? 1, facts?.frameS ?? 1);
    for (const { firstFrame, frames } of host.of('batch')) {
      writeFrames(history, firstFrame, frames);
    }
    expect(history.count).toBe((untilS + 1) * 10 + 1);
    expect(firstKept(history)).toBeGreaterThan(0);
    const early = frameAt(history, firstKept(history));
    const late = frameAt(history, history.count - 1);
    for (const frame of [early, late]) {
      expect(frame?.every(Number.isFinite)).toBe(true);
      expect(frame?.some((value) => value !== 0)).toBe(true);
    }
  });

  it('shows the hands that were on the plant', () => {
    const host = openJob();
    act(host, { type: 'supply', on: false }, { type: 'lock', point: 'isolator', on: true });
    expect(plantOf(host, 'bench')).toMatchObject({ supplyOn: false, locks: ['isolator'] });
  });

  it('does not let a fault be put in or taken out by name', () => {
    const host = openJob();
    act(host, { type: 'clear-fault', fault: 'damper jammed short of purge' });
    expect(host.of('failed')[0]).toMatchObject({
      failure: 'action refused',
      detail: 'clear-fault',
    });
    expect(logOf(host)).toHaveLength(2);
  });

  it('is told the truth at the end: what was wrong, what still is, and whether it held', () => {
    const judge: ToWorker = { type: 'ask', ask: 1, question: { of: 'judge', desk: [] } };
    const untouched = openJob();
    untouched.tell(judge);
    const mended = openJob();
    visit(mended);
    mended.tell(judge);
    const [before, after] = [untouched, mended].map((host) => {
      const [answer] = host.of('answer');
      expect(toPageSchema.safeParse(answer).error).toBeUndefined();
      return answer?.answer.of === 'judge' ? answer.answer.verdict : null;
    });
    expect(before?.truth.faults.map(({ id }) => id)).toEqual(['damper jammed short of purge']);
    expect(before).toMatchObject({
      standing: ['damper jammed short of purge'],
      held: { held: false },
    });
    expect(after).toMatchObject({
      standing: [],
      held: { held: true, lockout: null, ran: true },
      needless: [],
    });
    // The cause was mended, and nobody named it.
    expect(after?.claims).toEqual([]);
    expect(after?.missed).toEqual([MEND.type === 'repair' ? MEND.part : '']);
  });
});

describe('the bench of a job', () => {
  const desk = [{ t: 120, type: 'arrive', tools: ['multimeter'] } as const];

  it('counts the minutes of the visit as they come', () => {
    const host = openJob();
    host.tell({ type: 'desk', entries: [...desk] });
    const before = plantOf(host, 'minutes')?.total ?? Number.NaN;
    act(host, { type: 'check', what: 'look', place: 'damper blade', other: '' });
    host.tell({ type: 'play', speed: 20 });
    host.live(6);
    const after = plantOf(host, 'minutes');
    // Two minutes of the plant's time, and the look itself.
    expect((after?.total ?? 0) - before).toBeGreaterThan(2);
    expect(after?.lines.some(({ t }) => t === 120)).toBe(true);
  });

  it('proves and judges the same whether it is asked on the way or from the log alone', () => {
    const whole = openJob();
    visit(whole);
    const { headS } = whole.status();
    const again = openJob({ log: logOf(whole), untilS: headS });
    const [one, other] = [whole, again].map((host) => {
      host.tell({ type: 'ask', ask: 1, question: { of: 'proof', desk: [...desk] } });
      host.tell({ type: 'ask', ask: 2, question: { of: 'judge', desk: [...desk] } });
      return host.of('answer').map(({ answer }) => answer);
    });
    expect(one).toEqual(other);
    expect(one?.[0]).toMatchObject({ of: 'proof', proof: { proved: expect.any(Boolean) } });
    const [proof, judged] = one ?? [];
    if (proof?.of !== 'proof' || judged?.of !== 'judge') throw new Error('not answered');
    expect(judged.verdict.proof).toEqual(proof.proof);
    expect(proof.proof.items.length).toBeGreaterThan(3);
  });

  it('has a commissioning sheet and the channels of the panel', () => {
    const facts = openJob().of('opened')[0]?.facts;
    expect(facts?.sheet.length).toBeGreaterThan(10);
    const ids = new Set(facts?.channels.map(({ id }) => id));
    expect(facts?.panel.filter((id) => ids.has(id)).length).toBeGreaterThan(5);
  });
});

describe('a lesson', () => {
  it('broken and put back is the run it was', () => {
    const lesson = () => openHost({ kind: 'lesson', id: LESSON.id, untilS: 0 }, WITH_LESSON);
    const [sound, broken] = [lesson(), lesson()];
    for (const host of [sound, broken]) {
      host.tell({ type: 'stop at', what: 'each step' });
      for (let i = 0; i < 3; i += 1) {
        host.tell({ type: 'play', speed: 20 });
        host.live(6);
        expect(host.status().mode).toBe('paused');
      }
    }
    act(broken, {
      type: 'insert-fault',
      fault: 'damper jammed short of purge',
      severity: 25,
    });
    broken.tell({ type: 'play', speed: 20 });
    broken.live(3);
    broken.tell({ type: 'put back' });
    expect(broken.status()).toMatchObject({
      timeS: sound.status().timeS,
      hash: sound.status().hash,
    });
    for (const host of [sound, broken]) {
      host.tell({ type: 'stop at', what: null }, { type: 'play', speed: 20 });
      host.live(5);
    }
    expect(broken.status().hash).toBe(sound.status().hash);
    expect(broken.of('failed')).toEqual([]);
  });
});

describe('a tool that is connected', () => {
  it('is logged as the bench reads it', () => {
    const [opened] = openJob().of('opened');
    for (const { id, ranges } of opened?.facts.tools ?? []) {
      const use: ToolUse = { tool: id, place: 'x' };
      const range = ranges[0]?.id;
      const what = range === undefined ? id : `${id}: ${range}`;
      expect(checkOf(use)).toEqual({ type: 'check', what, place: 'x', other: '' });
    }
  });
});

/** One of each tool at the first place where it goes. */
function usesOf(host: Host): ToolUse[] {
  const { tools, testPoints } = host.of('opened')[0]?.facts ?? { tools: [], testPoints: [] };
  return tools.flatMap(({ id, ranges, other }): ToolUse[] => {
    const [place, second] = testPoints.filter(
      (point) => point.tools.includes(id) && (id !== 'multimeter' || 'wire' in point.where),
    );
    if (place === undefined || (other === 'must' && second === undefined)) return [];
    const range = ranges[0]?.id;
    const twoLeads = id === 'multimeter';
    return [
      {
        tool: id,
        place: place.id,
        ...(twoLeads && second !== undefined ? { other: second.id } : {}),
        ...(range === undefined ? {} : { range }),
      },
    ];
  });
}
