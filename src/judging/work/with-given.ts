import type { LearnerLibrary } from '../../scenario/index.ts';

/** An instructor's own plants, exercises and what they stand on: checked data, as a library holds them. */
export type GivenLibrary = Partial<LearnerLibrary>;

/** The library with what is given laid over it: of two with one id the given one stands. */
export function withGiven(library: LearnerLibrary, given: GivenLibrary): LearnerLibrary {
  return {
    plants: laidOver(library.plants, given.plants),
    profiles: laidOver(library.profiles, given.profiles),
    scenarios: laidOver(library.scenarios, given.scenarios),
    jobs: laidOver(library.jobs, given.jobs),
    drills: laidOver(library.drills, given.drills),
    lessons: laidOver(library.lessons, given.lessons),
    quizzes: laidOver(library.quizzes, given.quizzes),
  };
}

function laidOver<T extends { readonly id: string }>(
  below: readonly T[],
  above: readonly T[] = [],
): readonly T[] {
  return [...below.filter(({ id }) => !above.some((one) => one.id === id)), ...above];
}
