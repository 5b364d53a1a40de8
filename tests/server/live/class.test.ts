import { describe, expect, it } from 'vitest';
import type { ClassEntry } from '../../../machines/class/index.ts';
import type { Spoken } from '../../../src/classroom/index.ts';
import {
  type Client,
  join,
  lead,
  newKey,
  openClass,
  serve,
  sit,
  TOGETHER,
  workDelta,
} from './clients.ts';

const numbered = (entries: readonly ClassEntry[]) => entries.map(({ n, type }) => [n, type]);

async function saying(instructor: Client, ...entries: Spoken[]): Promise<void> {
  for (const entry of entries) {
    expect(await instructor.ask('say', { key: newKey(), entry })).toMatchObject({ ok: true });
  }
}

describe('what an instructor says', () => {
  it('comes to everyone in the order of its number', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const learner = await sit(server, await join(server, opened));
    expect(numbered(learner.welcomes[0]?.entries ?? [])).toEqual([[1, 'open']]);
    await saying(instructor, { type: 'begin' }, { type: 'freeze', to: 'all' });
    await learner.until(() => learner.got.entry.length === 2);
    expect(numbered(learner.got.entry)).toEqual([
      [2, 'begin'],
      [3, 'freeze'],
    ]);
    expect(instructor.got.entry).toEqual(learner.got.entry);
  });

  it('is one entry however often it is told with one key', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const begin = { key: newKey(), entry: { type: 'begin' } } as const;
    const answers = await Promise.all([1, 2, 3].map(() => instructor.ask('say', begin)));
    expect(answers).toEqual([1, 2, 3].map(() => ({ ok: true, n: 2 })));
    expect(await server.store.entriesSince(opened.id, 0)).toHaveLength(2);
  });

  it('is one entry also when its first answer was lost with the server', async () => {
    const before = await serve();
    const opened = await openClass(before);
    const begin = { key: newKey(), entry: { type: 'begin' } } as const;
    const first = await (await lead(before, opened)).ask('say', begin);
    await before.stop();
    const after = await serve({ store: before.store });
    expect(await (await lead(after, opened)).ask('say', begin)).toEqual(first);
  });

  it('has no gaps and nothing twice when two instructors speak at once', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructors = [await lead(server, opened), await lead(server, opened)];
    await instructors[0]?.ask('say', { key: newKey(), entry: { type: 'begin' } });
    await Promise.all(
      Array.from({ length: 20 }, (_, index) =>
        instructors[index % 2]?.ask('say', {
          key: newKey(),
          entry: { type: 'hint', to: 'all', text: `hint ${index}` },
        }),
      ),
    );
    const numbers = (await server.store.entriesSince(opened.id, 0)).map(({ n }) => n);
    expect(numbers).toEqual(Array.from({ length: 22 }, (_, index) => index + 1));
    for (const { got, until } of instructors) {
      await until(() => got.entry.length === 21);
      expect(got.entry.map(({ n }) => n)).toEqual(numbers.slice(1));
    }
  });

  it('is refused as the chart refuses it, and leaves no entry', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const freeze = { key: newKey(), entry: { type: 'freeze', to: 'all' } } as const;
    expect(await instructor.ask('say', freeze)).toEqual({ ok: false, error: 'not begun' });
    await saying(instructor, { type: 'begin' });
    expect(await instructor.ask('say', freeze)).toEqual({ ok: true, n: 3 });
  });

  it('may only hold acts that the engine knows, and the answer names the first that is not', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    await saying(instructor, { type: 'begin' });
    const act = { type: 'insert-fault', fault: 'inlet screen fouled', severity: 0.5 };
    const wrong = await instructor.ask('say', {
      key: newKey(),
      entry: { type: 'do', to: 'all', acts: [act, { type: 'fly' }] },
    });
    expect(wrong).toMatchObject({ ok: false, error: 'acts not understood' });
    expect(wrong).toMatchObject({ detail: expect.stringContaining('acts.1') });
    await saying(instructor, { type: 'do', to: 'all', acts: [act] });
  });

  it('is not given out when it cannot be kept, and is taken when it is told again', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const learner = await sit(server, await join(server, opened));
    const begin = { key: newKey(), entry: { type: 'begin' } } as const;
    server.store.fail('no room on the disk');
    expect(await instructor.ask('say', begin)).toEqual({
      ok: false,
      error: 'cannot be saved now',
    });
    expect(learner.got.entry).toEqual([]);
    server.store.fail(null);
    expect(await instructor.ask('say', begin)).toEqual({ ok: true, n: 2 });
    await learner.until(() => learner.got.entry.length === 1);
  });
});

