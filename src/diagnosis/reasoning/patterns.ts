/**
 * Ways in which the particles of one cause fall apart over the answers of a question. The same few come
 * up in question after question, so that each is worked out once for a belief.
 */
export interface Patterns {
  readonly count: number;
  /** Of each pattern, the cause and how many answers the question has. */
  readonly cause: Uint16Array;
  readonly answers: Uint16Array;
  /** First group of each pattern, and one past the last: particles that answer alike. */
  readonly firstGroup: Uint32Array;
  /** First place in `particles` of each group, and one past the last. */
  readonly firstPlace: Uint32Array;
  /** Particles, group by group. */
  readonly particles: Uint16Array;
}

/** What one belief has of every pattern. */
export interface PatternSums {
  /** Share of each group. */
  readonly groups: Float64Array;
  /** Of each pattern, what its groups add to a sum over answers. */
  readonly terms: Float64Array;
}

export interface PatternBook {
  /**
   * Place of the pattern that particles `from` to `to` − 1 of a cause make.
   *
   * @param answerOfGroup takes the answers of its groups, in the order of the groups
   */
  place(
    cause: number,
    from: number,
    to: number,
    column: Uint16Array,
    answers: number,
    answerOfGroup: number[],
  ): number;
  close(): Patterns;
}

export function createPatternBook(): PatternBook {
  const places = new Map<string, number>();
  const causes: number[] = [];
  const counts: number[] = [];
  const firstGroup = [0];
  const firstPlace = [0];
  const particles: number[] = [];
  return {
    place(cause, from, to, column, answers, answerOfGroup) {
      const own: number[] = [];
      let name = `${cause} ${answers} `;
      for (let p = from; p < to; p++) {
        const answer = column[p] as number;
        let group = own.indexOf(answer);
        if (group < 0) group = own.push(answer) - 1;
        name += String.fromCharCode(group);
      }
      answerOfGroup.push(...own);
      const known = places.get(name);
      if (known !== undefined) return known;
      places.set(name, causes.length);
      counts.push(answers);
      for (const answer of own) {
        for (let p = from; p < to; p++) if (column[p] === answer) particles.push(p);
        firstPlace.push(particles.length);
      }
      firstGroup.push(firstPlace.length - 1);
      return causes.push(cause) - 1;
    },
    close: () => ({
      count: causes.length,
      cause: Uint16Array.from(causes),
      answers: Uint16Array.from(counts),
      firstGroup: Uint32Array.from(firstGroup),
      firstPlace: Uint32Array.from(firstPlace),
      particles: Uint16Array.from(particles),
    }),
  };
}

/**
 * @param ofCause share of each cause
 * @param term of a group's share, its cause's share and the number of answers
 */
export function sumPatterns(
  patterns: Patterns,
  shares: Float64Array,
  ofCause: Float64Array,
  term: (group: number, cause: number, answers: number) => number,
): PatternSums {
  const { count, cause, answers, firstGroup, firstPlace, particles } = patterns;
  const groups = new Float64Array(firstPlace.length - 1);
  const terms = new Float64Array(count);
  for (let pattern = 0; pattern < count; pattern++) {
    const from = firstGroup[pattern] as number;
    const to = firstGroup[pattern + 1] as number;
    const share = ofCause[cause[pattern] as number] as number;
    const all = answers[pattern] as number;
    let sum = (all - (to - from)) * term(0, share, all);
    for (let group = from; group < to; group++) {
      let here = 0;
      const end = firstPlace[group + 1] as number;
      for (let at = firstPlace[group] as number; at < end; at++) {
        here += shares[particles[at] as number] as number;
      }
      groups[group] = here;
      sum += term(here, share, all);
    }
    terms[pattern] = sum;
  }
  return { groups, terms };
}
