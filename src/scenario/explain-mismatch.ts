import type { z } from 'zod';
import {
  choicesOf,
  declaredAt,
  expectedBy,
  expectedWord,
  knownKeys,
  schemaAt,
} from './expectation.ts';
import type { Issue, IssueCode } from './issue.ts';
import { nearest } from './nearest.ts';
import { type Phrase, phrase } from './phrase.ts';
import { type Path, parentOf, pathText } from './place.ts';
import type { Source } from './read-source.ts';
import { quoted } from './yaml-nodes.ts';

type AnySchema = z.core.$ZodType;
type Mismatch = z.core.$ZodIssue;

/** The schema's complaints about a file, as issues with positions, expectations and suggestions. */
export function explainMismatches(
  mismatches: readonly Mismatch[],
  schema: AnySchema,
  source: Source,
): Issue[] {
  return withoutEchoes(mismatches.flatMap((mismatch) => explain(mismatch, [], schema, source)));
}

function explain(mismatch: Mismatch, prefix: Path, root: AnySchema, source: Source): Issue[] {
  const path: Path = [...prefix, ...(mismatch.path as (string | number)[])];
  const value = valueAt(source.data, path);
  const here = schemaAt(root, path, source.data);
  const one = (code: IssueCode, expected: Phrase, suggestion: string | null = null): Issue[] => [
    {
      file: source.file,
      ...source.place(path),
      path: pathText(path),
      code,
      found: source.found(path),
      expected,
      suggestion,
    },
  ];
  const word = (words: readonly string[], expected: Phrase): Issue[] =>
    typeof value === 'string'
      ? one('unknown-choice', expected, nearest(value, words))
      : one('wrong-type', expected, typeMend(value, here));

  if (mismatch.code === 'unrecognized_keys') {
    return mismatch.keys.map((key) => unknownKey(key, path, here, value, source));
  }
  if (value === undefined) {
    const parent = schemaAt(root, path.slice(0, -1), source.data);
    const choices = parent === null ? [] : choicesOf(parent, String(path.at(-1) ?? ''));
    const expected =
      choices.length > 0
        ? expectedWord(choices, value)
        : expectedBy(declaredAt(root, path, source.data), value);
    return one('missing-key', expected);
  }
  switch (mismatch.code) {
    case 'invalid_union': {
      const { discriminator, options } = mismatch as {
        discriminator?: string;
        options?: unknown[];
      };
      if (discriminator !== undefined) {
        const words = (options ?? []).map(String);
        return word(words, expectedWord(words, value));
      }
      const branch = mismatch.errors.find((errors) => errors.some(isInside));
      if (branch !== undefined) {
        return branch.flatMap((inner) => explain(inner, path, root, source));
      }
      const words = mismatch.errors
        .flat()
        .flatMap((error) => (error.code === 'invalid_value' ? error.values.map(String) : []));
      return word(words, expectedBy(declaredAt(root, path, source.data), value));
    }
    case 'invalid_value': {
      const words = mismatch.values.map(String);
      return word(words, expectedWord(words, value));
    }
    case 'too_small':
    case 'too_big': {
      const numeric = mismatch.origin === 'number' || mismatch.origin === 'int';
      return one(numeric ? 'out-of-range' : 'wrong-length', expectedBy(here, value));
    }
    case 'invalid_format':
      return one('bad-format', expectedBy(here, value));
    default:
      return one('wrong-type', expectedBy(here, value), typeMend(value, here));
  }
}

/** The value is of this branch's kind, and something in it is wrong. */
function isInside(mismatch: Mismatch): boolean {
  return mismatch.path.length > 0 || mismatch.code === 'unrecognized_keys';
}

function unknownKey(
  key: string,
  path: Path,
  here: AnySchema | null,
  group: unknown,
  source: Source,
): Issue {
  const known = knownKeys(here);
  // `{ severity: 0,9 }` reads as a severity of 0 and a key 9.
  const decimal = /^\d+$/.test(key) && valueAt(group, [key]) === null;
  const free = known.filter((name) => valueAt(group, [name]) === undefined);
  return {
    file: source.file,
    ...source.place([...path, key], 'key'),
    path: pathText([...path, key]),
    code: decimal ? 'decimal-comma' : 'unknown-key',
    found: quoted(key),
    expected: phrase('expected.keys', { keys: known }),
    suggestion: nearest(key, free),
  };
}

const SPOKEN_FLAGS: ReadonlyMap<string, string> = new Map([
  ['yes', 'true'],
  ['on', 'true'],
  ['no', 'false'],
  ['off', 'false'],
]);

/** `yes` for true, `1,5` for 1.5, a number in quotes and text without them are the usual slips. */
function typeMend(value: unknown, schema: AnySchema | null): string | null {
  if (schema === null || typeof value === 'object') return null;
  const written = String(value).trim().toLowerCase();
  if (accepts(schema, String(value))) return `"${value}"`;
  const flag = SPOKEN_FLAGS.get(written);
  if (flag !== undefined && accepts(schema, true)) return flag;
  const number = written.replace(',', '.');
  return /^[-+]?\d+(\.\d+)?$/.test(number) && accepts(schema, Number(number)) ? number : null;
}

function accepts(schema: AnySchema, value: unknown): boolean {
  return (schema as z.ZodType).safeParse(value).success;
}

/** A misspelt key also leaves its right name missing: one mend answers both. */
function withoutEchoes(issues: readonly Issue[]): Issue[] {
  const meant = new Set(
    issues
      .filter((issue) => issue.code === 'unknown-key' && issue.suggestion !== null)
      .map((issue) => childPath(parentOf(issue.path), issue.suggestion ?? '')),
  );
  return issues.filter((issue) => issue.code !== 'missing-key' || !meant.has(issue.path));
}

function childPath(parent: string, key: string): string {
  return parent === '' ? key : `${parent}.${key}`;
}

export function valueAt(data: unknown, path: Path): unknown {
  let value = data;
  for (const part of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) {
      return undefined;
    }
    value = (value as Record<string | number, unknown>)[part];
  }
  return value;
}
