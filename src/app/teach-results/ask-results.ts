/** What is asked of the server about classes that it keeps. */
import { z } from 'zod';
import {
  type ClassLine,
  classLineSchema,
  httpErrorSchema,
  httpErrorText,
} from '../../classroom/protocol/index.ts';
import { classResultSchema } from '../../records/class/index.ts';
import { withInstructorKey } from '../teach-class/instructor-key.ts';
import { ownClass } from '../teach-class/own-classes.ts';

const resultsSchema = z.object({
  line: classLineSchema,
  results: z.array(classResultSchema),
  /** Works that are still to be judged. */
  waiting: z.number().int().min(0),
});
export type ResultsOfClass = z.infer<typeof resultsSchema>;
const keptSchema = z.object({ classes: z.array(classLineSchema) });
const waitingSchema = z.object({ waiting: z.number().int().min(0) });

export type ResultsTrouble = 'no server' | 'not allowed' | 'no such class' | 'refused';
export type AskedResults<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly trouble: ResultsTrouble; readonly detail: string };

export function askResults(id: string): Promise<AskedResults<ResultsOfClass>> {
  return ask(`${placeOf(id)}/results`, id, {}, resultsSchema);
}

/** Has the server judge all that was never handed in. */
export function askToJudge(id: string): Promise<AskedResults<{ readonly waiting: number }>> {
  return ask(`${placeOf(id)}/judge`, id, { method: 'POST' }, waitingSchema);
}

export function askRetention(id: string, retentionDays: number): Promise<AskedResults<ClassLine>> {
  const body = JSON.stringify({ retentionDays });
  return ask(placeOf(id), id, { method: 'PATCH', body }, classLineSchema);
}

export function askToDelete(id: string): Promise<AskedResults<null>> {
  return ask(placeOf(id), id, { method: 'DELETE' }, z.null());
}

export async function askKept(): Promise<AskedResults<readonly ClassLine[]>> {
  const asked = await ask('api/classes', null, {}, keptSchema);
  return asked.ok ? { ok: true, value: asked.value.classes } : asked;
}

function placeOf(id: string): string {
  return `api/classes/${encodeURIComponent(id)}`;
}

const TROUBLES: Readonly<Record<number, ResultsTrouble>> = {
  401: 'not allowed',
  403: 'not allowed',
  404: 'no such class',
};

/** By the class's own secret where this device has it, and by the instructor's key. */
async function ask<T>(
  path: string,
  id: string | null,
  init: RequestInit,
  schema: z.ZodType<T>,
): Promise<AskedResults<T>> {
  const secret = id === null ? null : (ownClass(id)?.secret ?? null);
  const headers = {
    ...withInstructorKey(),
    ...(secret === null ? {} : { authorization: `Bearer ${secret}` }),
    ...(init.body === undefined ? {} : { 'content-type': 'application/json' }),
  };
  try {
    const answer = await fetch(path, { ...init, headers, cache: 'no-store' });
    const said: unknown = answer.status === 204 ? null : await answer.json();
    const read = schema.safeParse(said);
    if (answer.ok && read.success) return { ok: true, value: read.data };
    const failed = httpErrorSchema.safeParse(said);
    const detail = failed.success ? httpErrorText(failed.data) : '';
    // Another server says "not found" too, only not in these words.
    const trouble = failed.success ? (TROUBLES[answer.status] ?? 'refused') : 'no server';
    return { ok: false, trouble, detail };
  } catch {
    return { ok: false, trouble: 'no server', detail: '' };
  }
}
