import { initialTransition, transition } from 'xstate';
import { classMachine } from './class.ts';
import type { ClassEntry } from './entries.ts';
import type { ClassContext } from './setup.ts';
import type { ClassState, ClassTaken } from './state.ts';

const EMPTY: ClassContext = {
  what: null,
  way: 'own copies',
  seed: 0,
  openedMs: 0,
  // Nothing runs before the work begins.
  pace: { frozen: true, speed: 1 },
  paces: [],
  lockedTools: [],
  triggers: [],
  hints: [],
  poll: null,
  spotlight: null,
  shows: 'way in',
  names: false,
  refusal: null,
};

/** A class before it is opened. */
export function createClass(): ClassState {
  const [first] = initialTransition(classMachine, EMPTY);
  return { phase: first.value, n: 0, ...bookOf(first.context) };
}

/** The class after one more entry, or why it is not taken. Pure: the state given is left as it is. */
export function takeClassEntry(state: ClassState, entry: ClassEntry): ClassTaken {
  const { phase, n: _, ...book } = state;
  const before = classMachine.resolveState({ value: phase, context: { ...book, refusal: null } });
  const [after] = transition(classMachine, before, entry);
  const { refusal } = after.context;
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, state: { phase: after.value, n: entry.n, ...bookOf(after.context) } };
}

/** The class as it stands after all of these entries. One that is not taken changes nothing. */
export function foldClass(entries: readonly ClassEntry[], from = createClass()): ClassState {
  let state = from;
  for (const entry of entries) {
    const taken = takeClassEntry(state, entry);
    if (taken.ok) state = taken.state;
  }
  return state;
}

function bookOf({ refusal: _, ...book }: ClassContext) {
  return book;
}
