import { readFileSync } from 'node:fs';

/** A table that tests/reference/make_tables.py made, from the equations alone. */
export function readTable<T>(name: string): T {
  const path = new URL(`../../reference/tables/${name}.json`, import.meta.url);
  return (JSON.parse(readFileSync(path, 'utf8')) as { table: T }).table;
}
