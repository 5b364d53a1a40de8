/** The library of the server, where there is one: what is asked of it and what it says. */
import { z } from 'zod';
import { withInstructorKey } from '../teach-class/instructor-key.ts';
import { AUTHOR_KINDS, type AuthorKind } from './author-kinds.ts';

const versionSchema = z.object({
  version: z.number().int(),
  savedMs: z.number(),
  removed: z.boolean(),
});
export type ServerVersion = z.infer<typeof versionSchema>;
const listedSchema = versionSchema.extend({
  kind: z.enum(AUTHOR_KINDS),
  id: z.string(),
  title: z.string(),
  plant: z.string(),
});
export type ServerFile = z.infer<typeof listedSchema>;
const listSchema = z.object({ files: z.array(listedSchema) });
const fileSchema = z.object({
  version: z.number().int(),
  savedMs: z.number(),
  text: z.string(),
  versions: z.array(versionSchema),
});
export type ServerText = z.infer<typeof fileSchema>;
const savedSchema = z.object({ version: z.number().int(), savedMs: z.number() });
const refusedSchema = z.object({
  error: z.string(),
  params: z.record(z.string(), z.union([z.string(), z.number()])).default({}),
});

export type Refusal =
  /** Whoever served the page keeps no library, or does not answer. */
  | { readonly ok: false; readonly error: 'no server' | 'key needed' }
  | { readonly ok: false; readonly error: 'conflict'; readonly version: number }
  | { readonly ok: false; readonly error: 'refused'; readonly why: string };
export type Answered<T> = { readonly ok: true; readonly value: T } | Refusal;

export function listServer(): Promise<Answered<{ readonly files: readonly ServerFile[] }>> {
  return ask('api/library', { method: 'GET' }, listSchema);
}

export function readServer(
  kind: AuthorKind,
  id: string,
  version: number | null,
): Promise<Answered<ServerText>> {
  const query = version === null ? '' : `?version=${version}`;
  return ask(`${placeOf(kind, id)}${query}`, { method: 'GET' }, fileSchema);
}

export function saveServer(
  kind: AuthorKind,
  id: string,
  text: string,
  baseVersion: number,
): Promise<Answered<{ readonly version: number; readonly savedMs: number }>> {
  const body = JSON.stringify({ text, baseVersion });
  const headers = { 'content-type': 'application/json' };
  return ask(placeOf(kind, id), { method: 'PUT', body, headers }, savedSchema);
}

export function removeServer(
  kind: AuthorKind,
  id: string,
  baseVersion: number,
): Promise<Answered<unknown>> {
  return ask(`${placeOf(kind, id)}?baseVersion=${baseVersion}`, { method: 'DELETE' }, z.unknown());
}

function placeOf(kind: AuthorKind, id: string): string {
  return `api/library/${kind}/${encodeURIComponent(id)}`;
}

const CONFLICT = 409;

async function ask<T>(path: string, init: RequestInit, schema: z.ZodType<T>): Promise<Answered<T>> {
  try {
    const headers = { ...init.headers, ...withInstructorKey() };
    const answer = await fetch(new URL(path, document.baseURI), {
      ...init,
      headers,
      cache: 'no-store',
    });
    const said: unknown = await answer.json();
    if (answer.ok) {
      const read = schema.safeParse(said);
      return read.success ? { ok: true, value: read.data } : { ok: false, error: 'no server' };
    }
    const refused = refusedSchema.safeParse(said);
    // Another server's own page says "not found" too, only not in these words.
    if (!refused.success) return { ok: false, error: 'no server' };
    const { error, params } = refused.data;
    if (error === 'key needed') return { ok: false, error };
    if (answer.status === CONFLICT && error === 'conflict') {
      return { ok: false, error, version: Number(params.version ?? 0) };
    }
    return { ok: false, error: 'refused', why: [error, ...Object.values(params)].join(', ') };
  } catch {
    return { ok: false, error: 'no server' };
  }
}
