/** The worker's side and the page's end of it, without a browser. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import type { HistoryEvent } from '../../../src/app/session/protocol.ts';
import type { WorkerLike } from '../../../src/app/session/session-types.ts';
import { createAuthorHost } from '../../../src/app/teach-scenarios/author-host.ts';
import { CLOSED, createAuthorPort } from '../../../src/app/teach-scenarios/author-port.ts';
import type { ToAuthor } from '../../../src/app/teach-scenarios/author-protocol.ts';
import { expectedOf } from '../../../src/app/teach-scenarios/expected-of.ts';
import { shippedText } from '../../../src/app/teach-scenarios/shipped-texts.ts';
import { exerciseCases, runnableJob } from '../../../src/cli/exercise-case.ts';
import { readLibrary } from '../../../src/cli/library.ts';
import { diagnoseCase } from '../../../src/diagnosis/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { checkExpectation, type Expectation, setupOf } from '../../../src/scenario/index.ts';
import { library } from '../../support/library.ts';

const root = join(import.meta.dirname, '../../..');
const atlases = join(root, 'assets/page/atlas');

/** A worker without a thread: what it is told goes to the host. */
function workerWith(loadAtlas: (plant: string) => Promise<string | null>): WorkerLike<ToAuthor> {
  let ended = false;
  const worker: WorkerLike<ToAuthor> = {
    onmessage: null,
    onerror: null,
    postMessage: (message) => void host.receive(structuredClone(message)),
    terminate: () => {
      ended = true;
    },
  };
  const host = createAuthorHost({
    library,
    post: (data) => {
      if (!ended) worker.onmessage?.({ data: structuredClone(data) } as MessageEvent);
    },
    loadAtlas: (_folder, plant) => loadAtlas(plant),
  });
  return worker;
}

const shippedAtlas = async (plant: string) => {
  const bytes = readFileSync(join(atlases, `${plant}.atlas`));
  return bytes[0] === 0x1f ? gunzipSync(bytes).toString('utf8') : bytes.toString('utf8');
};
const portWith = (load: typeof shippedAtlas | (() => Promise<string | null>)) =>
  createAuthorPort(() => workerWith(load));
const JOB = shippedText('job', 'dairy-air-that-never-came') ?? '';

describe('what knows plants and files', () => {
  it('tells each mistake at its place, and the nearest name', async () => {
    const text = JOB.replace(/level: \d/, 'level: 9');
    const { issues, start } = await portWith(shippedAtlas).ask({ of: 'check', kind: 'job', text });
    expect(start).toBeNull();
    expect(issues).toEqual([expect.objectContaining({ line: 5, column: 8, path: 'level' })]);
    const plant = JOB.replace('plant: dairy', 'plant: diary');
    const found = await portWith(shippedAtlas).ask({ of: 'check', kind: 'job', text: plant });
    expect(found.issues).toEqual([expect.objectContaining({ line: 4, path: 'plant' })]);
    expect(JSON.stringify(found.issues)).toContain('"word":"dairy"');
  });

  it('says of a job what the command line says of it', async () => {
    const answer = await portWith(shippedAtlas).ask({
      of: 'diagnose',
      kind: 'job',
      text: JOB,
      atlases: '',
    });
    const whole = readLibrary(root);
    if (!whole.ok) throw new Error('the shipped library is not in order');
    const job = whole.value.jobs.find(({ id }) => id === 'dairy-air-that-never-came');
    const one = job && exerciseCases(whole.value, atlases, '')(runnableJob(whole.value, job));
    if (one?.ok !== true) throw new Error('the command line has no such case');
    expect(answer).toMatchObject({ ok: true, level: job?.level, found: diagnoseCase(one.value) });
  }, 120_000);

  it('says plainly where an atlas cannot be fetched, is not there, or the file is not in order', async () => {
    const ask = { of: 'diagnose', kind: 'job', text: JOB, atlases: '' } as const;
    const failing = portWith(() => Promise.reject(new Error('503')));
    expect(await failing.ask(ask)).toEqual({
      ok: false,
      trouble: 'atlas not loaded',
      detail: '503',
    });
    const none = portWith(async () => null);
    expect(await none.ask(ask)).toEqual({ ok: false, trouble: 'no atlas', detail: 'dairy' });
    expect(await none.ask({ ...ask, text: 'id: [' })).toMatchObject({ trouble: 'not in order' });
  });

  it('can be broken off: what was asked ends, and the next question begins anew', async () => {
    let started = 0;
    const port = createAuthorPort(() => {
      started += 1;
      return started === 1
        ? {
            postMessage: () => undefined,
            terminate: () => undefined,
            onmessage: null,
            onerror: null,
          }
        : workerWith(shippedAtlas);
    });
    const asked = port.ask({ of: 'facts' });
    port.close();
    await expect(asked).rejects.toThrow(CLOSED);
    const facts = await port.ask({ of: 'facts' });
    expect(facts.plants.map(({ id }) => id).sort()).toEqual(['dairy', 'laundry', 'school']);
    expect(started).toBe(2);
  });

  it('answers a message that it does not understand with why', async () => {
    const posted: { ask: number; trouble: string | null }[] = [];
    const host = createAuthorHost({
      library,
      post: (message) => posted.push(message),
      loadAtlas: shippedAtlas,
    });
    await host.receive({ type: 'author', ask: 7, what: { of: 'check', kind: 'plant', text: '' } });
    expect(posted).toEqual([
      expect.objectContaining({ ask: 7, trouble: expect.stringContaining('kind') }),
    ]);
  });
});

describe('what a run did, taken as what a run must do', () => {
  it.each([
    'healthy-start',
    'dirty-lens',
    'jammed-damper',
    'school-no-spark',
    'laundry-pilot-unseen',
    'fuse-blows-in-purge',
  ])('holds for the same run of %s', (id) => {
    const setup = setupOf(library, id);
    const scenario = library.scenarios.find((one) => one.id === id);
    if (setup === null || scenario === undefined) throw new Error(`no start ${id}`);
    const run = createRun(setup);
    run.advanceTo(scenario.until);
    const expected = expectedOf(run.events() as readonly HistoryEvent[], scenario.until);
    expect(checkExpectation(run.events(), expected as Expectation)).toEqual([]);
    expect(Object.keys(expected as object)).toContain('steps');
  });
});
