import type { PinEntry } from '../../../machines/index.ts';
import type { WirePlaces } from '../observe/wire-readings.ts';
import { type CheckAction, checkAsked, momentAsked } from './check-asked.ts';

/** A check of the log that was made before, and its name. */
export interface AskedBefore {
  readonly action: CheckAction;
  readonly check: string;
}

/**
 * What a pinned reading is an answer to. A pin does not know how its tool was set: that is what was
 * connected there last.
 *
 * @param now the situation in which it was pinned
 */
export function questionOfPin(
  { what, place, other }: Omit<PinEntry, 'type'>,
  asked: readonly AskedBefore[],
  now: string,
  wires: WirePlaces,
): { readonly check: string; readonly moment: string } {
  const connected = asked.filter(
    ({ action }) =>
      action.what.split(':')[0] === what && action.place === place && action.other === other,
  );
  const check = connected.at(-1)?.check ?? checkAsked({ type: 'check', what, place, other }, wires);
  return { check, moment: momentAsked(check, now) };
}
