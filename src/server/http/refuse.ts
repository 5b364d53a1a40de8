import type { FastifyReply } from 'fastify';
import { isStoreFailure } from '../store/index.ts';
import type { Answer } from './http-types.ts';

/** An error as every route tells it. */
export function refuse(
  reply: FastifyReply,
  status: number,
  error: string,
  params: Readonly<Record<string, string | number>> = {},
): FastifyReply {
  return reply.code(status).send({ error, params });
}

/** Nothing of classes is kept by a browser, and what the store cannot do is said. */
export function answering(answer: Answer): Answer {
  return async (request, reply) => {
    reply.header('cache-control', 'no-store');
    try {
      return await answer(request, reply);
    } catch (error) {
      if (!isStoreFailure(error)) throw error;
      request.log.error({ trouble: error.trouble }, 'store');
      return refuse(reply, 503, 'store', { trouble: error.trouble });
    }
  };
}
