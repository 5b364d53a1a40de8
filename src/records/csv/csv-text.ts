/** A table as text by RFC 4180, harmless when a spreadsheet opens it. */

/** Null is an empty cell; so is a number that is none. */
export type CsvCell = string | number | null;

/**
 * With these a spreadsheet begins a formula, the full-width forms included, or drops what stands
 * before one.
 */
const BEGINS_FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;
const NEEDS_QUOTES = /[",\r\n]/;
const END_OF_RECORD = '\r\n';

/**
 * A text that could be taken for a formula gets an apostrophe before it, which spreadsheets read
 * as "this is text". Numbers do not: digits with a sign can call nothing, and an apostrophe would
 * make −3.2 a word that no column can be summed over. So a negative number must come as a number.
 */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${recordOf(row)}${END_OF_RECORD}`).join('');
}

function recordOf(row: readonly CsvCell[]): string {
  const fields = row.map(fieldOf);
  // Else a lone empty cell would be an empty line, which is no record.
  return fields.length === 1 && fields[0] === '' ? '""' : fields.join(',');
}

function fieldOf(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const safe = BEGINS_FORMULA.test(cell) ? `'${cell}` : cell;
  return NEEDS_QUOTES.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
