/** Results as the device keeps them and as a file carries them; the map is made from them each time. */
import { z } from 'zod';
import { inOrder, keyOfResult } from '../../diagnosis/mastery/index.ts';
import { exerciseResultSchema } from '../../judging/results/index.ts';

export const RESULTS_VERSION = 1;
const FILE_WORD = 'flamewright results';

/** A job an hour for two years; a file that is longer was not made by practising. */
const MOST_RESULTS = 5000;

const instant = z.iso.datetime();

export const resultSchema = exerciseResultSchema.extend({ startedISO: instant, atISO: instant });
export type KeptResult = z.infer<typeof resultSchema>;

const fileSchema = z.object({
  file: z.literal(FILE_WORD),
  v: z.literal(RESULTS_VERSION),
  results: z.array(z.unknown()).max(MOST_RESULTS),
  /** What was begun before is not taken in again by itself: it was erased. Null where nothing was. */
  erasedISO: instant.nullable(),
});

export type ResultsTrouble =
  /** It is no text of this kind. */
  | 'not results'
  /** Something in it is not as it should be; `where` says which. */
  | 'broken'
  | 'newer version';
export interface ResultsIssue {
  readonly trouble: ResultsTrouble;
  /** Place in the file, as in `results.3.outcome`; empty where it is the whole. */
  readonly where: string;
}

export interface ResultsRead {
  /** Those that can be read. */
  readonly results: readonly KeptResult[];
  readonly erasedISO: string | null;
  /** One for each thing that cannot; empty when all is well. */
  readonly issues: readonly ResultsIssue[];
}

/** @param indent spaces by which a person finds his way in it; none for the device */
export function writeResults(
  results: readonly KeptResult[],
  erasedISO: string | null,
  indent = 0,
): string {
  return JSON.stringify({ file: FILE_WORD, v: RESULTS_VERSION, erasedISO, results }, null, indent);
}

/** Reads what `writeResults` wrote, whatever became of it since. */
export function readResults(text: string): ResultsRead {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return nothing('not results');
  }
  const { file, v } = (data ?? {}) as { readonly file?: unknown; readonly v?: unknown };
  if (file !== FILE_WORD) return nothing('not results', '');
  if (typeof v === 'number' && v > RESULTS_VERSION) return nothing('newer version', 'v');
  const whole = fileSchema.safeParse(data);
  if (!whole.success) return nothing('broken', placeOf(whole.error));
  const results: KeptResult[] = [];
  const issues: ResultsIssue[] = [];
  whole.data.results.forEach((each, place) => {
    const read = resultSchema.safeParse(each);
    if (read.success) results.push(read.data);
    else issues.push({ trouble: 'broken', where: placeOf(read.error, ['results', place]) });
  });
  return { results: mergeResults(results), erasedISO: whole.data.erasedISO, issues };
}

/** All of them, each attempt once, in the order of time. The order they come in does not matter. */
export function mergeResults(results: readonly KeptResult[]): KeptResult[] {
  const byKey = new Map<string, KeptResult>();
  for (const result of results) {
    const key = keyOfResult(result);
    const known = byKey.get(key);
    if (known === undefined || isBetter(result, known)) byKey.set(key, result);
  }
  return inOrder([...byKey.values()]);
}

/** The one that knows how the cause was found; then the one that was there first. */
function isBetter(one: KeptResult, other: KeptResult): boolean {
  const known = (result: KeptResult) => (result.parts.found === null ? 0 : 1);
  if (known(one) !== known(other)) return known(one) > known(other);
  if (one.atISO !== other.atISO) return one.atISO < other.atISO;
  return JSON.stringify(one) < JSON.stringify(other);
}

function nothing(trouble: ResultsTrouble, where = ''): ResultsRead {
  return { results: [], erasedISO: null, issues: [{ trouble, where }] };
}

function placeOf(error: z.ZodError, before: readonly (string | number)[] = []): string {
  const [first] = error.issues;
  // Of what is too much the schema tells the place above it.
  const extra = first?.code === 'unrecognized_keys' ? first.keys.slice(0, 1) : [];
  return [...before, ...(first?.path ?? []), ...extra].map(String).join('.');
}
