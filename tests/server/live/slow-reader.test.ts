import type { Socket as TcpSocket } from 'node:net';
import { expect, it } from 'vitest';
import { type Client, join, lead, openClass, serve, sit, TOGETHER, workDelta } from './clients.ts';

/** The wire below a client's connection. */
function wireOf({ socket }: Client): TcpSocket {
  const { transport } = socket.io.engine as unknown as {
    readonly transport: { readonly ws: { readonly _socket: TcpSocket } };
  };
  return transport.ws._socket;
}

it('a page that stops reading is cut before it fills the memory, and nobody else waits for it', async () => {
  const server = await serve();
  const opened = await openClass(server, TOGETHER);
  const instructor = await lead(server, opened);
  const seated = await join(server, opened, 'Stuck');
  const stuck = await sit(server, seated);
  const other = await sit(server, await join(server, opened, 'Reads'));
  wireOf(stuck).pause();
  const isIn = () => server.live.io.of('/').sockets.has(stuck.socket.id ?? '');
  const id = stuck.socket.id ?? '';
  let rev = 0;
  while (server.live.io.of('/').sockets.has(id)) {
    expect(rev, 'told without being cut').toBeLessThan(400);
    rev += 1;
    const acts = [{ t: rev, type: 'note', text: 'x'.repeat(800_000) }];
    const answer = await instructor.ask('work', workDelta({ rev, acts }));
    if (!answer.ok) {
      expect(answer.error).toBe('too fast');
      rev -= 1;
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
  }
  expect(isIn()).toBe(false);
  await other.until(() => other.got.worked.length === rev);
  expect(other.got.worked.map(({ delta }) => delta.rev)).toEqual(
    Array.from({ length: rev }, (_, index) => index + 1),
  );
  const back = await sit(server, seated);
  expect(back.welcomes[0]?.work?.rev).toBe(rev);
});
