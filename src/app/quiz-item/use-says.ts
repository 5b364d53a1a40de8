import { useMemo } from 'react';
import type { Item, Statement } from '../../quiz/index.ts';
import { statementWords } from '../../wording/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { namesOf } from './item-words.ts';

/** How the statements of an item are said, in the reader's units. */
export function useSays(item: Item): (statement: Statement) => string {
  const { units } = useStore(settings);
  return useMemo(() => {
    const names = namesOf(item);
    return (statement) => statementWords(statement, names, units);
  }, [item, units]);
}
