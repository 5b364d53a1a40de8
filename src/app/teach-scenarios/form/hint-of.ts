import { isMessage, say } from '../../../i18n/index.ts';
import type { FileSchema } from '../file-schema.ts';

/** What a schema says of a field; where the language has its own words for that, in these. */
export function hintOf({ description, unit }: FileSchema): string | undefined {
  if (description === undefined || description === '') return undefined;
  const code = `author.hint.${description}`;
  const said = isMessage(code) ? say(code) : withoutUnit(description, unit);
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

/** It stands beside the field. */
function withoutUnit(description: string, unit = ''): string {
  const tail = `, ${unit}`;
  return description.endsWith(tail) ? description.slice(0, -tail.length) : description;
}
