import pg from 'pg';

/** Counts and times come as numbers: none of ours goes beyond what a number holds exactly. */
const { INT8, NUMERIC } = pg.types.builtins;

/** How a value of a type is read: as the embedded database gives it. */
export function parserOf(type: number, format?: 'text' | 'binary'): (value: string) => unknown {
  if (format !== 'binary' && (type === INT8 || type === NUMERIC)) return Number;
  return pg.types.getTypeParser(type, format as 'text');
}
