import { ambiguityGroups } from '../reasoning/ambiguity.ts';
import type { Case } from './case.ts';
import { isPermitted } from './is-permitted.ts';
import { roundsOf } from './rounds-of-case.ts';

/**
 * Of each cause, the causes that nobody could be asked to tell from it: no permitted check does, at all
 * or at this very plant, or the exercise takes one for the other.
 */
export function alikeGroups(theCase: Case): readonly (readonly number[])[] {
  const { sound, own, accepted, tools } = theCase;
  const { causes } = sound;
  // Many checks tell the same; what tells two causes apart once need not be looked at again.
  const told = new Map<Uint8Array, (typeof sound.keys)[number]>();
  for (const key of sound.keys) if (isPermitted(key.check, tools)) told.set(key.column, key);
  const groups = ambiguityGroups({ ...sound, keys: [...told.values()] });
  const groupOf = causes.map((_, cause) => groups.find((one) => one.includes(cause)) ?? [cause]);
  const placeOf = (fault: string | null) => causes.findIndex((one) => one.fault === fault);
  const answers = own.length === 0 ? [null] : own;
  const taken = (fault: string | null) => [
    ...accepted,
    ...roundsOf(theCase).flatMap((round) => (round.cause === fault ? round.inseparable : [])),
  ];
  for (const fault of answers) {
    const cause = placeOf(fault);
    if (cause < 0) continue;
    const others = taken(fault)
      .map(placeOf)
      .filter((one) => one >= 0);
    const together = [...new Set([...(groupOf[cause] ?? []), ...others])];
    for (const one of together) {
      groupOf[one] = [...new Set([...(groupOf[one] ?? []), ...together])];
    }
  }
  return groupOf;
}
