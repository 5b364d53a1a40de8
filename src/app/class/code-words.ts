import { isMessage, say, slugOf } from '../../i18n/index.ts';

/** In two groups, as it is read aloud. */
export function codeText(code: string): string {
  return `${code.slice(0, 3)} ${code.slice(3)}`.trim();
}

/** The sentence of an error or refusal of a class. */
export function errorText(error: string): string {
  for (const code of [`class.error.${slugOf(error)}`, `class.refusal.${slugOf(error)}`]) {
    if (isMessage(code)) return say(code);
  }
  return error;
}
