/** As a reader says it: letter by letter. */
export function codeSpelt(code: string): string {
  return [...code].join(' ');
}
