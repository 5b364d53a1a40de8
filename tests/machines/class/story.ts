import {
  type ClassEntry,
  type ClassEvent,
  type ClassKind,
  type ClassState,
  type ClassWay,
  createClass,
  takeClassEntry,
} from '../../../machines/index.ts';

export function open(way: ClassWay = 'own copies', kind: ClassKind = 'start'): ClassEvent {
  return {
    type: 'open',
    way,
    seed: 7,
    what: { kind, id: 'healthy-start', title: 'A start', plant: 'dairy' },
  };
}
export const BEGIN: ClassEvent = { type: 'begin' };
export const CLOSE: ClassEvent = { type: 'close' };
export const ALL = 'all' as const;
export const FAULT = { type: 'insert-fault', fault: 'slipping belt', severity: 0.5 };

export function poll(id: string, options = ['it locks out', 'it goes on']): ClassEvent {
  return { type: 'poll', id, question: { text: 'What follows?', stem: [], options, item: null } };
}
export function showPoll(id: string, counts = [1, 2]): ClassEvent {
  return { type: 'show poll', id, right: 0, why: '', counts };
}

export function numbered(events: readonly ClassEvent[]): ClassEntry[] {
  return events.map((event, k) => ({ n: k + 1, atMs: 1000 * (k + 1), ...event }));
}

/** Takes all of them; what is refused is kept with its place. */
export function told(events: readonly ClassEvent[]) {
  let state: ClassState = createClass();
  const refused: string[] = [];
  for (const entry of numbered(events)) {
    const taken = takeClassEntry(state, entry);
    if (taken.ok) state = taken.state;
    else refused.push(taken.refusal);
  }
  return { state, refused };
}
