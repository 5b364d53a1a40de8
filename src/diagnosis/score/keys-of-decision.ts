import { LOCKED_OUT, STANDING } from '../observe/moment.ts';
import type { CaseTables } from './case-tables.ts';
import type { Decision } from './decision.ts';
import { isStepOfStart, WATCH_A_START } from './questions-of-starts.ts';

type Looking = Extract<Decision, { readonly kind: 'check' | 'watch' }>;

/** What was asked of the plant, as far as the atlas knows of it. */
export interface Asked {
  /** Places of keys, rising. */
  readonly keys: readonly number[];
  readonly check: string;
  /** At which something was read. */
  readonly moments: readonly string[];
  /** Kept up through a start, which ends where it ends. */
  readonly throughStart: boolean;
}

/**
 * What was asked, free of what came of it: a tool that hangs on during a start would have read every
 * step from where it was put there, wherever this start happened to end.
 */
export function askedBy(tables: CaseTables, decision: Looking): Asked {
  const check = decision.kind === 'check' ? decision.check : WATCH_A_START;
  const moments = [...new Set(decision.seen.map(({ moment }) => moment))];
  const steps = moments.filter(isStepOfStart);
  const throughStart = steps.length > 0 && moments.length > 1;
  const checks = new Set([
    check,
    ...decision.seen.flatMap(({ readings }) => readings.map((reading) => reading.check)),
  ]);
  const wanted = (keyCheck: string, moment: string) => {
    // Where the start ended is what came of it; where it began was there before.
    if (throughStart && moment === LOCKED_OUT) return moments[0] === LOCKED_OUT;
    if (moments.includes(moment)) return true;
    if (throughStart && isStepOfStart(moment)) return isFrom(tables, steps, moment);
    // What hangs on no step is read at any.
    return moment === STANDING && moments.length > 0 && keyCheck !== WATCH_A_START;
  };
  const keys: number[] = [];
  for (const one of checks) {
    for (const moment of tables.momentsOf.get(one) ?? []) {
      if (wanted(one, moment)) keys.push(...(tables.keysAt.get(`${one}@${moment}`) ?? []));
    }
  }
  return { keys: keys.sort((a, b) => a - b), check, moments, throughStart };
}

/** Not before the first step that was seen. */
function isFrom({ atlas }: CaseTables, steps: readonly string[], moment: string): boolean {
  const reached = (one: string) => atlas.reachedS[one] ?? Number.POSITIVE_INFINITY;
  const first = Math.min(...steps.map(reached));
  return !Number.isFinite(first) || reached(moment) >= first;
}
