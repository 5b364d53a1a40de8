import type { ParameterTable, Values } from '../../src/quantity/index.ts';

/** Values of a table from the few that matter to a test; the rest from the table's own defaults. */
export function fillDefaults<T extends ParameterTable>(
  table: T,
  given: Partial<Values<T>>,
): Values<T> {
  const filled: Record<string, unknown> = {};
  for (const [key, parameter] of Object.entries(table)) {
    const fallback = 'default' in parameter ? parameter.default : undefined;
    const value = (given as Record<string, unknown>)[key] ?? fallback;
    if (value === undefined) throw new Error(`${key} has no default and is not given`);
    if (typeof value === 'number' && parameter.kind === 'number') {
      if (value < parameter.min || value > parameter.max) {
        throw new RangeError(`${key} = ${value} outside ${parameter.min}…${parameter.max}`);
      }
    }
    filled[key] = value;
  }
  return filled as Values<T>;
}
