import { strToU8, type Zippable, zipSync } from 'fflate';
import type { RecordFile } from '../file.ts';
import { fileWords, type Paper } from '../paper/paper.ts';
import { itemIdentifier, itemXml } from './item-xml.ts';
import { manifestXml } from './manifest-xml.ts';
import { testXml } from './test-xml.ts';

/** By local time without a zone, as a zip keeps it: the bytes are the same wherever it is made. */
const PACKED_AT = '2020-01-01T12:00:00';
const TEST = 'paper.xml';

/** Every file of the package by its path, the manifest first. */
export function qtiFiles(paper: Paper): ReadonlyMap<string, string> {
  const { number, questions, words } = paper;
  const items = questions.map((question, i) => {
    const { id, asks } = question.item;
    const text = itemXml(question, `${i + 1}. ${asks}`, words);
    return { name: itemIdentifier(id), path: pathOf(id), text };
  });
  const manifest = manifestXml(`${number}`, [
    {
      name: 'paper',
      type: 'imsqti_test_xmlv2p1',
      path: TEST,
      needs: items.map(({ name }) => name),
    },
    ...items.map(({ name, path }) => ({
      name,
      type: 'imsqti_item_xmlv2p1' as const,
      path,
      needs: [],
    })),
  ]);
  return new Map([
    ['imsmanifest.xml', manifest],
    [TEST, testXml(paper, pathOf)],
    ...items.map(({ path, text }) => [path, text] as const),
  ]);
}

/** A content package of QTI 2.1; the same paper gives the same bytes. */
export function qtiPackage(paper: Paper): RecordFile {
  const files: Zippable = {};
  for (const [path, text] of qtiFiles(paper)) files[path] = strToU8(text);
  return {
    name: `${fileWords(paper)}-qti.zip`,
    type: 'application/zip',
    data: zipSync(files, { level: 6, mtime: PACKED_AT }),
  };
}

function pathOf(id: string): string {
  return `items/${itemIdentifier(id)}.xml`;
}
