import type { HistoryEvent } from '../session/protocol.ts';

/**
 * A fault that the scenario brought along, not one that was inserted by hand. Showing it
 * would give the answer away, so the page keeps quiet about it until it is asked.
 */
export function isGivenAway(event: HistoryEvent, events: readonly HistoryEvent[]): boolean {
  return event.type === 'fault' && !insertedByHand(event.fault, events);
}

/** Written out: a list of events is shown without the engine. */
const INSTRUCTOR_ACTS: readonly string[] = [
  'insert-fault',
  'ramp-fault',
  'intermittent-fault',
  'clear-fault',
  'set-weather',
  'set-gas-supply',
  'set-mains',
];

/** A fault that comes or goes, and whatever an instructor puts in: for the learner to find. */
export function isOfInstructor(event: HistoryEvent): boolean {
  return (
    event.type === 'fault' ||
    (event.type === 'action' && INSTRUCTOR_ACTS.includes(event.action.type))
  );
}

export function insertedByHand(fault: string, events: readonly HistoryEvent[]): boolean {
  return events.some(
    ({ type, ...rest }) =>
      type === 'action' &&
      'action' in rest &&
      (rest.action.type === 'insert-fault' ||
        rest.action.type === 'ramp-fault' ||
        rest.action.type === 'intermittent-fault') &&
      rest.action.fault === fault,
  );
}
