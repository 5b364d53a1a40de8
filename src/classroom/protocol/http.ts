/** What is asked and answered over plain HTTP. */
import { z } from 'zod';
import { CLASS_KINDS, CLASS_PHASES, CLASS_WAYS } from '../../../machines/class/index.ts';
import { CODE_LENGTH } from './bounds.ts';
import { classWhatSchema, text } from './entry-schema.ts';

const retentionDays = z.number().int().min(1).max(3650);

export const aboutSchema = z.object({
  classes: z.literal(true),
  /** Whole addresses of the page on this network. */
  addresses: z.array(z.string()),
  /** Whether the one who asks may open classes as he is; otherwise the instructor's key is needed. */
  mayOpen: z.boolean(),
});
export type About = z.infer<typeof aboutSchema>;

export const openClassSchema = z.strictObject({
  what: classWhatSchema,
  way: z.enum(CLASS_WAYS),
  seed: z
    .number()
    .int()
    .min(0)
    .max(2 ** 31 - 1)
    .exactOptional(),
  retentionDays: retentionDays.exactOptional(),
});
export type OpenClass = z.infer<typeof openClassSchema>;

export const openedClassSchema = z.object({
  id: z.string(),
  code: z.string().length(CODE_LENGTH),
  secret: z.string(),
  projectorKey: z.string(),
});
export type OpenedClass = z.infer<typeof openedClassSchema>;

export const classLineSchema = z.object({
  id: z.string(),
  code: z.string(),
  title: text,
  kind: z.enum(CLASS_KINDS),
  way: z.enum(CLASS_WAYS),
  phase: z.enum(CLASS_PHASES),
  openedMs: z.number(),
  closedMs: z.number().nullable(),
  seats: z.number().int(),
  retentionDays,
});
export type ClassLine = z.infer<typeof classLineSchema>;

export const changeClassSchema = z.strictObject({ retentionDays });

export const httpErrorSchema = z.object({
  error: z.string(),
  detail: z.string().optional(),
  /** Where in what was sent, and what is wrong there. */
  params: z
    .object({
      where: z.string().optional(),
      detail: z.string().optional(),
      trouble: z.string().optional(),
    })
    .optional(),
});

/** What was refused, where and why, as far as it is told. */
export function httpErrorText({ error, detail, params }: z.infer<typeof httpErrorSchema>): string {
  const parts = [error, params?.where, params?.trouble, params?.detail ?? detail];
  return parts.filter(Boolean).join(', ');
}
