import type { Item, Option } from '../item/item.ts';
import type { Statement } from '../item/statement.ts';

/**
 * What an item asks for, as a text: two of which it is the same are one question in other numbers. Of
 * a calculation the numbers are the question.
 */
export function sameItemName(item: Item): string {
  const { kind, plant, stem } = item;
  const readings = stem.readings
    .map(({ check, moment, aspect, word }) => `${check}@${moment}#${aspect}=${word}`)
    .sort();
  return JSON.stringify([kind, plant, stem.asks, askedIn(item), readings]);
}

function askedIn(item: Item): readonly unknown[] {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return [says(item.options[item.key]), item.options.map(says).sort()];
    case 'order':
      return item.key.map((place) => says(item.steps[place]));
    case 'number':
      return [item.key, item.stem.tells];
  }
}

function says(option: Option | undefined): string {
  return JSON.stringify(option === undefined ? null : withoutNumbers(option.says));
}

/** A reading is known by its word; the number beside it differs from plant to plant. */
function withoutNumbers(statement: Statement): unknown {
  return JSON.parse(JSON.stringify(statement), (key, value) =>
    key === 'value' ? undefined : value,
  );
}
