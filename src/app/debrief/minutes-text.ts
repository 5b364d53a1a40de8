/** Minutes as people say them: tenths only where they are few. */
export function minutesText(minutes: number): string {
  return minutes < 10 ? String(Number(minutes.toFixed(1))) : String(Math.round(minutes));
}

/** What costs less than half a minute costs nothing worth speaking of. */
export const WORTH_SAYING_MIN = 0.5;
