import { createServer } from 'node:net';
import type { FastifyInstance } from 'fastify';

/** Listening on this takes calls over IPv4 as well, on machines that have both. */
const EVERY_ADDRESS = '::';
const EVERY_IPV4_ADDRESS = '0.0.0.0';
const HIGHEST_PORT = 65_535;
const PORTS_TRIED = 50;

export interface ListenOptions {
  /** The first port to try; 0 takes any free one. */
  readonly port: number;
  /** One address to listen on, in place of all. */
  readonly host?: string | undefined;
}

/** Listens on the port asked for or the next free one, and says which. */
export async function listenOnFreePort(
  server: FastifyInstance,
  options: ListenOptions,
): Promise<number> {
  const host = options.host ?? (await everyAddress());
  const port = options.port === 0 ? 0 : await freePortFrom(options.port, host);
  await server.listen({ port, host });
  const address = server.server.address();
  return typeof address === 'object' && address !== null ? address.port : port;
}

/** Reads a PORT setting; anything but a whole number from 0 to 65535 is a mistake of the user. */
export function parsePort(text: string | undefined, fallback: number): number | undefined {
  if (text === undefined || text.trim() === '') return fallback;
  if (!/^\d{1,5}$/.test(text.trim())) return undefined;
  const port = Number(text);
  return port <= HIGHEST_PORT ? port : undefined;
}

async function everyAddress(): Promise<string> {
  const refusal = await tryToListen(0, EVERY_ADDRESS);
  return refusal === undefined ? EVERY_ADDRESS : EVERY_IPV4_ADDRESS;
}

async function freePortFrom(first: number, host: string): Promise<number> {
  const last = Math.min(first + PORTS_TRIED - 1, HIGHEST_PORT);
  for (let port = first; port <= last; port++) {
    const refusal = await tryToListen(port, host);
    if (refusal === undefined) return port;
    if (refusal.code !== 'EADDRINUSE') throw refusal;
  }
  throw new Error(`Every port from ${first} to ${last} is taken.`);
}

function tryToListen(port: number, host: string): Promise<NodeJS.ErrnoException | undefined> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', resolve);
    probe.listen({ port, host }, () => probe.close(() => resolve(undefined)));
  });
}
