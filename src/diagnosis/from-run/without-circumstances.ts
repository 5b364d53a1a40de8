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
  let worked = false;

  function counts(moment: string, { check, aspect, value }: Reading): boolean {
    const place =
      places.get(keyName(check, moment, aspect)) ?? places.get(keyName(check, STANDING, aspect));
    const key = place === undefined ? undefined : atlas.keys[place];
    if (key === undefined) return true;
    const bin = key.bins.indexOf(binName(key.band, value));
    return key.column.some((one, p) => {
      if (one !== bin) return false;
      if (p === atlas.own) return true;
      const cause = atlas.causeOf[p] as number;
      if (worked) return isOwn[cause] || isSound[cause];
      return isLoose && isOwn[cause];
    });
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
