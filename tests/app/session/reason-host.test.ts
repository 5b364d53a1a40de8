/** What the worker that reasons answers, and what it does where there is no atlas to reason with. */

import { gzipSync } from 'node:zlib';
import library from 'virtual:library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { loadAtlas } from '../../../src/app/session/load-atlas.ts';
import { createReasonHost, type ReasonPorts } from '../../../src/app/session/reason-host.ts';
import {
  type FromReasoner,
  fromReasonerSchema,
} from '../../../src/app/session/reasoning-protocol.ts';
import { readLibrary } from '../../../src/cli/library.ts';
import { soundSetup } from '../../../src/cli/sound-setup.ts';
import type { Reasoning } from '../../../src/diagnosis/index.ts';
import { caseOfExercise } from '../../../src/judging/work/index.ts';

const JOB = 'school-cold-classrooms';
const MESSAGE = {
  type: 'reason',
  ask: 4,
  kind: 'job',
  id: JOB,
  log: [{ t: 5, type: 'call-for-heat', on: true }],
  desk: [],
  untilS: 60,
  atlases: 'https://page.example/atlas/',
} as const;
const REASONING: Reasoning = {
  decisions: [],
  found: 'not found',
  path: { score: 1, bestMinutes: 5, regretMinutes: 0, redundant: 0, premature: 0 },
  claims: [],
  calibration: null,
  board: [],
  next: [],
  moments: [],
  ideal: [],
  alike: [],
};

function openHost(ports: Partial<ReasonPorts> = {}) {
  const posted: FromReasoner[] = [];
  const made: string[] = [];
  const host = createReasonHost({
    post: (message) => posted.push(fromReasonerSchema.parse(message)),
    openCase: (kind, id) => caseOfExercise(library, kind, id),
    loadAtlas: async (_folder, plant) => `atlas of ${plant}`,
    createReasoner: (atlas) => {
      made.push(atlas);
      return { reason: () => REASONING };
    },
    ...ports,
  });
  return {
    made,
    posted,
    async ask(message: unknown = MESSAGE) {
      await host.receive(message);
      return posted.at(-1);
    },
  };
}

describe('the worker that reasons', () => {
  it('makes an exercise ready once, and answers each question by its number', async () => {
    const { ask, made } = openHost();
    expect(await ask()).toMatchObject({ ask: 4, reasoning: REASONING, upTo: { log: 1, desk: 0 } });
    expect(await ask({ ...MESSAGE, ask: 5 })).toMatchObject({ ask: 5, reasoning: REASONING });
    expect(made).toEqual(['atlas of school']);
  });

  it('has nothing to say where the plant has no atlas, or where no part is to be named', async () => {
    const without = openHost({ loadAtlas: async () => null });
    expect(await without.ask()).toMatchObject({ reasoning: null, trouble: null });
    const chosen = library.drills.find(({ claim }) => claim === undefined)?.id;
    const drill = openHost();
    expect(await drill.ask({ ...MESSAGE, kind: 'drill', id: chosen })).toMatchObject({
      reasoning: null,
      trouble: null,
    });
    expect(drill.made).toEqual([]);
  });

  it('says when an atlas could not be loaded, and tries again at the next question', async () => {
    let online = false;
    const { ask } = openHost({
      loadAtlas: async () => {
        if (!online) throw new Error('no network');
        return 'atlas';
      },
    });
    expect(await ask()).toMatchObject({
      reasoning: null,
      trouble: 'atlas not loaded',
      detail: 'no network',
    });
    online = true;
    expect(await ask()).toMatchObject({ reasoning: REASONING, trouble: null });
  });

  it('says when reasoning breaks, or a question is none, and goes on', async () => {
    let breaks = true;
    const { ask } = openHost({
      createReasoner: () => {
        if (breaks) throw new Error('not an atlas');
        return { reason: () => REASONING };
      },
    });
    expect(await ask()).toMatchObject({ trouble: 'reasoning broke off', detail: 'not an atlas' });
    expect(await ask({ ...MESSAGE, log: 'all' })).toMatchObject({
      ask: 4,
      trouble: 'reasoning broke off',
    });
    breaks = false;
    expect(await ask()).toMatchObject({ reasoning: REASONING, trouble: null });
  });
});

describe('the case of an exercise', () => {
  it.each(library.plants.map(({ id }) => id))(
    'starts from the sound %s of which the atlas was made',
    (plant) => {
      const whole = readLibrary(new URL('../../../', import.meta.url).pathname);
      const job = library.jobs.find((one) => one.plant === plant);
      const found = caseOfExercise(library, 'job', job?.id ?? '');
      expect(whole.ok && soundSetup(whole.value, plant)).toEqual(found?.sound);
    },
  );

  it('is there for every job and every drill that asks for a part', () => {
    for (const { id, tools, faults } of library.jobs) {
      const found = caseOfExercise(library, 'job', id);
      expect(found?.tools).toEqual(tools);
      const brought = faults.map(({ fault }) => fault);
      expect(found?.own.filter((fault) => !brought.includes(fault))).toEqual([]);
      expect(found?.own.length === 0).toBe(brought.length === 0);
    }
    const drills = library.drills.filter(({ claim }) => claim !== undefined);
    expect(drills.length).toBeGreaterThan(3);
    for (const { id, claim } of drills) {
      expect(caseOfExercise(library, 'drill', id)?.own).toEqual(claim);
    }
  });
});

describe('fetching an atlas', () => {
  afterEach(() => void vi.unstubAllGlobals());
  const serve = (status: number, body: Uint8Array<ArrayBuffer> | string) => {
    const asked: string[] = [];
    vi.stubGlobal('fetch', async (address: URL) => {
      asked.push(address.href);
      return new Response(body, { status });
    });
    return asked;
  };
  const load = () => loadAtlas('https://page.example/trainer/atlas/', 'dairy');

  it('unpacks it, and takes it as it is where the server has had it unpacked', async () => {
    const asked = serve(200, new Uint8Array(gzipSync('an atlas')));
    expect(await load()).toBe('an atlas');
    expect(asked).toEqual(['https://page.example/trainer/atlas/dairy.atlas']);
    serve(200, 'an atlas');
    expect(await load()).toBe('an atlas');
  });

  it('tells a plant without one from a server in trouble', async () => {
    serve(404, 'not here');
    expect(await load()).toBeNull();
    serve(503, 'later');
    await expect(load()).rejects.toThrow('503');
  });
});
