import { z } from 'zod';
import type {
  NumberParameter,
  Parameter,
  ParameterTable,
  SeriesParameter,
  ValueOf,
} from '../quantity/index.ts';
import { EXPECTED } from './expectation.ts';
import { phrase } from './phrase.ts';

export type ShapeOf<T extends ParameterTable> = {
  -readonly [K in keyof T]: z.ZodType<ValueOf<T[K]>>;
};

/**
 * The schema of a parameter table: a closed group (an unknown key is an error), each
 * value within its range, defaults filled in. `more` adds keys that are no parameters,
 * such as the nodes an edge of the gas train connects.
 */
export function schemaFromTable<const T extends ParameterTable>(
  table: T,
): z.ZodObject<ShapeOf<T>, z.core.$strict>;
export function schemaFromTable<const T extends ParameterTable, M extends z.core.$ZodLooseShape>(
  table: T,
  more: M,
): z.ZodObject<ShapeOf<T> & M, z.core.$strict>;
export function schemaFromTable(table: ParameterTable, more: z.core.$ZodLooseShape = {}): unknown {
  return z.strictObject({ ...more, ...shapeFromTable(table) });
}

export function shapeFromTable<const T extends ParameterTable>(table: T): ShapeOf<T> {
  return Object.fromEntries(
    Object.entries(table).map(([key, parameter]) => [key, schemaOf(parameter)]),
  ) as ShapeOf<T>;
}

function schemaOf(parameter: Parameter): z.ZodType {
  switch (parameter.kind) {
    case 'number':
      return withDefault(numberSchema(parameter), parameter.default);
    case 'choice': {
      const words = z.enum(parameter.options as [string, ...string[]]);
      return withDefault(words.meta({ description: parameter.doc }), parameter.default);
    }
    case 'flag':
      return withDefault(z.boolean().meta({ description: parameter.doc }), parameter.default);
    case 'name':
      return withDefault(nameSchema(parameter.doc), parameter.default);
    case 'series':
      return seriesSchema(parameter);
  }
}

export function nameSchema(doc: string): z.ZodString {
  return z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9 '-]*$/)
    .max(64)
    .meta({ description: doc })
    .register(EXPECTED, { phrase: phrase('expected.name') });
}

export function numberSchema(parameter: NumberParameter | SeriesParameter): z.ZodNumber {
  const { unit, min, max, doc } = parameter;
  const description = unit === '1' ? doc : `${doc}, ${unit}`;
  return z.number().min(min).max(max).meta({ description, unit });
}

function seriesSchema(parameter: SeriesParameter): z.ZodType {
  return z
    .array(numberSchema(parameter))
    .min(parameter.minLength)
    .max(parameter.maxLength)
    .meta({ description: parameter.doc });
}

function withDefault(schema: z.ZodType, value: number | string | boolean | undefined): z.ZodType {
  return value === undefined ? schema : (schema as z.ZodAny).default(value);
}
