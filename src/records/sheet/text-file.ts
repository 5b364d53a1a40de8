import type { WordedItem } from '../../quiz/index.ts';
import { filled, type Paper, type PaperWords, titleOf, unitAfter } from '../paper/paper.ts';
import { answerKey, howToAnswer, letterOf, shortAnswers } from '../paper/reasons.ts';

const RULE = '-'.repeat(72);
const FIELD = '_'.repeat(24);

/** A paper as plain text: the questions, then the key. */
export function paperText(paper: Paper): string {
  const { words, questions } = paper;
  const asked = questions.flatMap(({ item }, i) => [
    filled(words.question, { number: i + 1 }),
    ...questionLines(item, words),
    '',
  ]);
  const keyed = questions.flatMap(({ item }, i) => keyLines(item, i + 1, words));
  return `${[
    titleOf(paper),
    `${words.name} ${FIELD}  ${words.date} ${FIELD}`,
    `${filled(words.score, { count: questions.length })} ________`,
    words.caution,
    '',
    ...asked,
    RULE,
    `${words.key}: ${titleOf(paper)}`,
    words.caution,
    '',
    words['in-short'],
    ...shortAnswers(paper).map((right, i) => `  ${i + 1}. ${right}`),
    '',
    ...keyed,
  ].join('\n')}\n`;
}

function questionLines(item: WordedItem, words: PaperWords): string[] {
  const { caution, tells, start, readings, asks } = item;
  return [
    ...(caution === null ? [] : [caution]),
    ...tells,
    ...listed(words.start, start),
    ...listed(words.readings, readings),
    asks,
    ...answerLines(item, words),
  ];
}

function listed(heading: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [heading, ...lines.map((line) => `  ${line}`)];
}

function answerLines(item: WordedItem, words: PaperWords): string[] {
  if (item.answer === 'number') return [`  ${words.answer} ________${unitAfter(item.unit)}`];
  const how = howToAnswer(item, words);
  const options = item.answer === 'order' ? item.steps : item.options;
  return [
    ...(how === null ? [] : [how]),
    ...options.map(({ text }, place) => `  [ ] ${letterOf(place)}. ${text}`),
  ];
}

function keyLines(item: WordedItem, number: number, words: PaperWords): string[] {
  const { right, reasons } = answerKey(item, words);
  return [
    `${filled(words.question, { number })}: ${right}`,
    ...reasons.flatMap(({ about, isRight, why }) => [
      ...(about === null ? [] : [`  ${about}${verdictOf(isRight, words)}`]),
      ...why.map((sentence) => `    ${sentence}`),
    ]),
    ...(item.caution === null ? [] : [`  ${item.caution}`]),
    '',
  ];
}

function verdictOf(isRight: boolean | null, words: PaperWords): string {
  return isRight === null ? '' : ` (${isRight ? words.right : words['not-right']})`;
}
