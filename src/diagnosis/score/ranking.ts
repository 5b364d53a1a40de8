/** Checks that could be made now, by their worth. */
import { LOCKED_OUT, STANDING } from '../observe/moment.ts';
import { checkName } from '../observe/reading.ts';
import { REDUNDANT_BITS } from '../reasoning/gain.ts';
import { type RankedCheck, rankChecks } from '../reasoning/rank-checks.ts';
import type { Ask, CaseTables } from './case-tables.ts';
import type { Knowing } from './follow-belief.ts';
import { WATCH_A_START } from './questions-of-starts.ts';
import type { Outlook } from './shares-of-parts.ts';

export interface RankedAsk extends Omit<RankedCheck, 'question'> {
  readonly ask: Ask;
}

/** Of what an ask can be answered with, so much has to be known for it to be done with. */
const DONE_SHARE = 0.5;

/** The best gain for its cost first; without what was done already or is worth nothing. */
export function rankAsks(
  tables: CaseTables,
  { belief }: Outlook,
  { known, works }: Pick<Knowing, 'known' | 'works'>,
): readonly RankedAsk[] {
  const seen = new Set<number>();
  // After work the lockout is one of the old plant, until a start shows another.
  const isOver = works > 0 && ![...known.values()].some(({ moment }) => moment === LOCKED_OUT);
  for (const { observations } of known.values()) for (const { key } of observations) seen.add(key);
  const open = tables.permitted.filter(({ question, reached }) => {
    if (isShown(question) || (isOver && isOfLockout(question))) return false;
    const count = reached.filter((key) => seen.has(key)).length;
    return reached.length > 0 && count < DONE_SHARE * reached.length;
  });
  const costOf = (question: Ask['question']) => tables.askOf.get(question)?.cost ?? 1;
  return rankChecks(
    tables.atlas,
    belief,
    open.map(({ question }) => question),
    costOf,
  ).flatMap(({ question, bits, cost }) => {
    const ask = tables.askOf.get(question);
    return ask === undefined || bits < LEAST_BITS ? [] : [{ ask, bits, cost }];
  });
}
const LEAST_BITS = 1e-6;

/** Where a start ended is before everybody's eyes. */
function isShown({ check, moment }: Ask['question']): boolean {
  return check === WATCH_A_START && (moment === STANDING || moment === LOCKED_OUT);
}

function isOfLockout({ check, moment }: Ask['question']): boolean {
  return moment === LOCKED_OUT || check === checkName('history');
}

/** Minutes that a bit costs at the least. */
export function priceOfBit(ranked: readonly RankedAsk[]): number {
  const best = ranked[0];
  return best === undefined ? 0 : best.cost / best.bits;
}

export function worthAsking(ranked: readonly RankedAsk[]): readonly RankedAsk[] {
  return ranked.filter(({ bits }) => bits >= REDUNDANT_BITS);
}
