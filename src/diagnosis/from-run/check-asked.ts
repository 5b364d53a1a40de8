import { lookedAt, toolUseOf } from '../../bench/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import { MOVING_LOOKS } from '../atlas/plan.ts';
import { LOCKED_OUT, STANDING } from '../observe/moment.ts';
import { checkName, partsOfCheck } from '../observe/reading.ts';
import { voltsReading, type WirePlaces } from '../observe/wire-readings.ts';

export type CheckAction = Extract<TimedAction, { type: 'check' }>;

const VOLTS = 'volts';
const AMPS = 'amps';
const ALWAYS: ReadonlyMap<string, string> = new Map([
  [checkName('history'), LOCKED_OUT],
  [checkName('commissioning sheet'), STANDING],
]);

/**
 * The name that a check of the log has in an atlas. What an atlas does not know (volts between two live
 * wires, a clamp at a terminal, a decay test) gets a name made alike, and tells it nothing.
 */
export function checkAsked(
  action: Pick<CheckAction, 'type' | 'what' | 'place' | 'other'>,
  wires: WirePlaces,
): string {
  const { what, place, other } = action;
  const look = lookedAt({ action: { ...action, t: 0 } });
  if (look !== null) return checkName('look', look);
  const use = toolUseOf(action);
  if (use?.tool !== 'multimeter' || use.range === AMPS) {
    return checkName(use?.tool ?? what, place, other);
  }
  if (use.range === undefined || use.range === VOLTS) {
    return voltsReading(wires, place, other, 0)?.check ?? checkName(VOLTS, place, other);
  }
  const [first = '', second = ''] = [place, other].sort();
  return checkName('continuity', first, second);
}

/** The situation under which an atlas keeps what a check tells: not all of it hangs on the step. */
export function momentAsked(check: string, now: string): string {
  const always = ALWAYS.get(check);
  if (always !== undefined) return always;
  const { what, place } = partsOfCheck(check);
  return what === 'look' && !MOVING_LOOKS.some((one) => one === place) ? STANDING : now;
}
