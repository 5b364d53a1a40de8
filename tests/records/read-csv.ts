/** A reader of RFC 4180, by its grammar alone: fields in quotes may hold anything, others nothing special. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    let field = '';
    if (text[at] === '"') {
      at++;
      for (;;) {
        if (at >= text.length) throw new Error('a quoted field does not end');
        if (text[at] === '"' && text[at + 1] === '"') {
          field += '"';
          at += 2;
        } else if (text[at] === '"') {
          at++;
          break;
        } else field += text[at++];
      }
    } else {
      while (at < text.length && text[at] !== ',' && text[at] !== '\r') {
        if (text[at] === '"' || text[at] === '\n') throw new Error(`a bare ${text[at]} at ${at}`);
        field += text[at++];
      }
    }
    row.push(field);
    if (text[at] === ',') {
      at++;
      if (at === text.length) throw new Error('the last record does not end');
    } else if (text.startsWith('\r\n', at)) {
      at += 2;
      rows.push(row);
      row = [];
    } else throw new Error(`neither comma nor end of record at ${at}`);
  }
  if (row.length > 0) throw new Error('the last record does not end');
  return rows;
}
