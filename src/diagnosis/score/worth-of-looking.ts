/** What it was worth to look, when it was decided, and what it cost. */
import { questionCost, questionMinutes } from '../atlas/question-cost.ts';
import { LOCKED_OUT } from '../observe/moment.ts';
import { gainBits } from '../reasoning/gain.ts';
import { type Question, questionsOf } from '../reasoning/questions.ts';
import type { CaseTables } from './case-tables.ts';
import type { Asked } from './keys-of-decision.ts';
import { nameOfAsk } from './questions-of-starts.ts';
import type { Outlook } from './shares-of-parts.ts';

const kept = new WeakMap<CaseTables, Map<string, Question | null>>();

/** All that was asked as one question; null where the atlas knows nothing of it. */
export function questionOfKeys(tables: CaseTables, keys: readonly number[]): Question | null {
  const known = kept.get(tables) ?? new Map<string, Question | null>();
  kept.set(tables, known);
  const name = keys.join();
  const before = known.get(name);
  if (before !== undefined) return before;
  const { atlas } = tables;
  const ask = sameAsk(tables, keys);
  if (ask !== null) return ask;
  const own = keys.flatMap((key) => atlas.keys[key] ?? []);
  const [question = null] =
    own.length === 0 ? [] : questionsOf({ ...atlas, keys: own }, () => 'one question');
  const made = question === null ? null : { ...question, keys };
  known.set(name, made);
  return made;
}

/** Most lookings are one of the asks that are ranked anyway. */
function sameAsk({ asks }: CaseTables, keys: readonly number[]): Question | null {
  const first = keys[0];
  const ask = asks.find(({ question }) => question.keys[0] === first);
  if (ask === undefined || ask.question.keys.length !== keys.length) return null;
  return ask.question.keys.every((key, i) => key === keys[i]) ? ask.question : null;
}

/** Expected gain, bits. */
export function worthBits(
  tables: CaseTables,
  { uncertainty }: Outlook,
  keys: readonly number[],
): number {
  const question = questionOfKeys(tables, keys);
  return question === null ? 0 : gainBits(uncertainty, question);
}

/** Minutes by tariff, with the waiting for the last of its moments. */
export function minutesOfLooking(tables: CaseTables, asked: Asked, waits: boolean): number {
  const { check, moments } = asked;
  if (!waits || moments.length === 0) return questionMinutes(tables.atlas, atOnce(check));
  return Math.max(...moments.map((moment) => questionMinutes(tables.atlas, { check, moment })));
}

/** The same with surcharges, free of luck: a start is charged as this plant's start was found to take. */
export function costOfLooking(tables: CaseTables, asked: Asked, waits: boolean): number {
  const { check, moments, throughStart } = asked;
  if (!waits || moments.length === 0) return questionCost(tables.atlas, atOnce(check));
  const ask = throughStart ? askOf(tables, asked) : undefined;
  if (ask !== undefined) return ask.cost;
  return Math.max(...moments.map((moment) => questionCost(tables.atlas, { check, moment })));
}

/** The ask of the tables that a looking is the same as, or a part of. */
export function askOf({ byName }: CaseTables, { check, moments, throughStart }: Asked) {
  const moment = throughStart
    ? moments.find((one) => nameOfAsk(check, one).endsWith('@a start'))
    : moments[0];
  return moment === undefined ? undefined : byName.get(nameOfAsk(check, moment));
}

function atOnce(check: string) {
  return { check, moment: LOCKED_OUT };
}
