/** What the worker that makes quiz items tells the page. What the page tells it stands in to-maker.ts. */
import { z } from 'zod';
import { QUANTITY_KINDS } from '../../quantity/index.ts';
import type { Names, StartEvent } from '../../wording/index.ts';
import { itemSchema } from './item-schema.ts';
import { testPointSchema } from './work-protocol.ts';

const word = z.string().max(200);
const timeS = z.number().min(0);

const startEventSchema: z.ZodType<StartEvent> = z.discriminatedUnion('type', [
  z.object({ t: timeS, type: z.literal('step'), step: word }),
  z.object({ t: timeS, type: z.literal(['proved', 'lost']), what: word }),
  z.object({ t: timeS, type: z.literal('lockout'), cause: word, step: word }),
  z.object({ t: timeS, type: z.literal('reset'), count: z.number() }),
]);
const namesSchema = z.object({
  testPoints: z.array(testPointSchema),
  inputs: z.array(word),
  channels: z.array(z.object({ id: word, kind: z.enum(QUANTITY_KINDS) })),
}) satisfies z.ZodType<Names>;

/** An item with what the page needs to say it in words. */
export const madeItemSchema = z.object({
  item: itemSchema,
  /** Of the plant; empty where the item is about none. */
  names: namesSchema,
  /** What the controller noted up to the end of the record; empty where there is none. */
  start: z.array(startEventSchema),
});
export type MadeItem = z.infer<typeof madeItemSchema>;

export const ITEM_TROUBLES = [
  /** Its id names no kind, or nothing that this program has. */
  'no such item',
  /** It was good once; the plant as it is now no longer bears it out. */
  'not proved any more',
  /** Neither kept on the device nor to be had: no network. */
  'atlas not loaded',
  'making broke off',
] as const;
export type ItemTrouble = (typeof ITEM_TROUBLES)[number];

export const fromMakerSchema = z.discriminatedUnion('ok', [
  z.object({
    type: z.literal('made item'),
    ask: z.number().int().min(0),
    ok: z.literal(true),
    made: madeItemSchema,
  }),
  z.object({
    type: z.literal('made item'),
    ask: z.number().int().min(0),
    ok: z.literal(false),
    trouble: z.enum(ITEM_TROUBLES),
    /** Why it was rejected, or an error's own words. */
    detail: z.string(),
  }),
]);
export type FromMaker = z.infer<typeof fromMakerSchema>;
export type ItemAnswer =
  | { readonly ok: true; readonly made: MadeItem }
  | { readonly ok: false; readonly trouble: ItemTrouble; readonly detail: string };
