/** How far someone is with the exercise of a package, as a learning system keeps it: one text, of bounded length. */
import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { z } from 'zod';
import { longInstants, shortInstants } from './short-instants.ts';

const word = z.string().min(1).max(100);

const stateSchema = z.strictObject({
  v: z.literal(1),
  /** One learner's attempt at the package; what his device keeps of it goes by this name. */
  attempt: word.regex(/^[\w-]+$/),
  /** Another one each time it is kept, so that a device knows its own. */
  stamp: word.regex(/^[\w-]+$/),
  /** The best outcome so far, 0 to 1. */
  best: z.number().min(0).max(1).nullable(),
  /** What the learning system has been told and taken. */
  completed: z.boolean(),
  passed: z.boolean(),
  /** Under which name the device keeps the work; null before anything was done. */
  key: z.string().min(1).max(300).nullable(),
  /** The work itself; null where there was no room for it: then it is on the device alone. */
  text: z.string().nullable(),
});
export type PackedState = z.infer<typeof stateSchema>;

/** SCORM 1.2 promises so many characters of `cmi.suspend_data`. */
export const SCORM_ROOM = 4096;
const MARK = 'fw1';

export interface Packing {
  readonly packed: string;
  /** The work is in it. */
  readonly whole: boolean;
}

/** @param room how many characters there may be; null: any number, and it need not be packed */
export function packState(state: PackedState, room: number | null): Packing {
  if (room === null) return { packed: JSON.stringify(state), whole: true };
  const whole = packedText(state);
  if (whole.length <= room) return { packed: whole, whole: true };
  return { packed: packedText({ ...state, text: null }), whole: state.text === null };
}

export type Unpacked =
  | { readonly ok: true; readonly state: PackedState }
  /** It was cut off or changed; the attempt, where that much can be read, is still on its device. */
  | { readonly ok: false; readonly attempt: string | null };

export function unpackState(packed: string): Unpacked {
  const attempt = /^fw1\.([\w-]{1,100})\./.exec(packed)?.[1] ?? null;
  try {
    const text = packed.startsWith('{') ? packed : unpackedText(packed);
    const read = stateSchema.safeParse(JSON.parse(text));
    return read.success ? { ok: true, state: read.data } : { ok: false, attempt };
  } catch {
    return { ok: false, attempt };
  }
}

function packedText(state: PackedState): string {
  const short = state.text === null ? null : shortInstants(state.text);
  const said = { ...state, text: short ?? state.text, short: short !== null };
  const bytes = deflateSync(strToU8(JSON.stringify(said)), { level: 9 });
  return `${MARK}.${state.attempt}.${btoa(strFromU8(bytes, true))}`;
}

/** @throws where it is not what was packed */
function unpackedText(packed: string): string {
  const [mark, , body = ''] = packed.split('.');
  if (mark !== MARK) throw new Error('another text');
  const said: unknown = JSON.parse(strFromU8(inflateSync(strToU8(atob(body), true))));
  const { short, ...state } = said as { readonly short: boolean; readonly text: string | null };
  if (!short || state.text === null) return JSON.stringify(state);
  return JSON.stringify({ ...state, text: longInstants(state.text) });
}
