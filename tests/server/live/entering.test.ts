import { describe, expect, it } from 'vitest';
import { CLASS_PROTOCOL, type Seated } from '../../../src/classroom/index.ts';
import { connect, join, lead, newKey, openClass, serve, sit } from './clients.ts';

const failed = (answer: Seated): string => (answer.ok ? 'taken' : answer.error);

describe('coming in', () => {
  it('gives each the next seat, whatever case the code is typed in, and keeps no secret itself', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const first = await join(server, opened, 'Ada');
    const second = await join(server, { ...opened, code: opened.code.toLowerCase() }, 'Ada');
    expect([first.seat, second.seat]).toEqual([1, 2]);
    expect(first.token).not.toBe(second.token);
    const kept = JSON.stringify([
      await server.store.seats(opened.id),
      await server.store.classById(opened.id),
    ]);
    for (const secret of [first.token, opened.secret, opened.projectorKey]) {
      expect(kept).not.toContain(secret);
    }
    expect(kept).not.toMatch(new RegExp(`"pinHash":"${first.pin}"`));
  });

  it('tidies a nickname of what is not seen, and takes none that is empty then', async () => {
    const server = await serve();
    const opened = await openClass(server);
    expect((await join(server, opened, ' A\u202eda \u0007  L. ')).nickname).toBe('Ada L.');
    const door = await connect(server, { role: 'door' });
    const { code } = opened;
    expect(failed(await door.ask('join', { code, nickname: '\u200b\u200b' }))).toBe(
      'nickname empty',
    );
  });

  it('is not to a class that is closed, and not to one that is not there', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    await instructor.ask('say', { key: newKey(), entry: { type: 'close' } });
    const door = await connect(server, { role: 'door' });
    for (const code of [opened.code, 'AAAAAA']) {
      expect(failed(await door.ask('join', { code, nickname: 'Ada' }))).toBe('no such class');
    }
  });

  it('is made slow for whoever guesses codes, right ones too', async () => {
    const server = await serve({ limits: { wrongCodes: { burst: 2, perS: 0 } } });
    const opened = await openClass(server);
    const door = await connect(server, { role: 'door' });
    const answers = [];
    for (const code of ['AAAAAA', 'CCCCCC', opened.code]) {
      answers.push(failed(await door.ask('join', { code, nickname: 'Ada' })));
    }
    expect(answers).toEqual(['no such class', 'no such class', 'too many attempts']);
  });

  it('by one connection at most so often', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const door = await connect(server, { role: 'door' });
    const answers = await Promise.all(
      Array.from({ length: 8 }, () => door.ask('join', { code: opened.code, nickname: 'Ada' })),
    );
    expect(answers.map(failed).filter((error) => error === 'too fast').length).toBeGreaterThan(1);
  });
});

describe('taking a seat on another device', () => {
  it('needs the PIN, ends the old device and lets only the new one back', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const seated = await join(server, opened, 'Ada');
    const old = await sit(server, seated);
    const door = await connect(server, { role: 'door' });
    const { code } = opened;
    const pin = seated.pin === '0000' ? '0001' : '0000';
    expect(failed(await door.ask('take seat', { code, seat: 1, pin }))).toBe('wrong pin');
    const taken = await door.ask('take seat', { code, seat: 1, pin: seated.pin });
    expect(taken).toMatchObject({ ok: true, seat: 1, nickname: 'Ada' });
    await old.until(() => old.socket.disconnected);
    expect(old.got.gone).toEqual([{ why: 'seat taken elsewhere' }]);
    await expect(sit(server, seated)).rejects.toThrow('wrong secret');
    if (taken.ok) expect((await sit(server, taken)).welcomes[0]?.seat).toBe(1);
  });

  it('is not open to guessing the PIN, not even with the right one in the end', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const seated = await join(server, opened);
    const { code } = opened;
    const wrong = ['1111', '2222', '3333', '4444', '5555', '6666'].filter(
      (pin) => pin !== seated.pin,
    );
    const answers = [];
    for (const pin of [...wrong.slice(0, 5), seated.pin]) {
      const door = await connect(server, { role: 'door' });
      answers.push(failed(await door.ask('take seat', { code, seat: 1, pin })));
    }
    expect(answers).toEqual([...Array(5).fill('wrong pin'), 'too many attempts']);
  });
});

describe('a connection', () => {
  it('of one seat is one: the newest', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const seated = await join(server, opened);
    const first = await sit(server, seated);
    const second = await sit(server, seated);
    await first.until(() => first.socket.disconnected);
    expect(first.got.gone).toEqual([{ why: 'seat taken elsewhere' }]);
    expect(second.socket.connected).toBe(true);
  });

  it.each([
    ['without a word of who comes', {}, 'message not understood'],
    ['of an older page', { role: 'door', v: CLASS_PROTOCOL - 1 }, 'other version'],
    ['of a newer page', { role: 'door', v: CLASS_PROTOCOL + 1 }, 'other version'],
    [
      'to a class that is not there',
      { role: 'instructor', class: 'not-there', secret: 'x'.repeat(32), since: 0 },
      'no such class',
    ],
  ])('%s is refused by a code', async (_title, hello, code) => {
    const server = await serve();
    await expect(connect(server, hello)).rejects.toThrow(code);
  });

  it('with a wrong secret is refused whatever the role, and a right one is let in after any guesses', async () => {
    const server = await serve({ limits: { wrongSecrets: { burst: 3, perS: 0 } } });
    const opened = await openClass(server);
    const seated = await join(server, opened);
    const wrong = 'x'.repeat(32);
    const { id } = opened;
    await expect(lead(server, { ...opened, secret: wrong })).rejects.toThrow('wrong secret');
    await expect(sit(server, { ...seated, token: wrong })).rejects.toThrow('wrong secret');
    const hello = { role: 'projector', class: id, key: opened.secret, since: 0 };
    await expect(connect(server, hello)).rejects.toThrow('wrong secret');
    await expect(lead(server, { ...opened, secret: wrong })).rejects.toThrow('too many attempts');
    expect((await lead(server, opened)).socket.connected).toBe(true);
  });

  it('is not let in while the database is away, and says that it is that', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const seated = await join(server, opened);
    server.store.fail('database not reached');
    await expect(sit(server, seated)).rejects.toThrow('cannot be saved now');
  });
});
