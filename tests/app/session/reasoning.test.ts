/** How a session reasons about the work: over the real engine, the shipped library and its atlases. */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import type { DeskEntry } from '../../../machines/job/index.ts';
import { benchPort } from '../../../src/app/session/bench-port.ts';
import { createReasonHost, type ReasonPorts } from '../../../src/app/session/reason-host.ts';
import { reasoningSchema } from '../../../src/app/session/reasoning-protocol.ts';
import { createRunHost } from '../../../src/app/session/run-host.ts';
import { createSession } from '../../../src/app/session/session.ts';
import type { SessionOpening, WorkerLike } from '../../../src/app/session/session-types.ts';
import { openStage } from '../../../src/app/session/stage.ts';
import type { ToReasoner } from '../../../src/app/session/to-reasoner.ts';
import { createRun } from '../../../src/engine/index.ts';
import { createReasoner, type Reasoner } from '../../../src/judging/reasoning/index.ts';
import { caseOfExercise } from '../../../src/judging/work/index.ts';

const ROOT = new URL('../../../', import.meta.url);
const JOB = { kind: 'job', id: 'school-cold-classrooms' } as const;
const CHECK = { type: 'check', what: 'manometer: mid', place: 'inlet', other: '' } as const;

const atlasText = (plant: string) =>
  gunzipSync(readFileSync(new URL(`assets/page/atlas/${plant}.atlas`, ROOT))).toString();
/** Made ready once for all tests here; it remembers nothing of what it is asked. */
const ready = new Map<string, Reasoner>();
const PORTS: Omit<ReasonPorts, 'post'> = {
  openCase: (kind, id) => caseOfExercise(library, kind, id),
  loadAtlas: async (_folder, plant) => atlasText(plant),
  createReasoner(atlas, exercise) {
    const known = ready.get(exercise.plant) ?? createReasoner(atlas, exercise);
    ready.set(exercise.plant, known);
    return known;
  },
};

/** As the page and its two workers have it; what they say is copied on the way. */
function openAtWork(what: SessionOpening, ports: Partial<ReasonPorts> = {}) {
  const clock = { ms: 0 };
  const asked: ToReasoner[] = [];
  const run = wire();
  const host = createRunHost({
    nowMs: () => clock.ms,
    post: (message) => run.tell(message),
    openStage: (id, kind) => openStage(library, id, kind),
    createRun: (setup) => createRun(setup),
    bench: benchPort,
  });
  run.hear = (message) => host.receive(message);
  const startWorker = () => {
    const reasons = wire<ToReasoner>();
    const reasoner = createReasonHost({
      ...PORTS,
      ...ports,
      post: (message) => reasons.tell(message),
    });
    reasons.hear = (message) => {
      asked.push(message as ToReasoner);
      void reasoner.receive(message);
    };
    reasons.release();
    return reasons.worker;
  };
  const session = createSession(
    run.worker,
    { ...what, play: false },
    { startWorker, atlases: 'x' },
  );
  // The worker was not listening yet when the page asked it to open.
  run.release();
  const live = (realS: number) => {
    for (let i = 0; i < realS * 40; i += 1) {
      clock.ms += 25;
      host.tick();
      session.animate(clock.ms);
    }
  };
  return { session, live, asked };
}

function wire<Message>() {
  const early: unknown[] = [];
  let open = false;
  const worker: WorkerLike<Message> = {
    postMessage: (message) => {
      const copy = structuredClone(message);
      if (open) it.hear(copy);
      else early.push(copy);
    },
    terminate: () => undefined,
    onmessage: null,
    onerror: null,
  };
  const it = {
    worker,
    hear: (_message: unknown): void => undefined,
    tell: (data: unknown) => worker.onmessage?.({ data: structuredClone(data) } as MessageEvent),
    release: () => {
      open = true;
      for (const message of early.splice(0)) it.hear(message);
    },
  };
  return it;
}

/** Arriving, a watched while, a reading and a look: all that is done here. */
async function visit({ session, live }: ReturnType<typeof openAtWork>, alsoReasons: boolean) {
  const desk: DeskEntry[] = [{ t: session.headS(), type: 'arrive', tools: ['manometer'] }];
  const reason = async () => (alsoReasons ? await session.reason([...desk]) : null);
  session.play(20);
  await reason();
  live(2);
  session.perform(CHECK);
  const first = reason();
  live(1);
  await first;
  desk.push({ t: session.headS(), type: 'begin' });
  session.perform({ type: 'check', what: 'look', place: 'sight glass', other: '' });
  live(1);
  session.pause();
  live(0.1);
  return { desk, last: await reason() };
}

describe('reasoning about a job', () => {
  it('tells of what was done, in words that the page takes, and of how much it was made', async () => {
    const work = openAtWork(JOB);
    const { desk, last } = await visit(work, true);
    expect(last).toMatchObject({ trouble: null, detail: '' });
    expect(reasoningSchema.safeParse(last?.reasoning).error).toBeUndefined();
    const log = work.asked.at(-1)?.log ?? [];
    expect(log.filter(({ type }) => type === 'check')).toHaveLength(2);
    expect(last?.upTo).toEqual({ log: log.length, desk: desk.length });
    const kinds = last?.reasoning?.decisions.map(({ kind }) => kind);
    expect(kinds?.[0]).toBe('arrive');
    expect(kinds?.filter((kind) => kind === 'check')).toHaveLength(2);
    expect(last?.reasoning?.board.length).toBeGreaterThan(0);
  });

  it('leaves the run as it is', async () => {
    const hashes = [];
    for (const alsoReasons of [false, true]) {
      const work = openAtWork(JOB);
      await visit(work, alsoReasons);
      hashes.push(work.session.store.read().status?.hash);
    }
    expect(hashes[0]).toBe(hashes[1]);
  });

  it('is the same whether it was asked on the way or for the first time at the end', async () => {
    const onTheWay = openAtWork(JOB);
    const { desk, last } = await visit(onTheWay, true);
    const atTheEnd = openAtWork(JOB);
    await visit(atTheEnd, false);
    expect((await atTheEnd.session.reason(desk)).reasoning).toEqual(last?.reasoning);
  });

  it('says in the page when its atlas cannot be had, and works on without', async () => {
    const loadAtlas = async () => {
      throw new Error('no network');
    };
    const work = openAtWork(JOB, { loadAtlas });
    const { desk } = await visit(work, true);
    expect(await work.session.reason(desk)).toMatchObject({
      reasoning: null,
      trouble: 'atlas not loaded',
    });
    const { failure, status } = work.session.store.read();
    expect(failure).toBeNull();
    expect(status?.mode).toBe('paused');
  });
});
