import type { z } from 'zod';
import { MAX_ISSUES } from './bounds.ts';
import { explainMismatches } from './explain-mismatch.ts';
import { type Issue, inOrder } from './issue.ts';
import { readSource, type Source } from './read-source.ts';

/** A value out of a file, with the file still at hand for whoever checks it further. */
export interface Loaded<T> {
  readonly value: T;
  readonly source: Source;
}
export type Reading<T> =
  | ({ readonly ok: true } & Loaded<T>)
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Reads a file against its schema: the whole value, or everything that is wrong with it. */
export function readYaml<T>(text: string, file: string, schema: z.ZodType<T>): Reading<T> {
  const read = readSource(text, file);
  return read.ok ? fitSource(read.value, schema) : { ok: false, issues: bounded(read.issues) };
}

export function fitSource<T>(source: Source, schema: z.ZodType<T>): Reading<T> {
  const parsed = schema.safeParse(source.data);
  if (parsed.success && source.issues.length === 0) {
    return { ok: true, value: parsed.data, source };
  }
  const mismatches = parsed.success ? [] : parsed.error.issues;
  const issues = [...source.issues, ...explainMismatches(mismatches, schema, source)];
  return { ok: false, issues: bounded(issues) };
}

export function bounded(issues: readonly Issue[]): Issue[] {
  return inOrder(issues).slice(0, MAX_ISSUES);
}
