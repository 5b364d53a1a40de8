import { lookedAt } from '../../bench/index.ts';
import { HEARD_WHATS, type LookWhat, type Run, type RunEvent } from '../../engine/index.ts';
import { dialReadings } from '../observe/dial-readings.ts';
import { heardReadings, lookReadings, smellReading } from '../observe/look-readings.ts';
import { historyReadings } from '../observe/panel-readings.ts';
import type { Reading } from '../observe/reading.ts';
import type { CheckAction } from './check-asked.ts';

type Lockout = Extract<RunEvent, { type: 'lockout' }>;

/**
 * What a check tells that is over when it is done.
 *
 * @param sinceS older lockouts are of a plant that was worked on since, s
 */
export function readOnce(action: CheckAction, run: Run, sinceS: number): readonly Reading[] {
  const look = lookedAt({ action });
  if (look !== null) {
    const what = run.lookPlaces().find((one: LookWhat) => one === look);
    const found = what === undefined ? null : run.look(what);
    return found === null ? [] : lookReadings(found);
  }
  switch (action.what) {
    case 'listen':
      return heardReadings(run.listen(), HEARD_WHATS);
    case 'smell':
      return [smellReading(run.smell())];
    case 'commissioning sheet':
      return dialReadings(run.settings());
    case 'history':
      return lastLockout(run, sinceS);
    default:
      return [];
  }
}

/** What the panel keeps of the last lockout, whether it still stands or was reset. */
function lastLockout(run: Run, sinceS: number): readonly Reading[] {
  const kept = run
    .events()
    .filter((event): event is Lockout => event.type === 'lockout' && event.t >= sinceS)
    .at(-1);
  if (kept === undefined) return [];
  return historyReadings({ ...run.status(), lockout: kept.cause, lockoutStep: kept.step });
}
