import type { Check } from '../../bench/index.ts';

/** What a question costs beside its minutes, in minutes: own training values. */
const INVASIVE_MINUTES = 4;
const RISK_MINUTES: Readonly<Record<Check['risk'], number>> = {
  none: 0,
  'live parts': 1,
  'open circuit': 1,
  'gas at the nipple': 1,
  'hot surfaces': 0.5,
  'moving parts': 1,
  'burner off meanwhile': 2,
};
/** A unit of parts is about an hour's wage. */
const MINUTES_A_UNIT = 60;
/** Nothing is free: reading what is before one's eyes takes a moment. */
const LEAST_MINUTES = 0.25;

/**
 * What finding out costs, in minutes: the work itself, waiting for the plant to come to the step, parts,
 * and a surcharge where something is opened or someone may come to harm.
 */
export function costMinutes(
  check: Pick<Check, 'minutes' | 'invasive' | 'risk'>,
  waitMinutes = 0,
  partsCost = 0,
): number {
  const surcharge = (check.invasive ? INVASIVE_MINUTES : 0) + RISK_MINUTES[check.risk];
  const all = check.minutes + waitMinutes + surcharge + partsCost * MINUTES_A_UNIT;
  return Math.max(LEAST_MINUTES, all);
}
