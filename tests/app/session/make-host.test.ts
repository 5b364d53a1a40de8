/** What the worker that makes quiz items answers, and what it says where it cannot make one. */
import library from 'virtual:library';
import { describe, expect, it } from 'vitest';
import { createMakeHost, type MakePorts } from '../../../src/app/session/make-host.ts';
import { makePort } from '../../../src/app/session/make-port.ts';
import { type FromMaker, fromMakerSchema } from '../../../src/app/session/making-protocol.ts';
import type { Item, Made, QuizPlant } from '../../../src/quiz/index.ts';

const MESSAGE = {
  type: 'make item',
  ask: 3,
  id: 'cause/dairy/7',
  atlases: 'https://page.example/atlas/',
} as const;

const ITEM: Item = {
  id: MESSAGE.id,
  kind: 'cause',
  plant: 'dairy',
  topic: 'cause/damper',
  skills: [],
  difficulty: 0,
  stem: {
    tells: [],
    asks: { code: 'quiz.as-written', with: { text: 'What?' } },
    readings: [],
    shows: { chart: true, trends: [] },
  },
  run: { plant: 'dairy', tolerances: 1001, faults: [], actions: [], untilS: 65 },
  caution: null,
  answer: 'choice',
  options: ['this', 'that'].map((text) => ({
    says: { code: 'quiz.as-written', with: { text } },
    why: [],
    share: null,
    decidedBy: null,
    atS: null,
  })),
  key: 1,
};

function openHost(ports: Partial<MakePorts> = {}) {
  const posted: FromMaker[] = [];
  const readied: string[] = [];
  const host = createMakeHost({
    ...makePort(library),
    post: (message) => posted.push(fromMakerSchema.parse(structuredClone(message))),
    loadAtlas: async (_folder, plant) => `atlas of ${plant}`,
    readyPlant: (sound, atlas) => {
      readied.push(atlas);
      return { id: sound.plant.id } as QuizPlant;
    },
    make: (plants, id): Made | null =>
      plants('dairy') === null ? null : { ok: true, item: { ...ITEM, id } },
    ...ports,
  });
  return {
    readied,
    async ask(message: unknown = MESSAGE) {
      await host.receive(message);
      return posted.at(-1);
    },
  };
}

describe('the worker that makes items', () => {
  it('makes a plant ready once, and answers each question by its number', async () => {
    const { ask, readied } = openHost();
    expect(await ask()).toMatchObject({ ask: 3, ok: true, made: { item: ITEM } });
    expect(await ask({ ...MESSAGE, ask: 4, id: 'cause/dairy/8' })).toMatchObject({
      ask: 4,
      ok: true,
    });
    expect(readied).toEqual(['atlas of dairy']);
  });

  it('gives what the controller noted up to the end of the record, and the names of the plant', async () => {
    const answer = await openHost().ask();
    if (answer?.ok !== true) throw new Error('no item');
    const { start, names } = answer.made;
    expect(start.some(({ type }) => type === 'step')).toBe(true);
    expect(Math.max(...start.map(({ t }) => t))).toBeLessThanOrEqual(65);
    expect(start.map(({ type }) => type)).not.toContain('fault');
    expect(names.testPoints.length).toBeGreaterThan(5);
    expect(names.channels.map(({ id }) => id)).toContain('flame.signal');
  });

  it.each([
    ['an id that names no kind', { id: 'riddle/dairy/7' }],
    ['a plant that is not there', { id: 'cause/ironworks/7' }],
    ['no id at all', { id: '' }],
  ])('says of %s that there is no such item', async (_what, part) => {
    const { ask } = openHost({ make: () => null });
    expect(await ask({ ...MESSAGE, ...part })).toMatchObject({
      ok: false,
      trouble: 'no such item',
    });
  });

  it('says that an item is no longer borne out, and by which rejection', async () => {
    const { ask } = openHost({ make: () => ({ ok: false, why: 'key not proved' }) });
    expect(await ask()).toMatchObject({
      ok: false,
      trouble: 'not proved any more',
      detail: 'key not proved',
    });
  });

  it('says that an atlas could not be fetched, and fetches it at the next question', async () => {
    let online = false;
    const { ask } = openHost({
      loadAtlas: async () => {
        if (!online) throw new Error('offline');
        return 'atlas';
      },
    });
    expect(await ask()).toMatchObject({
      ok: false,
      trouble: 'atlas not loaded',
      detail: 'offline',
    });
    online = true;
    expect(await ask()).toMatchObject({ ok: true });
  });

  it('says that making broke off, of a text that is no atlas and of a message that is none', async () => {
    const { readyPlant } = makePort(library);
    const broken = openHost({ readyPlant });
    expect(await broken.ask()).toMatchObject({ ok: false, trouble: 'making broke off' });
    expect(await openHost().ask({ type: 'make item', ask: 9 })).toMatchObject({
      ask: 9,
      ok: false,
      trouble: 'making broke off',
    });
  });
});
