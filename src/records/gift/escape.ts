/** Text as it may stand in a GIFT file. */
import { withoutForbidden } from '../plain-text.ts';

/**
 * What the format reads as its own gets a backslash before it, a line end becomes `\n`. White space
 * at the ends falls away, as it does where the file is read.
 */
export function giftWords(text: string): string {
  return (
    withoutForbidden(text)
      .trim()
      .replace(/[\\~=#{}:]/g, (one) => `\\${one}`)
      .replace(/\r\n|[\r\n]/g, '\\n')
      // No escape is known for the sign between the halves of a pair.
      .replaceAll('->', '→')
  );
}

/**
 * An answer of several. Left bare, a percentage at its beginning would be read as its weight, a
 * word in brackets as its format.
 */
export function giftAnswer(text: string, isRight: boolean): string {
  const said = giftWords(text);
  const weight = said.startsWith('%') ? (isRight ? '%100%' : '%0%') : '';
  return `${isRight ? '=' : '~'}${weight}${bracketsHeld(said)}`;
}

/** For a comment or a heading of the file, where nothing is escaped. */
export function oneLine(text: string): string {
  return withoutForbidden(text).replace(/\s+/g, ' ').trim();
}

export function bracketsHeld(said: string): string {
  return said.startsWith('[') ? `[plain]${said}` : said;
}
