/** What an item and an answer to it say, as plain text in the reader's units. */
import { say } from '../../i18n/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import type { Item, Response, Statement } from '../../quiz/index.ts';
import { type Names, quantityText, statementWords } from '../../wording/index.ts';
import { settings } from '../settings/settings.ts';
import { knownItem } from './item-maker.ts';

const NO_NAMES: Names = { testPoints: [], inputs: [], channels: [] };

/** What the plant of an item calls its things, as they came with it. */
export function namesOf({ id }: Item): Names {
  const known = knownItem(id);
  return known?.ok === true ? known.names : NO_NAMES;
}

export function itemAsks(item: Item, units: UnitSystem = unitsNow()): string {
  return statementWords(item.stem.asks, namesOf(item), units);
}

export function responseWords(
  item: Item,
  response: Response,
  units: UnitSystem = unitsNow(),
): string {
  const words = (statement: Statement | undefined) =>
    statement === undefined ? '' : statementWords(statement, namesOf(item), units);
  switch (response.is) {
    case 'choice':
      return item.answer === 'choice' || item.answer === 'spot'
        ? words(item.options[response.option]?.says)
        : '';
    case 'order':
      return item.answer === 'order'
        ? response.order
            .map((place, i) =>
              say('quiz.respond.numbered', { n: i + 1, what: words(item.steps[place]?.says) }),
            )
            .join(' ')
        : '';
    case 'number':
      return item.answer === 'number' ? quantityText(response.value, item.of, units) : '';
  }
}

function unitsNow(): UnitSystem {
  return settings.read().units;
}
