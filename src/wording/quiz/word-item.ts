import { displayOf, toDisplay, type UnitSystem } from '../../quantity/index.ts';
import type { Item, NumberItem, Option, Statement, WordedItem } from '../../quiz/index.ts';
import { farthestOff } from '../../quiz/taking/index.ts';
import type { Names } from '../answer-words.ts';
import { quantityText } from '../quantity-text.ts';
import { readingWords, statementWords } from './statement-words.ts';

/**
 * All that an item says, in the reader's words and units.
 *
 * @param startLines the start as `startWords` tells it; left out where the item shows no start
 */
export function wordItem(
  item: Item,
  names: Names,
  units: UnitSystem = 'SI',
  startLines: readonly string[] = [],
): WordedItem {
  const say = (statement: Statement) => statementWords(statement, names, units);
  const option = ({ says, why }: Option) => ({ text: say(says), why: why.map(say) });
  const { id, kind, topic, stem, caution } = item;
  const base = {
    id,
    kind,
    topic,
    caution: caution === null ? null : say(caution),
    tells: stem.tells.map(say),
    start: startLines,
    readings: stem.readings.map((told) => readingWords(names, told, units)),
    asks: say(stem.asks),
  };
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return { ...base, answer: item.answer, options: item.options.map(option), key: item.key };
    case 'order':
      return { ...base, answer: 'order', steps: item.steps.map(option), key: item.key };
    case 'number':
      return {
        ...base,
        ...numberWords(item, units),
        working: item.working.map(say),
        mistakes: (item.mistakes ?? []).map(({ value, why }) => ({
          said: quantityText(value, item.of, units),
          why: say(why),
        })),
      };
  }
}

function numberWords(item: NumberItem, units: UnitSystem) {
  const { key, of } = item;
  const reach = farthestOff(item);
  const shown = (value: number) => toDisplay(value, of, units);
  return {
    answer: 'number',
    key: shown(key),
    from: shown(key - reach),
    to: shown(key + reach),
    unit: displayOf(of, units).symbol,
    said: quantityText(key, of, units),
  } as const;
}
