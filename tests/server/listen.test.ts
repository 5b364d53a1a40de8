import { createServer, type Server } from 'node:net';
import fastify, { type FastifyInstance } from 'fastify';
import { afterEach, describe, expect, it } from 'vitest';
import { lanAddresses, listenOnFreePort, parsePort } from '../../src/server/index.ts';

const opened: (FastifyInstance | Server)[] = [];
afterEach(async () => {
  for (const one of opened.splice(0)) {
    if ('inject' in one) await one.close();
    else await new Promise((resolve) => one.close(resolve));
  }
});

function newServer(): FastifyInstance {
  const server = fastify();
  server.get('/', async () => 'here');
  opened.push(server);
  return server;
}

async function occupy(host: string): Promise<number> {
  const server = createServer();
  opened.push(server);
  await new Promise<void>((resolve) => server.listen({ port: 0, host }, resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
}

describe('listening', () => {
  it('takes the next free port when the one asked for is taken, and answers there', async () => {
    const taken = await occupy('127.0.0.1');
    const port = await listenOnFreePort(newServer(), { port: taken, host: '127.0.0.1' });
    expect(port).toBeGreaterThan(taken);
    expect(await (await fetch(`http://127.0.0.1:${port}/`)).text()).toBe('here');
  });

  it('answers over IPv4 when no address is asked for', async () => {
    const port = await listenOnFreePort(newServer(), { port: 0 });
    expect(await (await fetch(`http://127.0.0.1:${port}/`)).text()).toBe('here');
  });

  it.each<[string | undefined, number | undefined]>([
    [undefined, 4173],
    ['', 4173],
    ['8080', 8080],
    ['0', 0],
    ['65535', 65_535],
    ['65536', undefined],
    ['-1', undefined],
    ['80a', undefined],
    ['8.5', undefined],
  ])('reads the port setting %j as %j', (text, expected) => {
    expect(parsePort(text, 4173)).toBe(expected);
  });

  it('tells others the addresses of this machine but not its inward one', () => {
    const address = { netmask: '', mac: '', cidr: null };
    const found = lanAddresses({
      lo: [{ ...address, address: '127.0.0.1', family: 'IPv4', internal: true }],
      wired: [
        { ...address, address: '192.0.2.7', family: 'IPv4', internal: false },
        { ...address, address: '2001:db8::7', family: 'IPv6', internal: false, scopeid: 0 },
      ],
    });
    expect(found).toEqual(['192.0.2.7']);
  });
});
