import { say } from '../../i18n/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import {
  type ItemsInWords,
  RESULT_COLUMNS,
  type ResultColumn,
  type ResultWords,
} from '../../records/index.ts';

/** @param items questions at hand; answers to others stand without words */
export function resultWords(items: ItemsInWords, units: UnitSystem): ResultWords {
  const columns = Object.fromEntries(
    RESULT_COLUMNS.map((column) => [column, say(`quiz.column.${column}`)]),
  ) as Record<ResultColumn, string>;
  return { columns, units, items };
}
