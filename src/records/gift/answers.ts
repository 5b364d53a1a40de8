/** The part in braces: what may be answered, what is right, and what is said to it. */
import type { WordedChoice, WordedItem, WordedNumber, WordedOrder } from '../../quiz/index.ts';
import { filled, type PaperWords, plainNumber } from '../paper/paper.ts';
import { numberReasons } from '../paper/reasons.ts';
import { bracketsHeld, giftAnswer, giftWords } from './escape.ts';

export function answersOf(item: WordedItem, words: PaperWords): string {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return braced('', choiceLines(item), cautionOf(item));
    case 'order':
      return braced('', orderLines(item, words), [...orderSaid(item, words), ...cautionOf(item)]);
    case 'number':
      return braced('#', [numberLine(item)], [...numberSaid(item, words), ...cautionOf(item)]);
  }
}

function choiceLines({ options, key }: WordedChoice): string[] {
  return options.map(({ text, why }, place) => {
    const said = why.length === 0 ? '' : `#${bracketsHeld(joined(why))}`;
    return `${giftAnswer(text, place === key)}${said}`;
  });
}

/** The format has no ordering: each place is matched with what comes there. */
function orderLines({ key, steps }: WordedOrder, words: PaperWords): string[] {
  return key.map((step, at) => {
    const place = giftWords(filled(words['place-in-order'], { place: at + 1 }));
    return `=${bracketsHeld(place)} -> ${giftWords(steps[step]?.text ?? '')}`;
  });
}

function orderSaid({ key, steps }: WordedOrder, words: PaperWords): string[] {
  const text = key.map((step) => steps[step]?.text ?? '').join('; ');
  const order = filled(words['right-order'], { text });
  return [order, ...key.flatMap((step) => steps[step]?.why ?? [])];
}

/** The tolerance lies on both sides alike, so the middle stands where the key might. */
function numberLine({ from, to }: WordedNumber): string {
  return `=${plainNumber((from + to) / 2)}:${plainNumber((to - from) / 2)}`;
}

function numberSaid(item: WordedNumber, words: PaperWords): string[] {
  return [
    filled(words['right-answer'], { text: item.said }),
    ...numberReasons(item, words).flatMap(({ about, why }) =>
      about === null ? why : [about, ...why],
    ),
  ];
}

function cautionOf({ caution }: WordedItem): string[] {
  return caution === null ? [] : [caution];
}

/** @param general said whatever was answered */
function braced(type: string, lines: readonly string[], general: readonly string[]): string {
  const last = general.length === 0 ? '' : `####${joined(general)}\n`;
  return `{${type}\n${lines.join('\n')}\n${last}}`;
}

function joined(sentences: readonly string[]): string {
  return sentences.map(giftWords).join('\\n');
}
