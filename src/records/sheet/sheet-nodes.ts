/** A paper as marked-up text: the same whether a page shows it or a file holds it. */
import type { WordedItem, WordedOption } from '../../quiz/index.ts';
import {
  filled,
  type Paper,
  type PaperQuestion,
  type PaperWords,
  titleOf,
  unitAfter,
} from '../paper/paper.ts';
import { howToAnswer, letterOf } from '../paper/reasons.ts';
import { readingsTable } from '../xml/readings-table.ts';
import { element, type XmlElement, type XmlNode } from '../xml/xml.ts';
import { keyNodes } from './key-nodes.ts';

/** The questions, then the key on a page of its own; elements of HTML with classes `paper-…`. */
export function sheetNodes(paper: Paper): readonly XmlElement[] {
  const { words, questions } = paper;
  const score = filled(words.score, { count: questions.length });
  const fields = [words.name, words.date, score].map((label) =>
    element('span', { class: 'paper-field' }, [label]),
  );
  return [
    element('section', { class: 'paper-part' }, [
      element('header', { class: 'paper-head' }, [
        element('h2', {}, [titleOf(paper)]),
        element('p', { class: 'paper-fields' }, fields),
        element('p', { class: 'paper-caution' }, [words.caution]),
      ]),
      ...questions.map((question, i) => questionNode(question, i + 1, words)),
    ]),
    keyNodes(paper),
  ];
}

function questionNode(
  { item, readings }: PaperQuestion,
  number: number,
  words: PaperWords,
): XmlElement {
  const { caution, tells, start, asks } = item;
  const startItems = start.map((line) => element('li', {}, [line]));
  const lists = [
    ...(start.length === 0
      ? []
      : [headed(words.start, element('ul', { class: 'paper-list' }, startItems))]),
    ...(readings.length === 0 ? [] : [headed(words.readings, readingsTable(readings, words))]),
  ];
  return element('section', { class: 'paper-question' }, [
    element('h3', {}, [filled(words.question, { number })]),
    ...(caution === null ? [] : [element('p', { class: 'paper-warning' }, [caution])]),
    ...(tells.length === 0 ? [] : [element('p', {}, [tells.join(' ')])]),
    ...(lists.length === 0 ? [] : [element('div', { class: 'paper-evidence' }, lists)]),
    element('p', { class: 'paper-asks' }, [asks]),
    ...answerNodes(item, words),
  ]);
}

function headed(heading: string, list: XmlElement): XmlElement {
  return element('div', {}, [element('h4', {}, [heading]), list]);
}

function answerNodes(item: WordedItem, words: PaperWords): XmlElement[] {
  const how = howToAnswer(item, words);
  const said = how === null ? [] : [small(how)];
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return [...said, ...boxes(item.options)];
    case 'order':
      return [...said, ...boxes(item.steps)];
    case 'number':
      return [
        small(words.working),
        element('div', { class: 'paper-space' }, [NOTHING]),
        element('p', { class: 'paper-number' }, [
          `${words.answer} `,
          element('span', { class: 'paper-line' }, [NOTHING]),
          unitAfter(item.unit),
        ]),
      ];
  }
}

/** Something to hold the place open. */
const NOTHING = '\u00a0';

function small(said: string): XmlElement {
  return element('p', { class: 'paper-how' }, [said]);
}

function boxes(options: readonly WordedOption[]): XmlElement[] {
  const rows = options.map(
    ({ text }, place): XmlNode =>
      element('li', {}, [
        element('span', { class: 'paper-box' }, [NOTHING]),
        element('span', { class: 'paper-letter' }, [letterOf(place)]),
        element('span', {}, [text]),
      ]),
  );
  return [element('ul', { class: 'paper-options' }, rows)];
}
