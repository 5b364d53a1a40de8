import type { WordedItem } from '../../quiz/index.ts';
import type { PaperWords } from '../paper/paper.ts';

/** Everything before the answers, a line each; the question last. */
export function stemLines(item: WordedItem, words: PaperWords): string[] {
  const { caution, tells, start, readings, asks } = item;
  return [
    ...(caution === null ? [] : [caution]),
    ...tells,
    ...listed(words.start, start),
    ...listed(words.readings, readings),
    ...(item.answer === 'spot' ? [words['drawing-named']] : []),
    item.answer === 'number' && item.unit !== '' ? `${asks} (${item.unit})` : asks,
  ];
}

function listed(heading: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [heading, ...lines.map((line) => `• ${line}`)];
}
