import type { ClassAct } from '../../../machines/class/index.ts';
import { eventText } from '../reading/event-text.ts';
import type { HistoryEvent } from '../session/protocol.ts';

/** An act of the class as the list of events words it. */
export function actText(act: ClassAct): string {
  // Both ends have checked it by the engine's tables.
  const action = { t: 0, ...act } as Extract<HistoryEvent, { type: 'action' }>['action'];
  return eventText({ t: 0, type: 'action', action }) ?? act.type;
}
