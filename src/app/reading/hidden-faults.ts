import type { HistoryEvent } from '../session/protocol.ts';

/**
 * A fault that the scenario brought along, not one that was inserted by hand. Showing it
 * would give the answer away, so the page keeps quiet about it until it is asked.
 */
export function isGivenAway(event: HistoryEvent, events: readonly HistoryEvent[]): boolean {
  return event.type === 'fault' && !insertedByHand(event.fault, events);
}

export function insertedByHand(fault: string, events: readonly HistoryEvent[]): boolean {
  return events.some(
    ({ type, ...rest }) =>
      type === 'action' &&
      'action' in rest &&
      rest.action.type === 'insert-fault' &&
      rest.action.fault === fault,
  );
}
