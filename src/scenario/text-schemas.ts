import { z } from 'zod';
import { EXPECTED } from './expectation.ts';
import { phrase } from './phrase.ts';

export const MAX_PARAGRAPH = 2000;
const MAX_TITLE = 80;
const MAX_LINE = 300;

/** How a file is called by other files: lower-case words joined by hyphens. */
export function idSchema(description: string): z.ZodString {
  return z
    .string()
    .regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/)
    .max(64)
    .meta({ description })
    .register(EXPECTED, { phrase: phrase('expected.id') });
}

export function titleSchema(description: string): z.ZodString {
  return z
    .string()
    .min(1)
    .max(MAX_TITLE)
    .meta({ description })
    .register(EXPECTED, { phrase: phrase('expected.line', { max: MAX_TITLE }) });
}

export function lineSchema(description: string): z.ZodString {
  return z
    .string()
    .min(1)
    .max(MAX_LINE)
    .meta({ description })
    .register(EXPECTED, { phrase: phrase('expected.line', { max: MAX_LINE }) });
}

export function paragraphSchema(description: string): z.ZodString {
  return z
    .string()
    .min(1)
    .max(MAX_PARAGRAPH)
    .meta({ description })
    .register(EXPECTED, { phrase: phrase('expected.paragraph', { max: MAX_PARAGRAPH }) });
}
