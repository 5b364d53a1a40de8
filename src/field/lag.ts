/** Below what any instrument of a plant resolves, in whatever unit. */
const SETTLED = 1e-9;

/**
 * One step of a first-order lag: dy/dt = (u − y)/τ, solved implicitly, so any step is stable.
 * The last billionth is given to it: an endless approach would never let a device come to rest.
 *
 * @param gain `lagGain` of the lag and the step
 */
export function followWithLag(value: number, towards: number, gain: number): number {
  const ahead = towards - value;
  return ahead < SETTLED && ahead > -SETTLED ? towards : value + ahead * gain;
}

export function lagGain(lagS: number, stepS: number): number {
  return stepS / (lagS + stepS);
}
