import { z } from 'zod';
import { nearestFew } from './nearest.ts';
import { type Phrase, phrase } from './phrase.ts';
import type { Path } from './place.ts';

/** What a schema expects, where its type alone does not say it. */
export const EXPECTED = z.registry<{ readonly phrase: Phrase }>();

/** Lists of words up to this length are shown whole. */
const SHOWN_WHOLE = 24;

type AnySchema = z.core.$ZodType;

/** The schema in force at a path, given the value that is being checked; null where nothing is known. */
export function schemaAt(root: AnySchema, path: Path, value: unknown): AnySchema | null {
  const declared = declaredAt(root, path, value);
  return resolve(
    declared,
    path.reduce((here: unknown, part) => child(here, part), value),
  );
}

/** As schemaAt, but a union whole instead of the branch that the value chose. */
export function declaredAt(root: AnySchema, path: Path, value: unknown): AnySchema | null {
  let schema: AnySchema | null = root;
  let here = value;
  for (const part of path) {
    const chosen: AnySchema | null = resolve(schema, here);
    if (chosen === null) return null;
    here = child(here, part);
    schema = step(chosen, part);
  }
  return schema;
}

/** What should have stood where `found` was found. */
export function expectedBy(schema: AnySchema | null, found: unknown): Phrase {
  if (schema === null) return phrase('expected.something-else');
  const registered = EXPECTED.get(schema);
  if (registered !== undefined) return registered.phrase;
  const def = (schema as z.core.$ZodTypes)._zod.def;
  switch (def.type) {
    case 'number':
      return expectedNumber(schema);
    case 'string':
      return phrase('expected.text');
    case 'boolean':
      return phrase('expected.flag');
    case 'enum':
      return expectedWord(Object.values(def.entries).map(String), found);
    case 'literal':
      return expectedWord(def.values.map(String), found);
    case 'array':
      return expectedList(def.element, schema, found);
    case 'object':
      return phrase('expected.group', { keys: Object.keys(def.shape) });
    case 'record':
      return phrase('expected.named-group');
    case 'union': {
      const [first, second] = def.options;
      return second === undefined || keyOf(schema) !== null
        ? expectedBy(first ?? null, found)
        : phrase('expected.either', {
            one: expectedBy(first ?? null, found),
            other: expectedBy(second, found),
          });
    }
    case 'optional':
    case 'default':
    case 'nullable':
      return expectedBy(def.innerType, found);
    default:
      return phrase('expected.something-else');
  }
}

export function expectedWord(words: readonly string[], found: unknown): Phrase {
  if (words.length <= SHOWN_WHOLE) return phrase('expected.one-of', { words });
  const near = typeof found === 'string' ? nearestFew(found, words, 3) : [];
  return near.length === 0
    ? phrase('expected.many', { count: words.length })
    : phrase('expected.many-near', { count: words.length, near });
}

/** Names that may stand as a key in the group this schema describes. */
export function knownKeys(schema: AnySchema | null): string[] {
  if (schema === null) return [];
  const def = (schema as z.core.$ZodTypes)._zod.def;
  return def.type === 'object' ? Object.keys(def.shape) : [];
}

/** The key that tells the options of a union apart, if there is one. */
export function keyOf(schema: AnySchema): string | null {
  const def = (schema as z.core.$ZodTypes)._zod.def;
  return def.type === 'union' && 'discriminator' in def ? String(def.discriminator) : null;
}

function expectedNumber(schema: AnySchema): Phrase {
  const { minValue, maxValue, format } = schema as z.ZodNumber;
  const unit = (z.globalRegistry.get(schema) as { unit?: string } | undefined)?.unit ?? '1';
  const kind = format === 'safeint' ? 'whole-number' : 'number';
  if (minValue === null || maxValue === null) return phrase(`expected.${kind}`);
  return unit === '1'
    ? phrase(`expected.${kind}-between`, { min: minValue, max: maxValue })
    : phrase('expected.quantity-between', { min: minValue, max: maxValue, unit });
}

function expectedList(element: AnySchema, schema: AnySchema, found: unknown): Phrase {
  const { min, max } = lengthsOf(schema);
  const item = (element as z.core.$ZodTypes)._zod.def.type === 'number' ? 'numbers' : 'entries';
  if (max === null || !Array.isArray(found)) return phrase('expected.list');
  if (min === max) return phrase('expected.list-of-exactly', { count: max });
  return phrase(`expected.list-of-${item}`, { min, max });
}

function lengthsOf(schema: AnySchema): { readonly min: number; readonly max: number | null } {
  const bounds = { min: 0, max: null as number | null };
  for (const check of schema._zod.def.checks ?? []) {
    const def = check._zod.def as { check: string; minimum?: number; maximum?: number };
    if (def.check === 'min_length') bounds.min = def.minimum ?? 0;
    if (def.check === 'max_length') bounds.max = def.maximum ?? null;
  }
  return bounds;
}

function step(schema: AnySchema, part: string | number): AnySchema | null {
  const def = (schema as z.core.$ZodTypes)._zod.def;
  if (def.type === 'object') return own(def.shape, String(part));
  if (def.type === 'array') return def.element;
  if (def.type === 'record') return def.valueType;
  return null;
}

/** Through wrappers, and into the branch of a union that the value chose. */
function resolve(schema: AnySchema | null, value: unknown): AnySchema | null {
  if (schema === null) return null;
  const def = (schema as z.core.$ZodTypes)._zod.def;
  if (def.type === 'optional' || def.type === 'default' || def.type === 'nullable') {
    return resolve(def.innerType, value);
  }
  if (def.type !== 'union') return schema;
  const key = keyOf(schema);
  if (key === null) return def.options.find((option) => fits(option, value)) ?? schema;
  const chosen = child(value, key);
  return def.options.find((option) => literalsOf(option, key).includes(chosen)) ?? schema;
}

/** The words a union's key may take. */
export function choicesOf(schema: AnySchema, key: string): string[] {
  const def = (schema as z.core.$ZodTypes)._zod.def;
  if (def.type !== 'union') return [];
  return def.options.flatMap((option) => literalsOf(option, key).map(String));
}

function literalsOf(option: AnySchema, key: string): unknown[] {
  return [...(option._zod.propValues?.[key] ?? [])];
}

function fits(schema: AnySchema, value: unknown): boolean {
  const def = (schema as z.core.$ZodTypes)._zod.def;
  if (def.type === 'object' || def.type === 'record') {
    return typeof value === 'object' && value !== null && !Array.isArray(value);
  }
  if (def.type === 'array') return Array.isArray(value);
  return def.type === 'literal' ? typeof value === 'string' : false;
}

function child(value: unknown, part: string | number): unknown {
  if (typeof value !== 'object' || value === null) return undefined;
  return Object.hasOwn(value, part) ? (value as Record<string | number, unknown>)[part] : undefined;
}

function own(shape: Readonly<Record<string, AnySchema>>, key: string): AnySchema | null {
  return Object.hasOwn(shape, key) ? (shape[key] ?? null) : null;
}
