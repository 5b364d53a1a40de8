/** Questions as plain text in the open GIFT format. */
import type { RecordFile } from '../file.ts';
import { fileWords, type Paper, type PaperQuestion, titleOf } from '../paper/paper.ts';
import { answersOf } from './answers.ts';
import { giftWords, oneLine } from './escape.ts';
import { stemLines } from './stem.ts';

/** A question without a type of its own is told by its answers; its text is plain. */
const PLAIN = '[plain]';

/** Questions of one category stand together, in the order in which each first comes. */
export function giftText(paper: Paper): string {
  const { questions, words } = paper;
  const title = titleOf(paper);
  const categories = [...new Set(questions.map(({ category }) => category))];
  const blocks = categories.flatMap((category) => [
    `$CATEGORY: ${categoryPath(title)}/${categoryPath(category)}`,
    ...questions
      .filter((question) => question.category === category)
      .map((question) => questionText(question, words)),
  ]);
  return `// ${oneLine(title)}. ${oneLine(words.caution)}\n\n${blocks.join('\n\n')}\n`;
}

export function giftFile(paper: Paper): RecordFile {
  return {
    name: `${fileWords(paper)}-gift.txt`,
    type: 'text/plain;charset=utf-8',
    data: giftText(paper),
  };
}

function questionText({ item }: PaperQuestion, words: Paper['words']): string {
  const stem = stemLines(item, words).map(giftWords).join('\\n');
  return `::${giftWords(item.id)}::${PLAIN}${stem} ${answersOf(item, words)}`;
}

/** A slash parts the levels of a category, and two stand for one. */
function categoryPath(text: string): string {
  return oneLine(text).replaceAll('/', '//');
}
