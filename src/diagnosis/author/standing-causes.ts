import type { Atlas } from '../atlas/atlas.ts';
import type { Ask } from './asks.ts';

/**
 * Causes that nothing permitted tells from the plant of a case. One is told from it by a check on which
 * none of its plants reads as this one does, while another plant of the atlas does: what no plant but
 * this reads is a matter of its severity and of its morning, and tells nothing.
 *
 * @returns places in `causes`, without its own
 */
export function standingCauses(
  atlas: Atlas,
  permitted: readonly Ask[],
  isOwn: (cause: number) => boolean,
): readonly number[] {
  const { own, causes, causeOf } = atlas;
  if (own === undefined) return [];
  const standing = causes.map((_, cause) => !isOwn(cause));
  const agrees = new Uint8Array(causes.length);
  for (const { question } of permitted) {
    const mine = question.column[own];
    agrees.fill(0);
    let anyone = false;
    for (let p = 0; p < causeOf.length; p++) {
      if (p === own || question.column[p] !== mine) continue;
      agrees[causeOf[p] as number] = 1;
      anyone = true;
    }
    if (!anyone) continue;
    for (let cause = 0; cause < causes.length; cause++) {
      if (agrees[cause] === 0) standing[cause] = false;
    }
  }
  return [...standing.keys()].filter((cause) => standing[cause]);
}
