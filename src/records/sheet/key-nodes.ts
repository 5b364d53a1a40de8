import {
  filled,
  type Paper,
  type PaperQuestion,
  type PaperWords,
  titleOf,
} from '../paper/paper.ts';
import { answerKey, type Reason, shortAnswers } from '../paper/reasons.ts';
import { element, type XmlElement } from '../xml/xml.ts';

/** What is right, and the reasons for every option. */
export function keyNodes(paper: Paper): XmlElement {
  const { words, questions } = paper;
  return element('section', { class: 'paper-part paper-key' }, [
    element('header', { class: 'paper-head' }, [
      element('h2', {}, [`${words.key}: ${titleOf(paper)}`]),
      element('p', { class: 'paper-caution' }, [words.caution]),
    ]),
    element('section', { class: 'paper-short' }, [
      element('h3', {}, [words['in-short']]),
      element(
        'ol',
        {},
        shortAnswers(paper).map((right) => element('li', {}, [right])),
      ),
    ]),
    ...questions.map((question, i) => entryNode(question, i + 1, words)),
  ]);
}

function entryNode({ item }: PaperQuestion, number: number, words: PaperWords): XmlElement {
  const { right, reasons } = answerKey(item, words);
  return element('section', { class: 'paper-entry' }, [
    element('h3', {}, [`${filled(words.question, { number })}: ${right}`]),
    element('p', { class: 'paper-asks' }, [item.asks]),
    element(
      'ul',
      { class: 'paper-reasons' },
      reasons.map((reason) => reasonNode(reason, words)),
    ),
    ...(item.caution === null ? [] : [element('p', { class: 'paper-warning' }, [item.caution])]),
  ]);
}

function reasonNode({ about, isRight, why }: Reason, words: PaperWords): XmlElement {
  const verdict =
    isRight === null
      ? []
      : [
          ' ',
          element('span', { class: isRight ? 'paper-right' : 'paper-wrong' }, [
            isRight ? words.right : words['not-right'],
          ]),
        ];
  return element('li', {}, [
    ...(about === null ? [] : [element('strong', {}, [about]), ...verdict]),
    ...why.map((sentence) => element('p', {}, [sentence])),
  ]);
}
