import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';

const CODES: Readonly<Record<number, string>> = {
  413: 'too large',
  415: 'request not understood',
  400: 'request not understood',
};

/** What no route answered by itself: a body that cannot be read, or a mistake of ours. */
export function answerFailure(
  error: FastifyError,
  request: FastifyRequest,
  reply: FastifyReply,
): FastifyReply {
  const status = error.statusCode ?? 500;
  const code = CODES[status];
  if (code !== undefined) return reply.code(status).send({ error: code, params: {} });
  request.log.error({ err: error }, 'request failed');
  return reply.code(500).send({ error: 'failed', params: {} });
}
