import type { z } from 'zod';

/** Where in what was sent the first mistake is, and what is wrong there. */
export function placeInBody(error: z.ZodError): {
  readonly where: string;
  readonly detail: string;
} {
  const [first] = error.issues;
  return { where: (first?.path ?? []).join('.'), detail: first?.message ?? '' };
}
