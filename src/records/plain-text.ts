/** Everything but tab, line ends and the characters that XML 1.0 allows (section 2.2). */
const FORBIDDEN = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;

/** Without control characters and halves of pairs, which no file of text can hold. */
export function withoutForbidden(text: string): string {
  return text.replace(FORBIDDEN, '');
}
