import { toolFor } from '../atlas/question-cost.ts';
import { type Ask, isWatching } from '../author/asks.ts';
import { partsOfCheck } from '../observe/reading.ts';
import { checksFirst } from './checks-first.ts';
import type { Learner } from './learner.ts';

/** From the start itself along the gas, the air, the spark and the flame, and the wires last. */
const ORDER: readonly RegExp[] = [
  /^watch one start/,
  /^(listen|smell)/,
  /^look\|(panel switches|limit buttons|fuses)/,
  /^look\|.*(cock|strainer|regulator|valve)/,
  /^manometer\|(inlet|strained|regulated|interspace|nozzle|pilot)/,
  /^look\|.*(air|damper|belt|fan|drive|flue|stack|room)/,
  /^manometer/,
  /^look\|.*(ignition|electrode|spark|pilot)/,
  /^look\|.*(lens|scanner|sight|flame|rod|nozzle)/,
  /^flame-signal meter/,
  /^look/,
  /^volts/,
  /^continuity/,
  /^commissioning sheet/,
];

/** The same round at every plant, whatever it shows, until one suspect stands out. */
export const fixedOrder: Learner = {
  name: 'fixed order',
  byChance: false,
  goThrough: checksFirst(() => (_, open) => {
    let first: Ask | null = null;
    for (const ask of open) {
      if (first === null || isBefore(ask, first)) first = ask;
    }
    return first;
  }),
};

function isBefore(a: Ask, b: Ask): boolean {
  const rank = rankOf(a) - rankOf(b);
  return rank < 0 || (rank === 0 && !a.inStart && b.inStart && toolFor(a.question.check) === null);
}

function rankOf(ask: Ask): number {
  if (isWatching(ask)) return -1;
  const { what, place } = partsOfCheck(ask.question.check);
  const at = ORDER.findIndex((pattern) => pattern.test(`${what}|${place}`));
  return at < 0 ? ORDER.length : at;
}
