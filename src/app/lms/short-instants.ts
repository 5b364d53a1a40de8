/** Instants in a text of JSON as time since the first of them: they are most of what does not repeat in it. */

const INSTANT = /"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z)"/g;
const SHORT = /"~(-?[0-9a-z]+)"/g;
/** Of the first instant, which is left as it is. */
const FIRST = /"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z)"/;
const BASE = 36;

/** Null where there is nothing to shorten, or it could not be undone. */
export function shortInstants(text: string): string | null {
  const first = FIRST.exec(text)?.[1];
  if (first === undefined) return null;
  const fromMs = Date.parse(first);
  let isFirst = true;
  const short = text.replace(INSTANT, (whole, instant: string) => {
    if (isFirst) {
      isFirst = false;
      return whole;
    }
    return `"~${(Date.parse(instant) - fromMs).toString(BASE)}"`;
  });
  return longInstants(short) === text ? short : null;
}

export function longInstants(text: string): string {
  const first = FIRST.exec(text)?.[1];
  if (first === undefined) return text;
  const fromMs = Date.parse(first);
  return text.replace(SHORT, (whole, since: string) => {
    const atMs = fromMs + Number.parseInt(since, BASE);
    const at = new Date(atMs);
    return Number.isNaN(at.getTime()) ? whole : `"${at.toISOString()}"`;
  });
}
