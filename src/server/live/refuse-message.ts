import type { z } from 'zod';

const MOST_CHARACTERS = 300;

/** The first place in a message that is not as it must be, and why. */
export function whereOf(error: z.ZodError): string {
  const [first] = error.issues;
  if (first === undefined) return '';
  const place = first.path.map(String).join('.');
  return `${place === '' ? '' : `${place}: `}${first.message}`.slice(0, MOST_CHARACTERS);
}
