import { connect, createServer, type Socket } from 'node:net';

export interface Balancer {
  readonly url: string;
  close(): Promise<void>;
}

/** Gives connections to servers in turn, and passes over one that does not take them. */
export async function startBalancer(ports: readonly number[]): Promise<Balancer> {
  let turn = 0;
  const open = new Set<Socket>();

  function join(client: Socket, tries: number): void {
    const port = ports[turn++ % ports.length];
    if (port === undefined || tries === 0) {
      client.destroy();
      return;
    }
    const server = connect({ port, host: '127.0.0.1', noDelay: true });
    server.once('error', () => {
      if (server.connecting || server.bytesRead > 0) client.destroy();
    });
    server.once('connect', () => {
      client.pipe(server).pipe(client);
      for (const [one, other] of [
        [client, server],
        [server, client],
      ] as const) {
        open.add(one);
        one.once('close', () => {
          open.delete(one);
          other.destroy();
        });
        one.on('error', () => other.destroy());
      }
    });
    server.once('close', (failed) => {
      if (failed && server.bytesWritten === 0 && !client.destroyed) join(client, tries - 1);
    });
  }

  const balancer = createServer({ noDelay: true, pauseOnConnect: true }, (client) => {
    client.on('error', () => undefined);
    join(client, ports.length);
  });
  await new Promise<void>((resolve) => balancer.listen({ port: 0, host: '127.0.0.1' }, resolve));
  const address = balancer.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    url: `http://127.0.0.1:${port}`,
    async close() {
      for (const socket of open) socket.destroy();
      await new Promise((resolve) => balancer.close(resolve));
    },
  };
}
