export interface Effort {
  readonly checks: number;
  readonly minutes: number;
  /** Causes that stay beside the true one. */
  readonly rest: number;
  readonly faults: number;
  readonly comesAndGoes: boolean;
}

/** What a further check, a further fault and so on make a case harder by, on the scale of jobs. */
const A_CHECK = 0.2;
const A_MINUTE = 1 / 40;
const NOT_TOLD_APART = 0.5;
const A_FAULT = 2;
const COMES_AND_GOES = 1.5;

/**
 * 1 easy to 5 hard: more to combine, more time, more that stays doubtful; a second fault behind the
 * first, and one that has to be caught.
 *
 * Own weights, set by hand beside the levels that the writers of the shipped jobs gave them, and not
 * tested on others. `flamewright diagnose --all` says how far the two agree.
 */
export function difficultyOf(effort: Effort): number {
  return Math.max(1, Math.min(5, Math.round(difficultyScore(effort))));
}

/** The same, not rounded and without end. */
export function difficultyScore(effort: Effort): number {
  const { checks, minutes, rest, faults, comesAndGoes } = effort;
  return (
    1 +
    A_CHECK * checks +
    A_MINUTE * minutes +
    (rest > 0 ? NOT_TOLD_APART : 0) +
    A_FAULT * Math.max(0, faults - 1) +
    (comesAndGoes ? COMES_AND_GOES : 0)
  );
}
