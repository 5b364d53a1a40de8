/** Entries of the desk log as they come through a door: a saved record, an imported file, the worker's mail. */
import { z } from 'zod';
import type { DeskEntry, Guidance, HintRung } from '../../../machines/job/index.ts';

const t = z.number().min(0);
const name = z.string().max(200);
/** What someone wrote; longer than anyone writes by hand, short enough not to fill the device. */
const text = z.string().max(4000);
const index = z.number().int().min(0);
/** Written out: the page's first load has no use for the charts that they come with. */
const GUIDANCE = ['guided', 'practice', 'assessment'] as const satisfies readonly Guidance[];
const RUNGS = [0, 1, 2, 3] as const satisfies readonly HintRung[];

export const deskEntrySchema: z.ZodType<DeskEntry> = z.discriminatedUnion('type', [
  z.strictObject({
    t,
    type: z.literal('arrive'),
    tools: z.array(name),
    guidance: z.enum(GUIDANCE).exactOptional(),
  }),
  z.strictObject({ t, type: z.literal('begin') }),
  z.strictObject({ t, type: z.literal('ask'), topic: name }),
  z.strictObject({ t, type: z.literal('read sheet') }),
  z.strictObject({
    t,
    type: z.literal('pin'),
    what: name,
    place: name,
    other: name,
    reading: text,
    step: name,
  }),
  z.strictObject({ t, type: z.literal('note'), text }),
  z.strictObject({ t, type: z.literal('suspect'), ranked: z.array(name) }),
  z.strictObject({ t, type: z.literal('hint'), rung: z.literal(RUNGS) }),
  z.strictObject({ t, type: z.literal('feedback') }),
  z.strictObject({
    t,
    type: z.literal('claim'),
    part: name,
    why: z.array(index),
    mechanism: text,
  }),
  z.strictObject({ t, type: z.literal('withdraw') }),
  z.strictObject({ t, type: z.literal('prove') }),
  z.strictObject({
    t,
    type: z.literal('hand over'),
    cause: text,
    evidence: text,
    done: text,
    watch: text,
  }),
  z.strictObject({ t, type: z.literal('close') }),
  z.strictObject({ t, type: z.literal('explain'), step: name }),
  z.strictObject({ t, type: z.literal('answer'), step: name, option: index }),
  z.strictObject({ t, type: z.literal('break'), fault: name }),
  z.strictObject({ t, type: z.literal('put back') }),
  z.strictObject({ t, type: z.literal('next') }),
]);
export const deskSchema = z.array(deskEntrySchema).max(5000);
