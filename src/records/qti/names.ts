/** Names that QTI and XML allow: a letter or underscore, then letters, digits, `_`, `-` and `.`. */

/**
 * Different ids give different names, since what is not allowed is written as its number between
 * underscores, the underscore included.
 */
export function identifierOf(prefix: string, id: string): string {
  const said = [...id]
    .map((one) => (/[A-Za-z0-9.-]/.test(one) ? one : `_${(one.codePointAt(0) ?? 0).toString(16)}_`))
    .join('');
  return `${prefix}-${said}`;
}

/** A place in a list, from 0, as a name. */
export function optionName(place: number): string {
  return `option-${place + 1}`;
}
