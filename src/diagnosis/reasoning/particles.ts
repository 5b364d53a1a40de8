/**
 * What every cause would let every check read, as particles: one simulated plant each, with its own
 * severity, tolerances and noise. Not a table of independent likelihoods, so checks that hang
 * together stay together.
 */

/** Why a plant is as it is. */
export interface Cause {
  /** A fault of the catalogue; null: nothing is wrong. */
  readonly fault: string | null;
  /** Share of field failures, relative to the other causes. */
  readonly priorWeight: number;
}

/** One thing that a check tells in one situation, and the bin in which each particle has it. */
export interface ObservationKey {
  /** `tool or sense|place|other`, as `checkName` makes it. */
  readonly check: string;
  /** A step of the start, or `lockout`, `standing`, `isolated`. */
  readonly moment: string;
  /** Which number or word of the check. */
  readonly aspect: string;
  /** Names of the bins; a place in `column` is one of these. */
  readonly bins: readonly string[];
  readonly column: Uint8Array;
}

export interface Particles {
  readonly causes: readonly Cause[];
  /** Place in `causes` of each particle; never falls from one particle to the next. */
  readonly causeOf: Uint16Array;
  /** The particle that was made of the very case, where there is one: see `afterSeeing`. */
  readonly own?: number;
  /** Those made of what is left of it once one of its faults is mended. */
  readonly ownLater?: readonly number[];
  readonly keys: readonly ObservationKey[];
}

/** What was seen: a key of the particles and the bin it fell into; -1 for one that no particle has. */
export interface Observation {
  readonly key: number;
  readonly bin: number;
}

/** First particle of each cause, and one past the last. */
export function spansOf({ causes, causeOf }: Particles): Uint32Array {
  const spans = new Uint32Array(causes.length + 1);
  let particle = 0;
  for (let cause = 0; cause < causes.length; cause++) {
    spans[cause] = particle;
    while (particle < causeOf.length && causeOf[particle] === cause) particle += 1;
  }
  spans[causes.length] = particle;
  return spans;
}
