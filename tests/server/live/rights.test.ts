import { describe, expect, it } from 'vitest';
import { TO_SERVER, type ToServer } from '../../../src/classroom/index.ts';
import {
  type Client,
  connect,
  join,
  lead,
  newKey,
  openClass,
  project,
  serve,
  sit,
  workDelta,
} from './clients.ts';

const MESSAGES: ToServer = {
  join: { code: 'AAAAAA', nickname: 'Ada' },
  'take seat': { code: 'AAAAAA', seat: 1, pin: '0000' },
  say: { key: newKey(), entry: { type: 'hint', to: 'all', text: 'Look at the flame.' } },
  since: { n: 0 },
  work: workDelta({}),
  state: {
    phase: 'working',
    step: 'purge',
    stepS: 1,
    runS: 2,
    running: true,
    lockout: null,
    last: null,
    suspects: [],
    flags: 0,
    readings: 0,
    resets: 0,
    lockouts: 0,
    progress: 0,
    answered: 0,
    right: 0,
    asksHelp: false,
    applied: 1,
  },
  'poll answer': { poll: 'first', option: 0 },
  'hand in': { attempt: 1, rev: 1, claimed: null },
  head: { attempt: 1, rev: 1, acts: 0, headS: 1, hash: null, mode: 'paused', speed: 1 },
  watch: { seat: null },
};

/** d door, s seat, i instructor, p projector: who may say it. */
const TABLE: { readonly [K in keyof ToServer]: string } = {
  join: 'd',
  'take seat': 'd',
  say: 'i',
  since: 's i p',
  // In a class at own copies no instructor has work to tell.
  work: 's',
  state: 's',
  'poll answer': 's',
  'hand in': 's',
  head: 'i',
  watch: 'i p',
};

async function one(role: string): Promise<Client> {
  const server = await serve();
  const opened = await openClass(server);
  switch (role) {
    case 'd':
      return connect(server, { role: 'door' });
    case 's':
      return sit(server, await join(server, opened));
    case 'i':
      return lead(server, opened);
    default:
      return project(server, opened);
  }
}

describe.each(['d', 's', 'i', 'p'])('as %s', (role) => {
  it('one may say what the table says and nothing else', async () => {
    const client = await one(role);
    const allowed: string[] = [];
    for (const name of Object.keys(TO_SERVER) as (keyof ToServer)[]) {
      const answer = await client.askAny(name, MESSAGES[name]);
      // What has no answer is not refused: it comes back empty.
      if (answer?.error !== 'not for this role') allowed.push(name);
      expect(answer?.error, name).not.toBe('message not understood');
    }
    const expected = Object.entries(TABLE).filter(([, roles]) => roles.split(' ').includes(role));
    expect(allowed).toEqual(expected.map(([name]) => name));
  });
});

describe('what is not as it must be', () => {
  it.each([
    ['nothing', undefined, ''],
    ['a text', 'begin', ''],
    ['a field too many', { ...MESSAGES.say, admin: true }, ''],
    ['an entry that is not there', { key: newKey(), entry: { type: 'explode' } }, 'entry'],
    [
      'a hint that is too long',
      { key: newKey(), entry: { type: 'hint', to: 'all', text: 'x'.repeat(3000) } },
      'entry.text',
    ],
    ['an opening', { key: newKey(), entry: { type: 'open', way: 'together' } }, 'entry'],
  ])('is answered with its place: %s', async (_title, message, place) => {
    const answer = await (await one('i')).askAny('say', message);
    expect(answer).toMatchObject({ ok: false, error: 'message not understood' });
    expect(answer.detail).toContain(place);
  });

  it('is answered also when there is no such message', async () => {
    const answer = await (await one('s')).askAny('shutdown', {});
    expect(answer).toMatchObject({ ok: false, error: 'message not understood' });
  });

  it('changes nothing and leaves the connection as it was', async () => {
    const client = await one('s');
    for (const message of [null, [], 7, { __proto__: null }, { headS: Number.NaN }]) {
      expect(await client.askAny('work', message)).toMatchObject({ ok: false });
    }
    expect(await client.ask('work', workDelta({}))).toMatchObject({ ok: true });
  });

  it('is cut when it never ends', async () => {
    const client = await one('s');
    for (let count = 0; count < 2000; count++) client.socket.emit('state', { junk: count });
    await client.until(() => client.socket.disconnected);
  });
});
