import type { Setting } from '../../engine/index.ts';
import { checkName, type Reading } from './reading.ts';

/** What the dials stand at, to be held against the commissioning sheet. */
export function dialReadings(settings: readonly Setting[]): readonly Reading[] {
  return settings.map(({ part, setting, value }) => ({
    check: checkName('commissioning sheet'),
    aspect: `${part}, ${setting}`,
    value,
  }));
}
