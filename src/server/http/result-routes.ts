import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { changeClassSchema } from '../../classroom/index.ts';
import type { ClassResult } from '../../records/class/index.ts';
import { dismissClass, findClass, isSecretOf, judgeAll, unjudged } from '../live/index.ts';
import type { LiveClass } from '../live/live-class.ts';
import type { KeptClass } from '../store/types.ts';
import { lineOfClass } from './class-line.ts';
import type { Answer, HttpDeps } from './http-types.ts';
import { placeInBody } from './place-in-body.ts';
import { answering, refuse } from './refuse.ts';
import { sendCsv, sendXapi } from './result-files.ts';

type OfClass = (
  kept: KeptClass,
  one: LiveClass,
  request: FastifyRequest,
  reply: FastifyReply,
) => Promise<unknown>;

/** Results of a class, and what is kept of it for how long: for its instructor, and for who may open classes. */
export function registerResults(server: FastifyInstance, { live, key }: HttpDeps): void {
  const ofClass = (answer: OfClass): Answer =>
    answering(async (request, reply) => {
      const { id } = request.params as { id: string };
      const kept = await live.store.classById(id);
      // Whoever may not see it is not told whether there is one.
      if (!(isBearer(request, kept) || key.allows(request))) {
        return refuse(reply, 401, 'key needed');
      }
      const one = kept === null ? null : await findClass(live, id);
      if (kept === null || one === null) return refuse(reply, 404, 'no such class');
      return answer(kept, one, request, reply);
    });

  server.get(
    '/api/classes/:id/results',
    ofClass(async (kept, one) => {
      const results = await resultsOf(kept.id);
      const line = await lineOfClass(live, kept, one.seats.size);
      return { line, results, waiting: (await unjudged(live, one)).length };
    }),
  );
  server.get(
    '/api/classes/:id/results.csv',
    ofClass(async (kept, _one, _request, reply) => sendCsv(reply, await resultsOf(kept.id))),
  );
  server.get(
    '/api/classes/:id/results.xapi.json',
    ofClass(async (kept, _one, request, reply) =>
      sendXapi(request, reply, kept, await resultsOf(kept.id)),
    ),
  );
  server.post(
    '/api/classes/:id/judge',
    ofClass(async (_kept, one) => {
      const waiting = (await unjudged(live, one)).length;
      void judgeAll(live, one);
      return { waiting };
    }),
  );
  server.patch(
    '/api/classes/:id',
    ofClass(async (kept, one, request, reply) => {
      const change = changeClassSchema.safeParse(request.body);
      if (!change.success) {
        return refuse(reply, 400, 'request not understood', placeInBody(change.error));
      }
      const { retentionDays } = change.data;
      await live.store.setRetention(kept.id, retentionDays);
      return lineOfClass(live, { ...kept, retentionDays }, one.seats.size);
    }),
  );
  server.delete(
    '/api/classes/:id',
    ofClass(async (kept, _one, request, reply) => {
      await live.store.deleteClass(kept.id);
      dismissClass(live, kept.id);
      live.bus.tell({ type: 'deleted', class: kept.id });
      request.log.info({ class: kept.id }, 'class deleted');
      return reply.code(204).send();
    }),
  );

  async function resultsOf(id: string): Promise<ClassResult[]> {
    const kept = await live.store.results(id);
    return kept.map(({ result }) => result as ClassResult);
  }
}

function isBearer(request: FastifyRequest, kept: KeptClass | null): boolean {
  const [, secret] = /^Bearer (\S{16,128})$/.exec(request.headers.authorization ?? '') ?? [];
  return kept !== null && secret !== undefined && isSecretOf(kept.secretHash, secret);
}
