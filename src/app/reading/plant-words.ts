import { isMessage, say, sayWord, slugOf } from '../../i18n/index.ts';
import type { Facts } from '../session/protocol.ts';

/** What a step is for; without a pilot some steps are for something else. */
export function purposeText(step: string, hasPilot: boolean): string {
  const direct = `app.direct-spark.${slugOf(step)}`;
  return hasPilot || !isMessage(direct) ? sayWord('step', step) : say(direct);
}

/** Where a technician looks next, in words that fit the plant. */
export function lookText(
  cause: string,
  plant: { readonly hasPilot: boolean; readonly vesselKind: string },
): string {
  const kinds = [
    ...(plant.hasPilot ? [] : ['direct-spark']),
    ...(plant.vesselKind === 'hot water' ? ['hot-water'] : []),
  ];
  for (const kind of kinds) {
    const code = `app.${kind}.${slugOf(cause)}.look`;
    if (isMessage(code)) return say(code);
  }
  return sayWord('cause', cause, '.look');
}

/** Causes that stand on an input which not every plant has. */
const INPUT_OF: Readonly<Record<string, string>> = {
  'water low': 'waterAboveFirst',
  'water very low': 'waterAboveSecond',
  'furnace pressure high': 'furnacePressureInBand',
  'warm-up not satisfied': 'warmUpSatisfied',
  'purge speed not proved': 'fanAtPurgeSpeed',
  'speed left its curve': 'speedOnCurve',
  'valve not proved closed': 'upstreamValveClosed',
};

export function canHappen(cause: string, { plantInputs }: Pick<Facts, 'plantInputs'>): boolean {
  const input = INPUT_OF[cause];
  return input === undefined || plantInputs.includes(input);
}
