import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { MAX_FILE_CHARACTERS } from '../../scenario/index.ts';
import type { Database, StoreFailure } from '../store/types.ts';
import { checkFile, type LibraryBase } from './check-file.ts';
import { LIBRARY_KINDS } from './library-kinds.ts';
import { addVersion, countFiles, listFiles, textOf, versionsOf } from './library-store.ts';

export interface LibraryDeps {
  /** Opened at the first request. */
  database(): Promise<Database>;
  /** Whoever may write may read: what is in a file gives away what is wrong. */
  mayWrite(request: FastifyRequest): boolean | Promise<boolean>;
  /** Shipped plants and profiles. */
  base(): LibraryBase;
  /** Wall clock, ms. */
  nowMs?(): number;
}

const MOST_FILES = 2000;
const MOST_VERSIONS = 1000;
/** Characters may take three bytes each, and as much again as JSON writes them. */
const BODY_BYTES = 6 * MAX_FILE_CHARACTERS;

const fileSchema = z.object({
  kind: z.enum(LIBRARY_KINDS),
  id: z
    .string()
    .max(64)
    .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/),
});
const versionSchema = z.object({ version: z.coerce.number().int().min(1).optional() });
const baseSchema = z.object({ baseVersion: z.coerce.number().int().min(0) });
const putSchema = z.strictObject({
  text: z.string().max(MAX_FILE_CHARACTERS),
  baseVersion: z.number().int().min(0),
});

/** The library of written files: listed, read by version, saved on top of a version, taken out. */
export function registerLibrary(server: FastifyInstance, deps: LibraryDeps): void {
  const { nowMs = Date.now } = deps;
  type Answer = (request: FastifyRequest, reply: FastifyReply) => Promise<unknown>;
  const guarded =
    (answer: Answer): Answer =>
    async (request, reply) => {
      reply.header('cache-control', 'no-store');
      if (!(await deps.mayWrite(request))) return refuse(reply, 401, 'key needed');
      try {
        return await answer(request, reply);
      } catch (error) {
        const { trouble } = error as Partial<StoreFailure>;
        if (trouble === undefined) throw error;
        request.log.error(error);
        return refuse(reply, 503, 'store', { trouble });
      }
    };

  server.get(
    '/api/library',
    guarded(async () => ({ files: await listFiles(await deps.database()) })),
  );

  server.get(
    '/api/library/:kind/:id',
    guarded(async (request, reply) => {
      const file = fileSchema.safeParse(request.params);
      const asked = versionSchema.safeParse(request.query);
      if (!file.success) return refuse(reply, 404, 'no such file');
      if (!asked.success) return refuse(reply, 400, 'request not understood', where(asked.error));
      const database = await deps.database();
      const versions = await versionsOf(database, file.data);
      const version = asked.data.version ?? versions[0]?.version ?? 0;
      const text = await textOf(database, file.data, version);
      const found = versions.find((one) => one.version === version);
      if (text === null || found === undefined) return refuse(reply, 404, 'no such file');
      const { kind, id } = file.data;
      // Taken when it was in order; a later build may see it otherwise.
      const checked = checkFile(kind, id, text, deps.base());
      const data = checked.ok ? checked.data : null;
      return { kind, id, version, savedMs: found.savedMs, text, data, versions };
    }),
  );

  server.put(
    '/api/library/:kind/:id',
    { bodyLimit: BODY_BYTES },
    guarded(async (request, reply) => {
      const file = fileSchema.safeParse(request.params);
      const body = putSchema.safeParse(request.body);
      if (!file.success) return refuse(reply, 404, 'no such file');
      if (!body.success) return refuse(reply, 400, 'request not understood', where(body.error));
      const { kind, id } = file.data;
      const { text, baseVersion } = body.data;
      const checked = checkFile(kind, id, text, deps.base());
      if (!checked.ok) {
        return reply.code(422).send({ error: 'not in order', params: {}, issues: checked.issues });
      }
      if (checked.id !== id) return refuse(reply, 400, 'other name', { id: checked.id });
      const database = await deps.database();
      if (baseVersion >= MOST_VERSIONS) {
        return refuse(reply, 409, 'library full', { most: MOST_VERSIONS });
      }
      if (baseVersion === 0 && (await countFiles(database)) >= MOST_FILES) {
        return refuse(reply, 409, 'library full', { most: MOST_FILES });
      }
      const savedMs = nowMs();
      const { title, plant } = checked;
      const added = { kind, id, baseVersion, savedMs, title, plant, text };
      if (await addVersion(database, added)) return { version: baseVersion + 1, savedMs };
      return conflict(reply, await versionsOf(database, file.data));
    }),
  );

  server.delete(
    '/api/library/:kind/:id',
    guarded(async (request, reply) => {
      const file = fileSchema.safeParse(request.params);
      const base = baseSchema.safeParse(request.query);
      if (!file.success) return refuse(reply, 404, 'no such file');
      if (!base.success) return refuse(reply, 400, 'request not understood', where(base.error));
      const database = await deps.database();
      const { baseVersion } = base.data;
      const [newest] = await versionsOf(database, file.data);
      if (newest === undefined) return refuse(reply, 404, 'no such file');
      // To take out what is out already is no mistake.
      if (newest.removed && newest.version === baseVersion) return newest;
      const listed = (await listFiles(database)).find(
        (one) => one.kind === file.data.kind && one.id === file.data.id,
      );
      const { title = '', plant = '' } = listed ?? {};
      const savedMs = nowMs();
      const added = { ...file.data, baseVersion, savedMs, title, plant, text: null };
      if (await addVersion(database, added)) {
        return { version: baseVersion + 1, savedMs, removed: true };
      }
      return conflict(reply, await versionsOf(database, file.data));
    }),
  );
}

/** Somebody else saved meanwhile: what was sent is not taken, and what is there is told. */
function conflict(reply: FastifyReply, versions: Awaited<ReturnType<typeof versionsOf>>): unknown {
  const version = versions[0]?.version ?? 0;
  return reply.code(409).send({ error: 'conflict', params: { version }, versions });
}

function refuse(
  reply: FastifyReply,
  status: number,
  error: string,
  params: Readonly<Record<string, string | number>> = {},
): unknown {
  return reply.code(status).send({ error, params });
}

function where(error: z.ZodError): { readonly where: string; readonly detail: string } {
  const [first] = error.issues;
  return { where: (first?.path ?? []).join('.'), detail: first?.message ?? '' };
}
