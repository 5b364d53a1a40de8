import type { PaperQuestion, PaperWords } from '../paper/paper.ts';
import { readingsTable } from '../xml/readings-table.ts';
import { element, type XmlElement, xmlText } from '../xml/xml.ts';
import { feedbackOf } from './feedback.ts';
import { interactionOf } from './interactions.ts';
import { identifierOf } from './names.ts';
import { FEEDBACK, processingOf, responseOf, SCORE } from './scoring.ts';

export const QTI = 'http://www.imsglobal.org/xsd/imsqti_v2p1';

/** One question as an assessment item of QTI 2.1. */
export function itemXml(question: PaperQuestion, title: string, words: PaperWords): string {
  const { item } = question;
  return xmlText(
    element(
      'assessmentItem',
      {
        xmlns: QTI,
        identifier: itemIdentifier(item.id),
        title,
        adaptive: 'false',
        timeDependent: 'false',
        'xml:lang': 'en',
        toolName: 'Flamewright',
      },
      [
        responseOf(item),
        element('outcomeDeclaration', { ...SCORE, normalMaximum: '1' }, [
          element('defaultValue', {}, [element('value', {}, ['0'])]),
        ]),
        element('outcomeDeclaration', FEEDBACK),
        element('itemBody', {}, [...stemOf(question, words), ...interactionOf(item, words)]),
        processingOf(item),
        ...feedbackOf(item, words),
      ],
    ),
  );
}

export function itemIdentifier(id: string): string {
  return identifierOf('item', id);
}

/** The situation, the start and what was read; the question itself stands with its answers. */
function stemOf({ item, readings }: PaperQuestion, words: PaperWords): XmlElement[] {
  const { caution, tells, start, answer } = item;
  return [
    ...(caution === null ? [] : [element('p', {}, [element('strong', {}, [caution])])]),
    ...tells.map((sentence) => element('p', {}, [sentence])),
    ...listed(words.start, start),
    ...(readings.length === 0
      ? []
      : [element('p', {}, [words.readings]), readingsTable(readings, words)]),
    ...(answer === 'spot' ? [element('p', {}, [words['drawing-named']])] : []),
  ];
}

function listed(heading: string, lines: readonly string[]): XmlElement[] {
  if (lines.length === 0) return [];
  return [
    element('p', {}, [heading]),
    element(
      'ul',
      {},
      lines.map((line) => element('li', {}, [line])),
    ),
  ];
}
