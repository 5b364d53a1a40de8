/** One learner's attempt at a package between the device and the learning system: whose state of it counts. */
import { z } from 'zod';
import type { Shelf } from '../work/shelf.ts';
import type { Told } from './learning-system.ts';
import { type PackedState, type Packing, packState } from './packed-state.ts';

const KEY = 'flamewright.attempt';
const COPY = 'flamewright.attempt-work';
/** Of as many of its own writings a device knows the stamp: the last may not have come through. */
const STAMPS_KNOWN = 12;

const ownSchema = z.strictObject({
  v: z.literal(1),
  stamps: z.array(z.string()),
  best: z.number().min(0).max(1).nullable(),
  completed: z.boolean(),
  passed: z.boolean(),
  key: z.string().nullable(),
});
type Own = z.infer<typeof ownSchema>;
const NOTHING: Own = { v: 1, stamps: [], best: null, completed: false, passed: false, key: null };

export interface Attempt {
  readonly name: string;
  read(): Omit<Own, 'v' | 'stamps'>;
  /**
   * Under which key the shelf keeps the work.
   *
   * @param text of work that does not stay there; null for such as does
   */
  workAt(key: string, text: string | null): void;
  /** @returns whether it is the best so far */
  outcome(scaled: number): boolean;
  told(told: Told): void;
  /** All of it for the learning system, stamped. */
  packed(room: number | null): Packing;
}

export type TakenUp =
  /** Nothing was there; the device went on by itself; or what the system had is on the device now. */
  | { readonly from: 'nothing' | 'device' | 'system'; readonly attempt: Attempt }
  /** The work was too long for the system and lies on another device. */
  | { readonly from: 'elsewhere'; beginAnew(): Attempt };

/**
 * What the device has goes on where it made what the system has, or something later; otherwise what
 * the system has is put in its place.
 *
 * @param shelf the compartment of this attempt
 * @param saved what the system has; null for nothing
 */
export function takeUpAttempt(
  shelf: Shelf,
  name: string,
  saved: PackedState | null,
  newStamp: () => string,
): TakenUp {
  const own = readOwn(shelf);
  const attempt = (start: Own): Attempt => attemptOf(shelf, name, start, newStamp);
  if (saved === null) {
    return { from: own === null ? 'nothing' : 'device', attempt: attempt(own ?? NOTHING) };
  }
  const known: Own = { ...NOTHING, ...factsOf(saved), stamps: [saved.stamp] };
  if (own?.stamps.includes(saved.stamp)) return { from: 'device', attempt: attempt(own) };
  if (saved.key === null || saved.text === null) {
    if (saved.key === null) return { from: 'nothing', attempt: attempt(known) };
    return { from: 'elsewhere', beginAnew: () => attempt({ ...known, key: null }) };
  }
  const taken = attempt(known);
  shelf.set(saved.key, saved.text);
  shelf.set(COPY, saved.text);
  return { from: 'system', attempt: taken };
}

function attemptOf(shelf: Shelf, name: string, start: Own, newStamp: () => string): Attempt {
  let own = start;
  const write = (change: Partial<Own>): void => {
    own = { ...own, ...change };
    shelf.set(KEY, JSON.stringify(own));
  };
  write({});
  return {
    name,
    read: () => own,
    workAt(key, text) {
      if (key !== own.key) write({ key });
      if (text !== null) shelf.set(COPY, text);
    },
    outcome(scaled) {
      if (own.best !== null && scaled <= own.best) return false;
      write({ best: scaled });
      return true;
    },
    told({ completed, passed }) {
      if (completed !== own.completed || passed !== own.passed) write({ completed, passed });
    },
    packed(room) {
      const stamp = newStamp();
      // Known before it is sent: whoever leaves in between has still made it here.
      write({ stamps: [...own.stamps, stamp].slice(-STAMPS_KNOWN) });
      const text = own.key === null ? null : workText(shelf, own.key);
      return packState({ v: 1, attempt: name, stamp, ...factsOf(own), text }, room);
    },
  };
}

/** A quiz that is over is taken off the shelf; what was said in it goes on to be the attempt. */
function workText(shelf: Shelf, key: string): string | null {
  return shelf.get(key) ?? shelf.get(COPY);
}

function factsOf({ best, completed, passed, key }: Omit<Own, 'v' | 'stamps'>) {
  return { best, completed, passed, key };
}

function readOwn(shelf: Shelf): Own | null {
  try {
    const read = ownSchema.safeParse(JSON.parse(shelf.get(KEY) ?? ''));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}