describe('whoever comes late or back', () => {
  it('is welcomed with what was said since, and only that', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const seated = await join(server, opened);
    await saying(instructor, { type: 'begin' }, { type: 'freeze', to: 'all' });
    const late = await sit(server, seated);
    expect(numbered(late.welcomes[0]?.entries ?? [])).toEqual([
      [1, 'open'],
      [2, 'begin'],
      [3, 'freeze'],
    ]);
    const back = await sit(server, seated, 2);
    expect(numbered(back.welcomes[0]?.entries ?? [])).toEqual([[3, 'freeze']]);
    const missing = await back.ask('since', { n: 1 });
    expect(missing.ok && numbered(missing.entries)).toEqual([
      [2, 'begin'],
      [3, 'freeze'],
    ]);
  });

  it('finds the class again after a restart, with entries, names and answers', async () => {
    const before = await serve();
    const opened = await openClass(before);
    const instructor = await lead(before, opened);
    const seated = await join(before, opened, 'Ada');
    const learner = await sit(before, seated);
    const question = { text: 'Which?', stem: [], options: ['this', 'that'], item: null };
    await saying(instructor, { type: 'begin' }, { type: 'poll', id: 'first', question });
    expect(await learner.ask('poll answer', { poll: 'first', option: 1 })).toEqual({ ok: true });
    await before.stop();
    const after = await serve({ store: before.store });
    const back = await sit(after, seated);
    expect(back.welcomes[0]).toMatchObject({ n: 3, nickname: 'Ada', polled: 1 });
    expect((await lead(after, opened)).welcomes[0]?.n).toBe(3);
  });
});

describe('one plant together', () => {
  it('is told on to everyone as its instructor tells it, and to late ones as it stands', async () => {
    const server = await serve();
    const opened = await openClass(server, TOGETHER);
    const instructor = await lead(server, opened);
    const learner = await sit(server, await join(server, opened));
    expect(learner.welcomes[0]).toMatchObject({ work: null, head: null });
    const first = workDelta({ rev: 1, acts: [{ t: 1, type: 'switch-demand', on: true }] });
    const second = workDelta({ rev: 2, keepActs: 1, headS: 20 });
    for (const delta of [first, second]) {
      expect(await instructor.ask('work', delta)).toMatchObject({ ok: true, rev: delta.rev });
    }
    const head = {
      attempt: 1,
      rev: 2,
      acts: 1,
      headS: 21,
      hash: null,
      mode: 'playing',
      speed: 2,
    } as const;
    instructor.tell('head', head);
    await learner.until(() => learner.got.head.length > 0);
    expect(learner.got.head[0]).toEqual(head);
    expect(learner.got.worked).toEqual([
      { seat: null, delta: first },
      { seat: null, delta: second },
    ]);
    expect(instructor.got.worked).toEqual([]);
    const late = await sit(server, await join(server, opened, 'Late'));
    expect(late.welcomes[0]).toMatchObject({ head, work: { rev: 2, headS: 20, acts: first.acts } });
  });

  it('is not driven by an instructor where everyone has a copy', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    expect(await instructor.ask('work', workDelta({ rev: 1 }))).toEqual({
      ok: false,
      error: 'not for this role',
    });
  });
});
