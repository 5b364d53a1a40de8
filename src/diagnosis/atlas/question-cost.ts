import { type Check, checkOfWhat, TOOLS, type ToolUse } from '../../bench/index.ts';
import { AT_REST, ISOLATED, LOCKED_OUT, STANDING } from '../observe/moment.ts';
import { partsOfCheck } from '../observe/reading.ts';
import { costMinutes } from '../reasoning/cost.ts';
import type { Question } from '../reasoning/questions.ts';
import type { Atlas } from './atlas.ts';

type Asked = Pick<Question, 'check' | 'moment'>;

/** Supply off, locked, proved dead. */
const ISOLATE_MINUTES = 3;
/** Each dial is under a cover of its own. */
const DIALS_MINUTES = 6;
/** A reset, and heat called for anew. */
const CALL_MINUTES = 0.5;

/** Minutes of the work and of waiting for the plant to come to the step. */
export function questionMinutes(atlas: Atlas, { check, moment }: Asked): number {
  return (tariffOf(check)?.minutes ?? 0) + waitMinutes(atlas, moment);
}

/** The same with surcharges for what is opened and what may hurt. */
export function questionCost(atlas: Atlas, { check, moment }: Asked): number {
  const row = tariffOf(check) ?? { minutes: 0, invasive: false, risk: 'none' };
  return costMinutes(row, waitMinutes(atlas, moment));
}

/** The tool it takes; null where eyes, ears and paper are enough. */
export function toolFor(check: string): ToolUse['tool'] | null {
  const { what } = partsOfCheck(check);
  if (what === 'volts' || what === 'continuity') return 'multimeter';
  return TOOLS.find(({ id }) => id === what)?.id ?? null;
}

/** A ranking asks for the price of every question of an atlas, whose checks are few. */
const tariffs = new Map<string, Check | null>();

function tariffOf(check: string): Check | null {
  const known = tariffs.get(check);
  if (known !== undefined) return known;
  const found = findTariff(check);
  tariffs.set(check, found);
  return found;
}

function findTariff(check: string): Check | null {
  const { what, place } = partsOfCheck(check);
  if (what === 'commissioning sheet') {
    const row = checkOfWhat(what);
    return row === null ? null : { ...row, minutes: row.minutes + DIALS_MINUTES };
  }
  if (what === 'volts' || what === 'continuity') return checkOfWhat(`multimeter: ${what}`);
  return checkOfWhat(what === 'multimeter' ? 'multimeter: amps' : what, place);
}

function waitMinutes({ reachedS }: Atlas, moment: string): number {
  switch (moment) {
    case STANDING:
    case LOCKED_OUT:
      return 0;
    case AT_REST:
      return CALL_MINUTES;
    case ISOLATED:
      return ISOLATE_MINUTES;
    default:
      return CALL_MINUTES + (reachedS[moment] ?? Math.max(0, ...Object.values(reachedS))) / 60;
  }
}
