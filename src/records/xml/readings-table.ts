import type { PaperWords, ReadingRow } from '../paper/paper.ts';
import { element, type XmlElement } from './xml.ts';

/** Elements that HTML and QTI both have. */
export function readingsTable(rows: readonly ReadingRow[], words: PaperWords): XmlElement {
  const cells = (name: string, texts: readonly string[], attributes = {}) =>
    element(
      'tr',
      {},
      texts.map((text) => element(name, attributes, [text])),
    );
  return element('table', {}, [
    element('thead', {}, [
      cells('th', [words['reading-of'], words['reading-said']], { scope: 'col' }),
    ]),
    element(
      'tbody',
      {},
      rows.map(({ of, said }) => cells('td', [of, said])),
    ),
  ]);
}
