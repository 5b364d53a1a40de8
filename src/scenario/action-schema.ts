import { z } from 'zod';
import { ACTION_TABLES, type ActionType, type TimedAction } from '../engine/index.ts';
import { number } from '../quantity/index.ts';
import { MAX_RUN_S } from './bounds.ts';
import { numberSchema, shapeFromTable } from './schema-from-table.ts';
import { placeSchema } from './wiring-schema.ts';

const LEAD = 'a wire or a terminal of the ladder';

export const ACTION_TYPES = Object.keys(ACTION_TABLES) as [ActionType, ...ActionType[]];

export function timeSchema(doc: string): z.ZodNumber {
  return numberSchema(number('s', 0, MAX_RUN_S, doc));
}

/** One action with its time; `timeKey` and `typeKey` are the words that the file uses for these two. */
function actionSchema(timeKey: string, typeKey: string): z.ZodType {
  const options = ACTION_TYPES.map((type) =>
    z.strictObject({
      [timeKey]: timeSchema('when, from the start of the run'),
      [typeKey]: z.literal(type),
      ...shapeFromTable(ACTION_TABLES[type]),
      ...placesOf(type),
    }),
  );
  return z.discriminatedUnion(typeKey, options as never);
}

/** Leads are put to wires and terminals, whose names have dots and colons; a look may have no place. */
function placesOf(type: ActionType): z.core.$ZodLooseShape {
  if (type === 'jumper') return { from: placeSchema(LEAD), to: placeSchema(LEAD) };
  if (type !== 'check') return {};
  const place = z
    .string()
    .regex(/^[A-Za-z0-9 .:'-]*$/)
    .max(64)
    .meta({ description: 'where; empty when it has no place' });
  return { place, other: place };
}

type Renamed<A> = A extends TimedAction
  ? { at: A['t']; do: A['type'] } & { -readonly [K in Exclude<keyof A, 't' | 'type'>]: A[K] }
  : never;
/** An action as a scenario writes it: `{ at: 5, do: call-for-heat, on: true }`. */
export type ScriptedAction = Renamed<TimedAction>;

export const scriptedActionSchema = actionSchema('at', 'do') as z.ZodType<ScriptedAction>;

export const MAX_ACTIONS = 1000;

/** An action log, as the engine keeps it: `{ t: 5, type: call-for-heat, on: true }`. */
export const actionLogSchema = z
  .array(actionSchema('t', 'type') as z.ZodType<TimedAction>)
  .max(MAX_ACTIONS)
  .meta({ title: 'Flamewright action log' });
