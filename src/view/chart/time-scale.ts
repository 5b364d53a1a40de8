/** How seconds of the run lie on the width of the chart. */
export interface TimeScale {
  readonly lengthS: number;
  readonly pxPerS: number;
}

const SHORTEST_S = 120;
/** Room kept free ahead of now when the run outgrows the chart. */
const AHEAD_SHARE = 0.25;
const STEP_S = 30;

/** Length of the time axis: long enough for what is expected, and longer in strides as the run outgrows it. */
export function lengthFor(current: number, nowS: number, expectedEndS: number): number {
  const needed = Math.max(SHORTEST_S, expectedEndS, nowS);
  if (current >= needed && current < needed * 2) return current;
  const wanted = nowS >= expectedEndS ? needed * (1 + AHEAD_SHARE) : needed * 1.02;
  return Math.max(SHORTEST_S, Math.ceil(wanted / STEP_S) * STEP_S);
}

const NICE_S = [5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200];

/** Times of the grid, no closer than `leastPx`. */
export function gridTimes(scale: TimeScale, leastPx: number): number[] {
  const step = NICE_S.find((s) => s * scale.pxPerS >= leastPx) ?? NICE_S[NICE_S.length - 1];
  const times: number[] = [];
  for (let t = 0; t <= scale.lengthS; t += step) times.push(t);
  return times;
}

/** `1:07`, or `1:02:07` from an hour on. */
export function gridText(tS: number): string {
  const whole = Math.round(tS);
  const seconds = String(whole % 60).padStart(2, '0');
  const minutes = Math.floor(whole / 60) % 60;
  const hours = Math.floor(whole / 3600);
  return hours > 0
    ? `${hours}:${String(minutes).padStart(2, '0')}:${seconds}`
    : `${minutes}:${seconds}`;
}
