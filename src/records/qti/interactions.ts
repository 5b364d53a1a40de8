/** Where the answer is given. */
import type { WordedItem, WordedOption } from '../../quiz/index.ts';
import { type PaperWords, unitAfter } from '../paper/paper.ts';
import { element, type XmlElement } from '../xml/xml.ts';
import { optionName } from './names.ts';
import { RESPONSE } from './scoring.ts';

const DIGITS = '10';

/** Things of the drawing are chosen by their names here: the drawing does not leave the program. */
export function interactionOf(item: WordedItem, words: PaperWords): XmlElement[] {
  const prompt = element('prompt', {}, [item.asks]);
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return [
        element(
          'choiceInteraction',
          { responseIdentifier: RESPONSE, shuffle: 'false', maxChoices: '1' },
          [prompt, ...choices(item.options)],
        ),
      ];
    case 'order':
      return [
        element('orderInteraction', { responseIdentifier: RESPONSE, shuffle: 'false' }, [
          prompt,
          ...choices(item.steps),
        ]),
      ];
    case 'number':
      return [
        element('p', {}, [element('strong', {}, [item.asks])]),
        element('p', {}, [
          `${words.answer} `,
          element('textEntryInteraction', {
            responseIdentifier: RESPONSE,
            expectedLength: DIGITS,
          }),
          unitAfter(item.unit),
        ]),
      ];
  }
}

function choices(options: readonly WordedOption[]): XmlElement[] {
  return options.map(({ text }, place) =>
    element('simpleChoice', { identifier: optionName(place) }, [text]),
  );
}
