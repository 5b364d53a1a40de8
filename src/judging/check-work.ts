/** Whether work that someone handed in can be what was done: logs as they come through a door. */
import { type DeskEntry, type DeskState, foldDesk, takeEntry } from '../../machines/job/index.ts';
import {
  type Action,
  FRAME_S,
  INSTRUCTOR_ACTS,
  STEP_S,
  type TimedAction,
} from '../engine/index.ts';
import { deskEntrySchema, timedActionSchema } from './logs/index.ts';
import { type Exercise, type ExerciseSetup, planOfExercise } from './work/index.ts';

export const WORK_REFUSALS = [
  /** The library has it no more, or its plant. */
  'no such exercise',
  /** An act or entry that is none, or more of them than a person does. */
  'not understood',
  'too long',
  /** Made with another version of the exercise. */
  'other setup',
  'out of order',
  'between steps',
  'before arriving',
  'after the end',
  /** What the exercise does by itself is not in it, or not as it does it. */
  'own acts changed',
  /** An act that only an instructor may order, and none did. */
  'not ordered',
  /** An entry that the desk would not have taken. */
  'desk refuses',
  /** The engine cannot run it. */
  'does not run',
] as const;
export type WorkRefusal = (typeof WORK_REFUSALS)[number];

export interface Refused {
  readonly ok: false;
  readonly why: WorkRefusal;
  /** Place in what was handed in, as in `log.3`; empty where it is the whole. */
  readonly where: string;
  /** For whoever wants to know: what was found there. */
  readonly detail: string;
}

/** Work as it was handed in; nothing of it is believed yet. */
export interface HandedIn {
  readonly log: readonly unknown[];
  readonly desk: readonly unknown[];
  /** How far the run had come, s. */
  readonly untilS: number;
  /** Of the setup that the page had; left out: not compared. */
  readonly setupHash?: string;
  /** Acts that the class ordered for this seat, each once; their times are the learner's run's own. */
  readonly ordered?: readonly Action[];
}

export interface CheckedWork {
  readonly ok: true;
  readonly log: readonly TimedAction[];
  readonly desk: DeskState;
  /** How many of the ordered acts were done. */
  readonly orderedDone: number;
}

/** More than anyone does by hand in a visit. */
const MOST_ACTS = 5000;
const MOST_ENTRIES = 5000;
/** Times are sums of tenths: as near as this they are the same. */
const SAME_S = 1e-6;

export function checkWork(
  { setup, arriveS, endS, exercise }: ExerciseSetup,
  { log, desk, untilS, ordered = [] }: HandedIn,
): CheckedWork | Refused {
  if (!(untilS >= arriveS - SAME_S)) return refused('before arriving', '', `${untilS} s`);
  if (untilS > endS + SAME_S) return refused('after the end', '', `${untilS} s`);
  const acts = readAll('log', log, MOST_ACTS, (one) => timedActionSchema.safeParse(one));
  if ('why' in acts) return acts;
  const entries = readAll('desk', desk, MOST_ENTRIES, (one) => deskEntrySchema.safeParse(one));
  if ('why' in entries) return entries;
  const left = withoutOwn(acts.read as readonly TimedAction[], setup.actions);
  if ('why' in left) return left;
  const orders = exercise.kind === 'lesson' ? null : [...ordered];
  for (const { act, place } of left.hands) {
    const trouble =
      troubleOfTime(act.t, arriveS, untilS) ?? (orders === null ? null : notOrdered(act, orders));
    if (trouble !== null) return refused(trouble, `log.${place}`, `${act.type} at ${act.t} s`);
  }
  const written = writeDesk(exercise, entries.read as readonly DeskEntry[], untilS);
  if ('why' in written) return written;
  const orderedDone = orders === null ? 0 : ordered.length - orders.length;
  return { ok: true, log: acts.read as readonly TimedAction[], desk: written.desk, orderedDone };
}

export function refused(why: WorkRefusal, where: string, detail: string): Refused {
  return { ok: false, why, where, detail };
}

interface Parsed {
  readonly success: boolean;
  readonly data?: unknown;
  readonly error?:
    | { readonly issues: readonly { readonly path: readonly PropertyKey[] }[] }
    | undefined;
}

function readAll(
  name: string,
  list: readonly unknown[],
  most: number,
  parse: (one: unknown) => Parsed,
): { readonly read: readonly unknown[] } | Refused {
  if (list.length > most) return refused('too long', `${name}.${most}`, `${list.length}`);
  const read: unknown[] = [];
  for (const [place, one] of list.entries()) {
    const parsed = parse(one);
    if (!parsed.success) return refused('not understood', `${name}.${place}`, typeOf(one));
    read.push(parsed.data);
  }
  return { read };
}

/** What hands did: the log without what the exercise does by itself, which must all be there, in order. */
function withoutOwn(
  log: readonly TimedAction[],
  own: readonly TimedAction[],
): { readonly hands: readonly { readonly act: TimedAction; readonly place: number }[] } | Refused {
  const hands: { readonly act: TimedAction; readonly place: number }[] = [];
  let next = 0;
  let lastS = 0;
  for (const [place, act] of log.entries()) {
    if (act.t < lastS) return refused('out of order', `log.${place}`, `${act.type} at ${act.t} s`);
    lastS = act.t;
    const awaited = own[next];
    if (awaited !== undefined && textOf(awaited) === textOf(act)) next += 1;
    else hands.push({ act, place });
  }
  const missing = own[next];
  if (missing === undefined) return { hands };
  return refused('own acts changed', 'log', `${missing.type} at ${missing.t} s`);
}

function troubleOfTime(t: number, arriveS: number, untilS: number): WorkRefusal | null {
  if (t < arriveS - SAME_S) return 'before arriving';
  if (t > untilS + SAME_S) return 'after the end';
  const steps = t / STEP_S;
  return Math.abs(steps - Math.round(steps)) * STEP_S > SAME_S ? 'between steps' : null;
}

/** Takes an order off the list; what needs none leaves the list as it is. */
function notOrdered(act: TimedAction, orders: Action[]): WorkRefusal | null {
  const { t: _, ...what } = act;
  const place = orders.findIndex((order) => textOf(order) === textOf(what));
  if (place >= 0) orders.splice(place, 1);
  return place < 0 && INSTRUCTOR_ACTS.includes(act.type) ? 'not ordered' : null;
}

function writeDesk(
  exercise: Exercise,
  entries: readonly DeskEntry[],
  untilS: number,
): { readonly desk: DeskState } | Refused {
  const { kind } = exercise;
  let desk = foldDesk(kind, planOfExercise(exercise), []);
  for (const [place, entry] of entries.entries()) {
    const where = `desk.${place}`;
    // Paper is written at the head as the page knows it. A lesson may have been taken back since.
    if (kind !== 'lesson' && entry.t > untilS + FRAME_S + SAME_S) {
      return refused('after the end', where, `${entry.type} at ${entry.t} s`);
    }
    const taken = takeEntry(desk, entry);
    if (!taken.ok) {
      const isOfTime = taken.refusal === 'earlier than the last entry';
      return refused(isOfTime ? 'out of order' : 'desk refuses', where, taken.refusal);
    }
    desk = taken.state;
  }
  return { desk };
}

/** A log that was kept may name the fields of an act in another order. */
function textOf(act: Action | TimedAction): string {
  return JSON.stringify(Object.entries(act).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function typeOf(one: unknown): string {
  const type = (one as { readonly type?: unknown } | null)?.type;
  return typeof type === 'string' ? type.slice(0, 100) : typeof one;
}
