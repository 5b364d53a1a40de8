import { type Paper, titleOf } from '../paper/paper.ts';
import { element, xmlText } from '../xml/xml.ts';
import { itemIdentifier, QTI } from './item-xml.ts';
import { identifierOf } from './names.ts';
import { SCORE } from './scoring.ts';

/** The whole paper as an assessment test of QTI 2.1; it counts what was right. */
export function testXml(paper: Paper, pathOf: (id: string) => string): string {
  const { number, questions, words } = paper;
  const title = titleOf(paper);
  return xmlText(
    element(
      'assessmentTest',
      { xmlns: QTI, identifier: identifierOf('paper', String(number)), title },
      [
        element('outcomeDeclaration', {
          ...SCORE,
          normalMaximum: String(questions.length),
        }),
        element(
          'testPart',
          { identifier: 'part', navigationMode: 'nonlinear', submissionMode: 'individual' },
          [
            element('itemSessionControl', { showFeedback: 'true' }),
            element('assessmentSection', { identifier: 'questions', title, visible: 'true' }, [
              element('rubricBlock', { view: 'candidate' }, [element('p', {}, [words.caution])]),
              ...questions.map(({ item: { id } }) =>
                element('assessmentItemRef', {
                  identifier: itemIdentifier(id),
                  href: pathOf(id),
                }),
              ),
            ]),
          ],
        ),
        element('outcomeProcessing', {}, [
          element('setOutcomeValue', { identifier: SCORE.identifier }, [
            element('sum', {}, [
              element('testVariables', { variableIdentifier: SCORE.identifier }),
            ]),
          ]),
        ]),
      ],
    ),
  );
}
