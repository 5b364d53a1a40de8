import type { NumberParameter, ParameterTable, Unit } from '../quantity/index.ts';
import type { PartName } from './parts.ts';

/** One thing that a technician can set, and how it stands in the parameters. */
export interface Dial {
  readonly part: PartName;
  readonly setting: string;
  readonly unit: Unit;
  readonly min: number;
  readonly max: number;
  read(): number;
  write(value: number): void;
}

type NumberKey<T extends ParameterTable> = {
  [K in keyof T]: T[K] extends NumberParameter ? K : never;
}[keyof T];

/** A dial that is one number of a component's table, over the range that the table allows. */
export function dialOn<T extends ParameterTable, K extends NumberKey<T> & string>(
  part: PartName,
  setting: string,
  table: T,
  of: { [Key in K]: number },
  key: K,
  range: { readonly min?: number; readonly max?: number } = {},
): Dial {
  const { unit, min, max } = table[key] as NumberParameter;
  return {
    part,
    setting,
    unit,
    min: range.min ?? min,
    max: range.max ?? max,
    read: () => of[key],
    write: (value) => {
      of[key] = value;
    },
  };
}
