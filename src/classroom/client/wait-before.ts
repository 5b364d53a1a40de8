const FIRST_MS = 250;
/** So that whoever lost a server is back within five seconds of another's being there. */
const SOON_MS = 3000;
const SOON_TRIES = 20;
const LATER_MS = 10_000;

/**
 * How long to wait before another try, ms; shorter by up to half at random, so that a whole class
 * does not come back in one moment.
 *
 * @param tries that have failed since it last held
 * @param random 0 to below 1
 */
export function waitBefore(tries: number, random: number): number {
  const most = tries > SOON_TRIES ? LATER_MS : SOON_MS;
  let waitMs = FIRST_MS;
  for (let n = 1; n < tries && waitMs < most; n += 1) waitMs *= 2;
  return Math.min(waitMs, most) * (1 - random / 2);
}
