import { describe, expect, it } from 'vitest';
import { namedPlaces } from '../../../src/app/quiz-item/named-places.ts';
import type { ChoiceItem, Statement, Term } from '../../../src/quiz/index.ts';

const PLAIN: Statement = { code: 'quiz.as-written' };
const check = (name: string): Term => ({ is: 'check', check: name, moment: 'purge' });
const saying = (term: Term): Statement => ({ code: 'quiz.as-written', with: { what: term } });

describe('places of the wiring that a question names', () => {
  it('are those of tells, readings and options, however deep, each once', () => {
    const item = itemOf({
      tells: [saying({ is: 'list', of: [check('volts|23'), check('volts|earth')] })],
      read: ['continuity|pilot-valve:1|pilot-valve:2', 'volts|23'],
      options: [
        saying({ is: 'statement', statement: saying(check('volts|52')) }),
        saying(check('look|spark')),
      ],
    });
    expect(namedPlaces(item)).toEqual(['23', '52', 'pilot-valve:1', 'pilot-valve:2']);
  });

  it('are none where eyes and gauges are enough; reasons, which come later, name none', () => {
    const item = itemOf({ tells: [PLAIN], read: ['manometer|pilot'], options: [PLAIN] });
    const [option] = item.options;
    if (option === undefined) throw new Error('no option');
    const reasoned = { ...item, options: [{ ...option, why: [saying(check('volts|91'))] }] };
    expect(namedPlaces(reasoned)).toEqual([]);
  });
});

function itemOf(of: {
  readonly tells: readonly Statement[];
  readonly read: readonly string[];
  readonly options: readonly Statement[];
}): ChoiceItem {
  return {
    id: 'next-check/dairy/1',
    kind: 'next check',
    plant: 'dairy',
    topic: 'next check/any',
    skills: ['wiring'],
    difficulty: 0,
    run: null,
    caution: null,
    answer: 'choice',
    key: 0,
    stem: {
      tells: of.tells,
      asks: PLAIN,
      readings: of.read.map((name) => ({
        check: name,
        moment: 'purge',
        aspect: '',
        value: null,
        word: 'live',
      })) as unknown as ChoiceItem['stem']['readings'],
      shows: { chart: false, trends: [] },
    },
    options: of.options.map((says) => ({
      says,
      why: [],
      share: null,
      decidedBy: null,
      atS: null,
    })),
  };
}
