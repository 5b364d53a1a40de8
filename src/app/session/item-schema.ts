/** A quiz item as it comes through the page's door. The worker that made it knows the engine's words. */
import { z } from 'zod';
import type { Skill } from '../../../machines/job/index.ts';
import type { Told } from '../../diagnosis/index.ts';
import type { FaultOnset, TimedAction } from '../../engine/index.ts';
import { QUANTITY_KINDS } from '../../quantity/index.ts';
import type { Item, ItemKind, Statement, Term } from '../../quiz/index.ts';

const word = z.string().max(200);
/** What an author wrote, at its longest. */
const text = z.string().max(4000);
const timeS = z.number().min(0);
const place = z.number().int().min(0);

/** Written out: the page does not load what makes items to check its words. */
const KINDS = [
  'cause',
  'where',
  'next check',
  'ruled out',
  'what follows',
  'order',
  'calculation',
  'conduct',
] as const satisfies readonly ItemKind[];

const toldSchema = z.object({
  check: word,
  moment: word,
  aspect: word,
  value: z.union([z.number(), word]),
  word,
}) satisfies z.ZodType<Told>;

const statementSchema: z.ZodType<Statement> = z.lazy(() =>
  z.object({ code: word, with: z.record(word, termSchema).exactOptional() }),
);
const termSchema: z.ZodType<Term> = z.lazy(() =>
  z.union([
    text,
    z.number(),
    z.discriminatedUnion('is', [
      z.object({ is: z.literal('cause'), fault: word.nullable() }),
      z.object({ is: z.literal('part'), part: word }),
      z.object({ is: z.literal('check'), check: word, moment: word }),
      z.object({ is: z.literal(['reading', 'said']), told: toldSchema }),
      z.object({ is: z.literal('amount'), value: z.number(), of: z.enum(QUANTITY_KINDS) }),
      z.object({ is: z.literal('step'), step: word }),
      z.object({
        is: z.literal('word'),
        of: word,
        word,
        suffix: word.exactOptional(),
      }),
      z.object({ is: z.literal('place'), place: word, tool: word }),
      z.object({ is: z.literal('statement'), statement: statementSchema }),
      z.object({ is: z.literal('list'), of: z.array(termSchema) }),
    ]),
  ]),
) as unknown as z.ZodType<Term>;

const runSchema = z.object({
  plant: word,
  tolerances: place,
  faults: z.array(
    z.object({
      fault: word,
      severity: z.number(),
      onset: z.looseObject({ kind: word }) as unknown as z.ZodType<FaultOnset>,
    }),
  ),
  /** The worker lets a run in again by its full schema; here each only has to be an action. */
  actions: z.array(z.looseObject({ t: timeS, type: word }) as unknown as z.ZodType<TimedAction>),
  untilS: timeS,
});

const optionShape = {
  says: statementSchema,
  why: z.array(statementSchema),
  share: z.number().nullable(),
  decidedBy: toldSchema.nullable(),
  atS: timeS.nullable(),
  run: runSchema.exactOptional(),
};
const option = z.object(optionShape);

const baseShape = {
  id: word,
  kind: z.enum(KINDS),
  plant: word,
  topic: word,
  skills: z.array(word as unknown as z.ZodType<Skill>),
  difficulty: z.number(),
  stem: z.object({
    tells: z.array(statementSchema),
    asks: statementSchema,
    readings: z.array(toldSchema),
    shows: z.object({ chart: z.boolean(), trends: z.array(word) }),
  }),
  run: runSchema.nullable(),
  caution: statementSchema.nullable(),
};

export const itemSchema: z.ZodType<Item> = z
  .discriminatedUnion('answer', [
    z.object({
      ...baseShape,
      answer: z.literal('choice'),
      options: z.array(option).min(2),
      key: place,
    }),
    z.object({
      ...baseShape,
      answer: z.literal('spot'),
      options: z.array(z.object({ ...optionShape, spot: word })).min(2),
      key: place,
    }),
    z.object({
      ...baseShape,
      answer: z.literal('order'),
      steps: z.array(option).min(2),
      key: z.array(place),
    }),
    z.object({
      ...baseShape,
      answer: z.literal('number'),
      key: z.number(),
      tolerance: z.number().min(0),
      toleranceAbs: z.number().min(0).exactOptional(),
      of: z.enum(QUANTITY_KINDS),
      working: z.array(statementSchema),
      mistakes: z.array(z.object({ value: z.number(), why: statementSchema })).exactOptional(),
    }),
  ])
  .refine(keyIsThere, { error: 'the key names what is not there' });

/** A right answer that cannot be given is no item. */
function keyIsThere(item: Item): boolean {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return item.key < item.options.length;
    case 'order':
      return (
        item.key.length === item.steps.length &&
        item.steps.every((_, step) => item.key.includes(step))
      );
    case 'number':
      return true;
  }
}
