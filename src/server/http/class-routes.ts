import { randomInt } from 'node:crypto';
import type { FastifyInstance } from 'fastify';
import { createClass, takeClassEntry } from '../../../machines/class/index.ts';
import { type About, MESSAGE_BYTES, openClassSchema } from '../../classroom/index.ts';
import { openClass } from '../live/index.ts';
import { checkWhat } from './check-what.ts';
import { lineOfClass } from './class-line.ts';
import type { HttpDeps } from './http-types.ts';
import { placeInBody } from './place-in-body.ts';
import { answering, refuse } from './refuse.ts';

const MAX_SEED = 2 ** 31 - 1;

/** Opening classes, and the list of them. */
export function registerClasses(server: FastifyInstance, deps: HttpDeps): void {
  const { live, key, library, quizItems } = deps;

  server.get(
    '/api/about',
    answering(async (request) => {
      const mayOpen = key.allows(request);
      // Whoever is at the door of a class is about to open one.
      if (mayOpen) live.store.database.warm().catch(() => undefined);
      return { classes: true, addresses: [...live.addresses()], mayOpen } satisfies About;
    }),
  );

  server.get(
    '/api/classes',
    answering(async (request, reply) => {
      if (!key.allows(request)) return refuse(reply, 401, 'key needed');
      const kept = await live.store.classes();
      const classes = [];
      for (const one of kept) classes.push(await lineOfClass(live, one, one.seats));
      return { classes };
    }),
  );

  server.post(
    '/api/classes',
    // An exercise of one's own comes along.
    { bodyLimit: MESSAGE_BYTES / 2 },
    answering(async (request, reply) => {
      if (!key.allows(request)) return refuse(reply, 401, 'key needed');
      const asked = openClassSchema.safeParse(request.body);
      if (!asked.success) {
        return refuse(reply, 400, 'request not understood', placeInBody(asked.error));
      }
      const { what, way } = asked.data;
      const checked = checkWhat(what, library(), quizItems);
      if (!checked.ok) return refuse(reply, 422, checked.error, { where: checked.where });
      const atMs = live.nowMs();
      const seed = checked.seed ?? randomInt(MAX_SEED);
      const opening = { type: 'open', what, way, seed: asked.data.seed ?? seed } as const;
      const taken = takeClassEntry(createClass(), { n: 1, atMs, ...opening });
      if (!taken.ok) return refuse(reply, 422, taken.refusal, { where: 'way' });
      const opened = await openClass(live.store, asked.data, atMs, seed);
      request.log.info({ class: opened.id, kind: what.kind, way }, 'class opened');
      return reply.code(201).send(opened);
    }),
  );
}
