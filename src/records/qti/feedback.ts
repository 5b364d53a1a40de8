/** What is said after an answer: the reasons. */
import type { WordedChoice, WordedItem, WordedNumber, WordedOrder } from '../../quiz/index.ts';
import { filled, type PaperWords } from '../paper/paper.ts';
import { numberReasons } from '../paper/reasons.ts';
import { element, type XmlElement } from '../xml/xml.ts';
import { optionName } from './names.ts';
import { FEEDBACK, NOT_RIGHT, RIGHT } from './scoring.ts';

export function feedbackOf(item: WordedItem, words: PaperWords): XmlElement[] {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return item.options.map((_, place) => choiceFeedback(item, place, words));
    case 'order':
      return eitherWay([...orderReasons(item, words), ...cautioned(item)], words);
    case 'number':
      return eitherWay([...numberSaid(item, words), ...cautioned(item)], words);
  }
}

function eitherWay(said: readonly XmlElement[], words: PaperWords): XmlElement[] {
  return [modal(RIGHT, words.right, said), modal(NOT_RIGHT, words['not-right'], said)];
}

/** Whichever was chosen, the reasons of every option stand there: that one's first. */
function choiceFeedback(item: WordedChoice, place: number, words: PaperWords): XmlElement {
  const { key, options } = item;
  const isRight = place === key;
  const right = filled(words['right-answer'], { text: options[key]?.text ?? '' });
  const others = options.flatMap(({ text, why }, at) =>
    at === place ? [] : [strong(text), ...why.map(paragraph)],
  );
  return modal(optionName(place), isRight ? words.right : words['not-right'], [
    ...(options[place]?.why.map(paragraph) ?? []),
    ...(isRight ? [] : [paragraph(right)]),
    ...others,
    ...cautioned(item),
  ]);
}

function orderReasons({ key, steps }: WordedOrder, words: PaperWords): XmlElement[] {
  const texts = key.map((place) => steps[place]?.text ?? '');
  const whys = key.flatMap((place) => {
    const { text = '', why = [] } = steps[place] ?? {};
    return why.length === 0 ? [] : [strong(text), ...why.map(paragraph)];
  });
  return [paragraph(filled(words['right-order'], { text: texts.join('; ') })), ...whys];
}

function numberSaid(item: WordedNumber, words: PaperWords): XmlElement[] {
  return [
    paragraph(filled(words['right-answer'], { text: item.said })),
    ...numberReasons(item, words).flatMap(({ about, why }) => [
      ...(about === null ? [] : [strong(about)]),
      ...why.map(paragraph),
    ]),
  ];
}

function cautioned({ caution }: WordedItem): XmlElement[] {
  return caution === null ? [] : [strong(caution)];
}

function modal(identifier: string, title: string, said: readonly XmlElement[]): XmlElement {
  return element(
    'modalFeedback',
    { outcomeIdentifier: FEEDBACK.identifier, showHide: 'show', identifier, title },
    // A feedback without a word is none.
    said.length === 0 ? [paragraph(title)] : said,
  );
}

function paragraph(text: string): XmlElement {
  return element('p', {}, [text]);
}

function strong(text: string): XmlElement {
  return element('p', {}, [element('strong', {}, [text])]);
}
