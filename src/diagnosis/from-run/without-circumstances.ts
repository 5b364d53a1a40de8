import type { Atlas } from '../atlas/atlas.ts';
import { binName } from '../atlas/band.ts';
import { keyPlacesOf } from '../atlas/observations.ts';
import { keyName } from '../atlas/take-sample.ts';
import { STANDING } from '../observe/moment.ts';
import type { Reading } from '../observe/reading.ts';
import type { Decision, Seen } from '../score/decision.ts';

/**
 * The decisions without what only the circumstances have shown: gas that the last start left in the
 * train, a boiler that has cooled, a fan that has run down since the lockout, a fault that was not there
 * just then. An atlas knows its plants from a first start out of rest, so that such a reading would speak
 * for a fault that has nothing to do with it. A reading counts where an atlas has it for this very plant;
 * once hands were at it, where it is that of any plant with the same cause, or of a sound one. A reading
 * that an atlas does not know is left as it is.
 *
 * @param atlas with the plant of the case in it
 * @param own the faults of the case; none: nothing is wrong with it
 * @param comesAndGoes then the plant in the atlas had its fault at other times than the one that was
 *   visited, and any plant with the same cause will do
 */
export function withoutCircumstances(
  atlas: Atlas,
  own: readonly string[],
  decisions: readonly Decision[],
  comesAndGoes = false,
): readonly Decision[] {
  const places = keyPlacesOf(atlas);
  const isOwn = atlas.causes.map(({ fault }) =>
    fault === null ? own.length === 0 : own.includes(fault),
  );
  const isSound = atlas.causes.map(({ fault }) => fault === null);
  const isLoose = comesAndGoes || atlas.own === undefined;
  const causeAt = (p: number) => atlas.causeOf[p] as number;
  let worked = false;

  /** Which particles read that; null where the atlas does not know such a reading. */
  function having(
    moment: string,
    { check, aspect, value }: Reading,
  ): ((p: number) => boolean) | null {
    const place =
      places.get(keyName(check, moment, aspect)) ?? places.get(keyName(check, STANDING, aspect));
    const key = place === undefined ? undefined : atlas.keys[place];
    if (key === undefined) return null;
    const bin = key.bins.indexOf(binName(key.band, value));
    return (p) => key.column[p] === bin;
  }
  const itself = isLoose ? nearestOwn() : atlas.own;

  /**
   * The one plant with that cause which has most of what was read and a sound plant has not. One, since
   * readings of which each is another plant's would together be none's.
   */
  function nearestOwn(): number | undefined {
    const mine = [...atlas.causeOf.keys()].filter((p) => isOwn[causeAt(p)]);
    const sound = [...atlas.causeOf.keys()].filter((p) => isSound[causeAt(p)]);
    const signs = mine.map(() => 0);
    for (const decision of decisions) {
      if (decision.kind === 'work') break;
      if (!('seen' in decision)) continue;
      for (const { moment, readings } of decision.seen) {
        for (const reading of readings) {
          const has = having(moment, reading);
          if (has === null || sound.some(has)) continue;
          mine.forEach((p, i) => {
            if (has(p)) signs[i] = (signs[i] as number) + 1;
          });
        }
      }
    }
    return mine[signs.indexOf(Math.max(0, ...signs))];
  }

  function counts(moment: string, reading: Reading): boolean {
    const has = having(moment, reading);
    if (has === null || (itself !== undefined && has(itself))) return true;
    if (!worked) return false;
    return atlas.causeOf.some((cause, p) => (isOwn[cause] || isSound[cause]) === true && has(p));
  }

  return decisions.map((decision): Decision => {
    worked ||= decision.kind === 'work';
    if (!('seen' in decision)) return decision;
    const seen = decision.seen.map(
      (one): Seen => ({
        ...one,
        readings: one.readings.filter((reading) => counts(one.moment, reading)),
      }),
    );
    return { ...decision, seen };
  });
}
