import type { Belief } from './belief.ts';
import { causeShares, sharesOf } from './belief.ts';
import type { Particles } from './particles.ts';

export interface Suspect {
  /** Null: nothing is wrong. */
  readonly fault: string | null;
  readonly share: number;
}

/** Causes by their posterior, the likeliest first; ties in the order of the catalogue. */
export function rankedSuspects(particles: Particles, belief: Belief): readonly Suspect[] {
  const shares = causeShares(particles, sharesOf(belief));
  return particles.causes
    .map(({ fault }, cause) => ({ fault, share: shares[cause] as number }))
    .sort((a, b) => b.share - a.share);
}

/** The same by what `nameOf` calls them: a component, a part that is mended. */
export function suspectsBy(
  suspects: readonly Suspect[],
  nameOf: (fault: string | null) => string | null,
): readonly { readonly name: string; readonly share: number }[] {
  const sums = new Map<string, number>();
  for (const { fault, share } of suspects) {
    const name = nameOf(fault);
    if (name !== null) sums.set(name, (sums.get(name) ?? 0) + share);
  }
  return [...sums].map(([name, share]) => ({ name, share })).sort((a, b) => b.share - a.share);
}
