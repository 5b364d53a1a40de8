import type { FastifyReply, FastifyRequest } from 'fastify';
import type { LearnerLibrary } from '../../scenario/index.ts';
import type { Live } from '../live/index.ts';
import type { InstructorKey } from './instructor-key.ts';

/** What the routes are given. */
export interface HttpDeps {
  readonly live: Live;
  readonly key: InstructorKey;
  /** Shipped scenarios, read when first asked for. */
  readonly library: () => LearnerLibrary;
  /** Ids of the shipped quiz items. */
  readonly quizItems: () => ReadonlySet<string>;
}

export type Answer = (request: FastifyRequest, reply: FastifyReply) => Promise<unknown>;
