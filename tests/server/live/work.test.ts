import { describe, expect, it } from 'vitest';
import { join, lead, newKey, openClass, project, serve, sit, workDelta } from './clients.ts';

const act = (t: number) => ({ t, type: 'press', button: 'reset' });

describe('work that a seat tells', () => {
  it('is answered only once it is in the store', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened));
    let save = () => {};
    server.store.beforeSaving = () => new Promise((resolve) => (save = resolve));
    let answered = false;
    const answer = learner.ask('work', workDelta({ acts: [act(1)] })).then((given) => {
      answered = true;
      return given;
    });
    // Something that is answered at once has gone there and back.
    await learner.ask('since', { n: 0 });
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(answered).toBe(false);
    expect(await server.store.work(opened.id, 1)).toBeNull();
    save();
    expect(await answer).toEqual({ ok: true, attempt: 1, rev: 1 });
    expect(await server.store.work(opened.id, 1)).toMatchObject({ rev: 1, acts: [act(1)] });
  });

  it('is put behind what was told before, and told twice it changes nothing', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened));
    await learner.ask('work', workDelta({ rev: 1, acts: [act(1), act(2)] }));
    const second = workDelta({ rev: 2, keepActs: 1, acts: [act(3)] });
    for (let times = 0; times < 2; times++) {
      expect(await learner.ask('work', second)).toEqual({ ok: true, attempt: 1, rev: 2 });
    }
    expect((await server.store.work(opened.id, 1))?.acts).toEqual([act(1), act(3)]);
  });

  it('that leans on more than is there is asked for from where it is there', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened));
    await learner.ask('work', workDelta({ rev: 1, acts: [act(1)] }));
    const beyond = workDelta({ rev: 2, keepActs: 5, acts: [act(6)] });
    expect(await learner.ask('work', beyond)).toEqual({
      ok: false,
      error: 'tell more',
      haveActs: 1,
      haveDesk: 0,
    });
  });

  it('is not lost when the database is away for a while: it is said, and taken when told again', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened));
    await learner.ask('work', workDelta({ rev: 1 }));
    server.store.fail('database not reached');
    const told = workDelta({ rev: 2, acts: [act(1)] });
    expect(await learner.ask('work', told)).toEqual({ ok: false, error: 'cannot be saved now' });
    server.store.fail(null);
    expect(await learner.ask('work', told)).toEqual({ ok: true, attempt: 1, rev: 2 });
    expect((await server.store.work(opened.id, 1))?.acts).toEqual([act(1)]);
  });

  it('is there again after a restart, and for whoever takes the seat', async () => {
    const before = await serve();
    const opened = await openClass(before);
    const seated = await join(before, opened);
    const learner = await sit(before, seated);
    await learner.ask('work', workDelta({ rev: 3, acts: [act(1)] }));
    await before.stop();
    const after = await serve({ store: before.store });
    const back = await sit(after, seated);
    expect(back.welcomes[0]?.work).toMatchObject({ rev: 3, acts: [act(1)] });
  });

  it('is saved before a server stops, though it was told in the last moment', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened));
    learner.tell('work', workDelta({ rev: 1, acts: [act(1)] }));
    await learner.ask('since', { n: 0 });
    await server.stop();
    expect(learner.got.gone).toEqual([{ why: 'server stops' }]);
    expect(await server.store.work(opened.id, 1)).toMatchObject({ acts: [act(1)] });
  });

  it('of another seat is shown to an instructor as it goes on, and to a projector only in the spotlight', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened));
    await learner.ask('work', workDelta({ rev: 1, acts: [act(1)] }));
    const instructor = await lead(server, opened);
    const projector = await project(server, opened);
    expect(await instructor.ask('watch', { seat: 1 })).toMatchObject({
      ok: true,
      work: { rev: 1 },
    });
    expect(await projector.ask('watch', { seat: 1 })).toMatchObject({ ok: false });
    await instructor.ask('say', { key: newKey(), entry: { type: 'spotlight', seat: 1 } });
    expect(await projector.ask('watch', { seat: 1 })).toMatchObject({ ok: true, work: { rev: 1 } });
    const delta = workDelta({ rev: 2, keepActs: 1, acts: [act(2)] });
    await learner.ask('work', delta);
    for (const onlooker of [instructor, projector]) {
      await onlooker.until(() => onlooker.got.worked.length === 1);
      expect(onlooker.got.worked).toEqual([{ seat: 1, delta }]);
    }
    expect(await instructor.ask('watch', { seat: null })).toEqual({ ok: true, work: null });
    await learner.ask('work', workDelta({ rev: 3, keepActs: 2 }));
    await projector.until(() => projector.got.worked.length === 2);
    expect(instructor.got.worked).toHaveLength(1);
  });
});

describe('work that is handed in', () => {
  it('is judged with what its page claimed, and the result is kept with why it was refused', async () => {
    const tasks: unknown[] = [];
    const judge = {
      judge: async (task: unknown) => {
        tasks.push(task);
        return { result: { outcome: 0.5 }, refused: ['outcome differs'] };
      },
      close: async () => {},
    };
    const server = await serve({ judge });
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened, 'Ada'));
    await learner.ask('work', workDelta({ rev: 4, acts: [act(1)] }));
    const claimed = { outcome: 1, hash: 'made up' };
    expect(await learner.ask('hand in', { attempt: 1, rev: 4, claimed })).toEqual({ ok: true });
    await learner.until(() => tasks.length === 1);
    expect(tasks).toMatchObject([{ claimed, work: { rev: 4 }, seat: { nickname: 'Ada' } }]);
    await expect
      .poll(() => server.store.results(opened.id))
      .toMatchObject([{ seat: 1, attempt: 1, refused: ['outcome differs'] }]);
  });

  it('before it was told is not taken', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened));
    await learner.ask('work', workDelta({ rev: 1 }));
    const early = { attempt: 1, rev: 2, claimed: null };
    expect(await learner.ask('hand in', early)).toMatchObject({ ok: false });
    expect((await server.store.seat(opened.id, 1))?.handedInMs).toBeNull();
  });

  it('or never handed in: at the close all of it is judged once', async () => {
    const judged: number[] = [];
    const judge = {
      judge: async ({ seat }: { readonly seat: { readonly seat: number } }) => {
        judged.push(seat.seat);
        return { result: {}, refused: null };
      },
      close: async () => {},
    };
    const server = await serve({ judge });
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    for (const name of ['Ada', 'Bo']) {
      const learner = await sit(server, await join(server, opened, name));
      await learner.ask('work', workDelta({ rev: 1 }));
      if (name === 'Ada') await learner.ask('hand in', { attempt: 1, rev: 1, claimed: null });
    }
    await expect.poll(() => judged).toEqual([1]);
    await instructor.ask('say', { key: newKey(), entry: { type: 'close' } });
    await expect.poll(() => server.store.results(opened.id), { timeout: 15_000 }).toHaveLength(2);
    expect(judged).toEqual([1, 2]);
  });
});
