/** What an item says, as plain text in the reader's units. */
import type { Item } from '../../quiz/index.ts';
import { type Names, statementWords } from '../../wording/index.ts';
import { settings } from '../settings/settings.ts';
import { knownItem } from './item-maker.ts';

const NO_NAMES: Names = { testPoints: [], inputs: [], channels: [] };

/** What the plant of an item calls its things, as they came with it. */
export function namesOf({ id }: Item): Names {
  const known = knownItem(id);
  return known?.ok === true ? known.names : NO_NAMES;
}

export function itemAsks(item: Item): string {
  return statementWords(item.stem.asks, namesOf(item), settings.read().units);
}
