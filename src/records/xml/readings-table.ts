import type { PaperWords, ReadingRow } from '../paper/paper.ts';
import { element, type XmlElement, type XmlNode } from './xml.ts';

/** Elements that HTML and QTI both have. What one check reads beneath each other stands in one row. */
export function readingsTable(rows: readonly ReadingRow[], words: PaperWords): XmlElement {
  const heads = [words['reading-of'], words['reading-said']];
  return element('table', {}, [
    element('thead', {}, [
      element(
        'tr',
        {},
        heads.map((head) => element('th', { scope: 'col' }, [head])),
      ),
    ]),
    element(
      'tbody',
      {},
      joined(rows).map(({ of, said }) =>
        element('tr', {}, [element('td', {}, [of]), element('td', {}, linesOf(said))]),
      ),
    ),
  ]);
}

interface JoinedRow {
  readonly of: string;
  readonly said: readonly string[];
}

function joined(rows: readonly ReadingRow[]): readonly JoinedRow[] {
  const all: JoinedRow[] = [];
  for (const { of, said } of rows) {
    const last = all.at(-1);
    if (last?.of === of) all[all.length - 1] = { of, said: [...last.said, said] };
    else all.push({ of, said: [said] });
  }
  return all;
}

function linesOf(said: readonly string[]): readonly XmlNode[] {
  return said.length === 1 ? said : said.map((line) => element('p', {}, [line]));
}
