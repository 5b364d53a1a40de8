export {
  answersToCsv,
  RESULT_COLUMNS,
  type ResultColumn,
  type ResultWords,
  resultsCsv,
} from './csv/answers-to-csv.ts';
export * from './csv/csv-text.ts';
export type { RecordFile } from './file.ts';
export { giftFile, giftText } from './gift/gift-text.ts';
export type { ItemInWords, ItemsInWords } from './item-in-words.ts';
export { idOfName, sha1OfText } from './name-id.ts';
export { composePaper, type PaperChoice } from './paper/compose-paper.ts';
export {
  fileWords,
  PAPER_PHRASES,
  type Paper,
  type PaperQuestion,
  type PaperWords,
  titleOf,
} from './paper/paper.ts';
export { withoutForbidden } from './plain-text.ts';
export { qtiFiles, qtiPackage } from './qti/qti-package.ts';
export { footProperties, paperHtml } from './sheet/html-file.ts';
export { sheetNodes } from './sheet/sheet-nodes.ts';
export { paperText } from './sheet/text-file.ts';
export { answersToXapi, resultsXapi } from './xapi/answers-to-xapi.ts';
export * from './xapi/statement.ts';
export type { XmlElement, XmlNode } from './xml/xml.ts';
