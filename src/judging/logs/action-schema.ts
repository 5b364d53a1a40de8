import { z } from 'zod';
import { ACTION_TABLES, type Action, type ActionType } from '../../engine/index.ts';
import type { Parameter } from '../../quantity/index.ts';

/** Every action with its own fields and no others, made from the engine's tables. */
export const actionSchema = z.union(
  (Object.keys(ACTION_TABLES) as ActionType[]).map((type) => z.strictObject(shapeOf(type))),
) as unknown as z.ZodType<Action>;

export const timedActionSchema = z.union(
  (Object.keys(ACTION_TABLES) as ActionType[]).map((type) =>
    z.strictObject({ t: z.number().min(0), ...shapeOf(type) }),
  ),
) as unknown as z.ZodType<Action & { readonly t: number }>;

function shapeOf(type: ActionType): z.ZodRawShape {
  const fields = Object.entries<Parameter>(ACTION_TABLES[type]);
  return {
    type: z.literal(type),
    ...Object.fromEntries(fields.map(([name, parameter]) => [name, fieldOf(parameter)])),
  };
}

function fieldOf(parameter: Parameter): z.ZodType {
  switch (parameter.kind) {
    case 'number':
      return z.number().min(parameter.min).max(parameter.max);
    case 'choice':
      return z.enum([...parameter.options]);
    case 'flag':
      return z.boolean();
    case 'name':
      return z.string().max(64);
    case 'series':
      return z.array(z.number().min(parameter.min).max(parameter.max));
  }
}
