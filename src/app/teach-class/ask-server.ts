/** What is asked of the server over plain HTTP on the way into a class. */
import {
  type About,
  aboutSchema,
  httpErrorSchema,
  httpErrorText,
  type OpenClass,
  type OpenedClass,
  openedClassSchema,
} from '../../classroom/protocol/index.ts';
import { withInstructorKey } from './instructor-key.ts';

export type Asked<T> =
  | { readonly ok: true; readonly value: T }
  /** `no server`: whoever served the page keeps no classes, or does not answer at all. */
  | { readonly ok: false; readonly error: 'no server' | 'wrong key' | 'refused'; detail: string };

export async function askAbout(): Promise<Asked<About>> {
  return ask('api/about', { headers: withInstructorKey() }, aboutSchema);
}

export async function askToOpen(wish: OpenClass): Promise<Asked<OpenedClass>> {
  const headers = { ...withInstructorKey(), 'content-type': 'application/json' };
  const body = JSON.stringify(wish);
  return ask('api/classes', { method: 'POST', headers, body }, openedClassSchema);
}

const REFUSED_KEY = [401, 403];

interface SchemaOf<T> {
  safeParse(value: unknown): { success: true; data: T } | { success: false };
}

async function ask<T>(path: string, init: RequestInit, schema: SchemaOf<T>): Promise<Asked<T>> {
  try {
    const answer = await fetch(path, { ...init, cache: 'no-store' });
    const said: unknown = await answer.json();
    const read = schema.safeParse(said);
    if (answer.ok && read.success) return { ok: true, value: read.data };
    if (REFUSED_KEY.includes(answer.status)) return { ok: false, error: 'wrong key', detail: '' };
    const failed = httpErrorSchema.safeParse(said);
    const detail = failed.success ? httpErrorText(failed.data) : '';
    // Another server's own page says "not found" too, only not in these words.
    const ours = failed.success && answer.status !== 404;
    return { ok: false, error: ours ? 'refused' : 'no server', detail };
  } catch {
    // Not reached, or an answer that is a page: both mean there is no server of classes here.
    return { ok: false, error: 'no server', detail: '' };
  }
}
