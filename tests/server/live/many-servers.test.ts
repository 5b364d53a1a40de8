import { describe, expect, it } from 'vitest';
import type { Spoken } from '../../../src/classroom/index.ts';
import { createMemoryStore } from '../../support/memory-store.ts';
import {
  join,
  lead,
  newKey,
  openClass,
  serve,
  sit,
  type TestServer,
  TOGETHER,
  workDelta,
} from './clients.ts';

/** Two servers that know nothing of each other but what is in their store. */
async function serveTwo(): Promise<readonly [TestServer, TestServer]> {
  const store = createMemoryStore();
  const options = { store, shared: true };
  return [await serve(options), await serve(options)];
}
const act = (t: number) => ({ t, type: 'press', button: 'reset' });
const hint = (text: string) =>
  ({ key: newKey(), entry: { type: 'hint', to: 'all', text } }) as const;

describe('two servers over one store, without anything between them', () => {
  it('give the same entries in the same order to everyone, whoever said them where', async () => {
    const [here, there] = await serveTwo();
    const opened = await openClass(here);
    const instructors = [await lead(here, opened), await lead(there, opened)];
    const learner = await sit(there, await join(there, opened));
    const said = await Promise.all(
      Array.from({ length: 16 }, (_, index) =>
        instructors[index % 2]?.ask('say', hint(`${index}`)),
      ),
    );
    expect(said.every((answer) => answer?.ok === true)).toBe(true);
    const kept = await here.store.entriesSince(opened.id, 1);
    expect(kept.map(({ n }) => n)).toEqual(Array.from({ length: 16 }, (_, index) => index + 2));
    for (const { got, until } of [...instructors, learner]) {
      await until(() => got.entry.length === 16);
      expect(got.entry).toEqual(kept);
    }
  });

  it('take one entry once, told to both with one key', async () => {
    const [here, there] = await serveTwo();
    const opened = await openClass(here);
    const [one, other] = [await lead(here, opened), await lead(there, opened)];
    const begin = { key: newKey(), entry: { type: 'begin' } } as const;
    const [first, second] = await Promise.all([one.ask('say', begin), other.ask('say', begin)]);
    expect(first).toEqual({ ok: true, n: 2 });
    expect(second).toEqual(first);
  });

  it('decide by what was said at the other', async () => {
    const [here, there] = await serveTwo();
    const opened = await openClass(here);
    const [one, other] = [await lead(here, opened), await lead(there, opened)];
    await one.ask('say', { key: newKey(), entry: { type: 'begin' } });
    const freeze = { key: newKey(), entry: { type: 'freeze', to: 'all' } } as const;
    expect(await other.ask('say', freeze)).toEqual({ ok: true, n: 3 });
    await one.ask('say', { key: newKey(), entry: { type: 'close' } });
    expect(await other.ask('say', hint('too late'))).toEqual({ ok: false, error: 'closed' });
  });

  it('never mix the work of a seat that goes there and comes back', async () => {
    const [here, there] = await serveTwo();
    const opened = await openClass(here);
    const seated = await join(here, opened);
    const first = await sit(here, seated);
    await first.ask('work', workDelta({ rev: 1, acts: [act(1), act(2)] }));
    const moved = await sit(there, seated);
    expect(moved.welcomes[0]?.work?.rev).toBe(1);
    await moved.ask('work', workDelta({ rev: 2, keepActs: 1, acts: [act(3), act(4)] }));
    const back = await sit(here, seated);
    expect(back.welcomes[0]?.work).toMatchObject({ rev: 2, acts: [act(1), act(3), act(4)] });
    await back.ask('work', workDelta({ rev: 3, keepActs: 3, acts: [act(5)] }));
    expect((await here.store.work(opened.id, 1))?.acts).toEqual([act(1), act(3), act(4), act(5)]);
  });

  it('count all answers to a poll, given here and there', async () => {
    const [here, there] = await serveTwo();
    const opened = await openClass(here);
    const instructor = await lead(here, opened);
    const question = { text: 'Which?', stem: [], options: ['a', 'b'], item: null };
    await instructor.ask('say', { key: newKey(), entry: { type: 'poll', id: 'one', question } });
    for (const [index, server] of [here, there, there].entries()) {
      const learner = await sit(server, await join(server, opened, `Learner ${index}`));
      expect(await learner.ask('poll answer', { poll: 'one', option: 1 })).toEqual({ ok: true });
    }
    const show = { type: 'show poll', id: 'one', right: 1, why: '', counts: [] } satisfies Spoken;
    await instructor.ask('say', { key: newKey(), entry: show });
    await instructor.until(() => instructor.got.entry.at(-1)?.type === 'show poll');
    expect(instructor.got.entry.at(-1)).toMatchObject({ counts: [0, 3] });
  });

  it('bring the one plant to those who follow it at the other', async () => {
    const [here, there] = await serveTwo();
    const opened = await openClass(here, TOGETHER);
    const instructor = await lead(here, opened);
    const learner = await sit(there, await join(there, opened));
    await instructor.ask('work', workDelta({ rev: 1, acts: [act(1)] }));
    await learner.until(() => learner.got.worked.length > 0);
    expect(learner.got.worked[0]).toMatchObject({
      seat: null,
      delta: { rev: 1, keepActs: 0, acts: [act(1)] },
    });
  });
});
