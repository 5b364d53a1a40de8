import type { FastifyInstance } from 'fastify';
import type { Live } from '../live/index.ts';

/** What the machinery around a server asks: whether it is well, and how it fares. */
export function registerWatch(server: FastifyInstance, live: Live): void {
  server.get('/healthz', async (_request, reply) => {
    // A class goes on while its database is away: that is told, and is no reason to turn people away.
    const { database, redis } = live.health();
    return reply.header('cache-control', 'no-store').send({
      status: 'ok',
      ...(database === 'not opened' ? {} : { database }),
      ...(redis === 'none' ? {} : { redis }),
    });
  });
  server.get('/metrics', async (_request, reply) => {
    const { sockets } = live.io.of('/');
    const byRole = (role: string) => () => {
      let count = 0;
      for (const { data } of sockets.values()) if (data.who?.role === role) count += 1;
      return count;
    };
    const text = live.metrics.text([
      ['connections', 'Connections of any role.', () => sockets.size],
      ['seats', 'Connections of seats.', byRole('seat')],
      ['instructors', 'Connections of instructors.', byRole('instructor')],
      ['classes', 'Classes in memory.', () => live.classes.size],
      ['works_pending', 'Works that wait to be saved.', () => live.works.pending()],
      [
        'redis_ready',
        'Whether the other processes are reached.',
        () => Number(live.bus.state() === 'ready'),
      ],
    ]);
    return reply
      .header('cache-control', 'no-store')
      .type('application/openmetrics-text; version=1.0.0; charset=utf-8')
      .send(text);
  });
}
