/** What counts as right, and which feedback it leads to. */
import type { WordedItem } from '../../quiz/index.ts';
import { plainNumber } from '../paper/paper.ts';
import { element, type XmlElement } from '../xml/xml.ts';
import { optionName } from './names.ts';

export const RESPONSE = 'RESPONSE';
export const SCORE = { identifier: 'SCORE', cardinality: 'single', baseType: 'float' } as const;
export const FEEDBACK = {
  identifier: 'FEEDBACK',
  cardinality: 'single',
  baseType: 'identifier',
} as const;
/** Where the answer itself does not name its feedback. */
export const RIGHT = 'right';
export const NOT_RIGHT = 'not-right';

export function responseOf(item: WordedItem): XmlElement {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return declared('single', 'identifier', [optionName(item.key)]);
    case 'order':
      return declared('ordered', 'identifier', item.key.map(optionName));
    case 'number':
      return declared('single', 'float', [plainNumber(item.key)]);
  }
}

/** Right counts one, anything else nothing. */
export function processingOf(item: WordedItem): XmlElement {
  const chosen = item.answer === 'choice' || item.answer === 'spot';
  const given = element('variable', { identifier: RESPONSE });
  const feedback = (name: string) =>
    chosen ? [] : [set(FEEDBACK.identifier, base(FEEDBACK.baseType, name))];
  return element('responseProcessing', {}, [
    element('responseCondition', {}, [
      element('responseIf', {}, [
        rightness(item),
        set(SCORE.identifier, base(SCORE.baseType, '1')),
        ...feedback(RIGHT),
      ]),
      element('responseElse', {}, [
        set(SCORE.identifier, base(SCORE.baseType, '0')),
        ...feedback(NOT_RIGHT),
      ]),
    ]),
    // Each option has its own.
    ...(chosen ? [set(FEEDBACK.identifier, given)] : []),
  ]);
}

function rightness(item: WordedItem): XmlElement {
  const both = [
    element('variable', { identifier: RESPONSE }),
    element('correct', { identifier: RESPONSE }),
  ];
  if (item.answer !== 'number') return element('match', {}, both);
  const below = plainNumber(item.key - item.from);
  const above = plainNumber(item.to - item.key);
  return element('equal', { toleranceMode: 'absolute', tolerance: `${below} ${above}` }, both);
}

function declared(
  cardinality: 'single' | 'ordered',
  baseType: string,
  right: readonly string[],
): XmlElement {
  return element('responseDeclaration', { identifier: RESPONSE, cardinality, baseType }, [
    element(
      'correctResponse',
      {},
      right.map((value) => element('value', {}, [value])),
    ),
  ]);
}

function set(identifier: string, value: XmlElement): XmlElement {
  return element('setOutcomeValue', { identifier }, [value]);
}

function base(baseType: string, value: string): XmlElement {
  return element('baseValue', { baseType }, [value]);
}
