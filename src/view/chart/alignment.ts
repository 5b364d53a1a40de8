/** A run entered a step. */
export interface StepMark {
  readonly step: number;
  readonly tS: number;
}

/** A stretch of the expected run laid beside the actual one. */
export interface Stretch {
  readonly step: number;
  /** In the expected run's own time. */
  readonly fromS: number;
  readonly toS: number;
  /** In the actual run's time: where it begins, and where the next one takes over. */
  readonly atS: number;
  readonly untilS: number;
  readonly isFuture: boolean;
}

/**
 * The expected run aligned at the entry of every step: a step that takes longer holds what
 * was expected at its end, one that is cut short is left behind. Future steps follow on from
 * the current one, which lasts as long as expected or until now, whichever is later. Beyond
 * the end of the expected run nothing is expected, nor in a step that it does not have (a
 * lockout), nor after that.
 */
export function alignExpected(
  actual: readonly StepMark[],
  expected: readonly StepMark[],
  expectedEndS: number,
  nowS: number,
): Stretch[] {
  const stretches: Stretch[] = [];
  const endOf = (place: number): number => expected[place + 1]?.tS ?? expectedEndS;
  let place = -1;
  for (let i = 0; i < actual.length; i += 1) {
    const { step, tS } = actual[i];
    place = findStep(expected, step, place);
    if (place < 0) continue;
    const fromS = expected[place].tS;
    const toS = endOf(place);
    const nextS = actual[i + 1]?.tS;
    const ownEndS = tS + toS - fromS;
    const isLast = place === expected.length - 1;
    const untilS = isLast
      ? Math.min(nextS ?? ownEndS, ownEndS)
      : (nextS ?? Math.max(nowS, ownEndS));
    stretches.push({ step, fromS, toS, atS: tS, untilS, isFuture: false });
  }
  const known = actual.length > 0 && place >= 0;
  if (!known) return actual.length > 0 ? stretches : future(expected, endOf, 0, 0);
  const last = stretches[stretches.length - 1];
  return [...stretches, ...future(expected, endOf, place + 1, last.untilS)];
}

/** Where in the expected run a moment of the actual one stands; null where nothing is expected. */
export function expectedTimeAt(stretches: readonly Stretch[], tS: number): number | null {
  for (let i = stretches.length - 1; i >= 0; i -= 1) {
    const { fromS, toS, atS, untilS } = stretches[i];
    if (tS >= atS && tS <= untilS + END_SLACK_S) return Math.min(toS, fromS + tS - atS);
  }
  return null;
}
const END_SLACK_S = 1e-6;

/** The next entry of a step, or where it comes round again, as when a purge starts over. */
function findStep(expected: readonly StepMark[], step: number, after: number): number {
  for (let i = after + 1; i < expected.length; i += 1) if (expected[i].step === step) return i;
  for (let i = 0; i <= after && i < expected.length; i += 1) {
    if (expected[i].step === step) return i;
  }
  return -1;
}

function future(
  expected: readonly StepMark[],
  endOf: (place: number) => number,
  first: number,
  startS: number,
): Stretch[] {
  const stretches: Stretch[] = [];
  let atS = startS;
  for (let place = first; place < expected.length; place += 1) {
    const fromS = expected[place].tS;
    const toS = endOf(place);
    const untilS = atS + toS - fromS;
    stretches.push({ step: expected[place].step, fromS, toS, atS, untilS, isFuture: true });
    atS = untilS;
  }
  return stretches;
}
