import type { Socket } from 'socket.io';
import type { Live } from './live.ts';

/** Packets that may wait for a page; beyond it the page is behind. */
const LAGGING_PACKETS = 8;
const MOST_PACKETS = 512;
/** One welcome of a long class is far below this. */
const MOST_BYTES = 16_000_000;

/** The part of a connection that tells what waits to be read at the other end. */
interface Wire {
  readonly transport: {
    readonly socket?: { readonly bufferedAmount?: number; terminate?(): void };
  };
  readonly writeBuffer: readonly { readonly data?: unknown }[];
}

/** Whether a page does not read as fast as it is told. */
export function isLagging(socket: Socket): boolean {
  return wireOf(socket).writeBuffer.length > LAGGING_PACKETS;
}

/**
 * Cuts connections whose page has stopped reading, before what waits for them fills the memory.
 * The page comes back with the number of its last entry and is told the rest.
 */
export function cutSlowConnections(live: Live): void {
  for (const socket of live.io.of('/').sockets.values()) {
    const { writeBuffer, transport } = wireOf(socket);
    const packets = writeBuffer.length;
    if (packets <= LAGGING_PACKETS && (transport.socket?.bufferedAmount ?? 0) < MOST_BYTES)
      continue;
    if (packets <= MOST_PACKETS && bytesWaiting(wireOf(socket)) < MOST_BYTES) continue;
    live.metrics.count('slow connections cut');
    live.log.info({ packets }, 'connection cut: it does not read');
    // Not closed in good form: the other end would have to read that too.
    transport.socket?.terminate?.();
  }
}

function bytesWaiting({ writeBuffer, transport }: Wire): number {
  let bytes = transport.socket?.bufferedAmount ?? 0;
  for (const { data } of writeBuffer) bytes += typeof data === 'string' ? data.length : 0;
  return bytes;
}

function wireOf(socket: Socket): Wire {
  return socket.conn as unknown as Wire;
}
