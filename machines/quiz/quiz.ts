import { quizMeta } from './meta.ts';
import { refusing, refusingWhen } from './refuse.ts';
import { quizSetup } from './setup.ts';

const BEGUN = { begin: refusing('begun already', 'QZ-1') } as const;

/** What no answer may be: for another question, without content, or without how sure one is. */
const ANSWER_REFUSALS = [
  refusingWhen('notThisPlace', 'not this question', 'QZ-3'),
  refusingWhen('nothingAnswered', 'nothing answered', 'QZ-3'),
  refusingWhen('unsure', 'say how sure you are', 'QZ-4'),
] as const;

/** On to the next question; behind the last one the quiz is over. */
function onward(rule: string) {
  return [
    { guard: 'isLast', target: 'over', actions: 'noteEnd', meta: { rule } },
    { target: 'asked', actions: 'goOn', meta: { rule } },
  ] as const;
}

const ONWARD_ONLY = { 'go to': refusing('no going back', 'QZ-7') } as const;
const LEAVE = { target: 'over', actions: 'noteEnd', meta: { rule: 'QZ-8' } } as const;

/**
 * A quiz: questions in their order, each answered with how sure one is. Elsewhere each is told on
 * before the next; an exam lies open until it is handed in.
 */
export const quizMachine = quizSetup.createMachine({
  id: 'quiz',
  context: ({ input }) => input,
  initial: 'not begun',
  states: {
    'not begun': {
      ...quizMeta('not begun', ['QZ-1', 'QZ-2']),
      on: {
        begin: [
          refusingWhen('noItems', 'no questions', 'QZ-2'),
          refusingWhen('itemTwice', 'question twice', 'QZ-2'),
          { guard: 'isExam', target: 'sitting', actions: 'layOut', meta: { rule: 'QZ-1' } },
          { target: 'asked', actions: 'layOut', meta: { rule: 'QZ-1' } },
        ],
        '*': refusing('not begun', 'QZ-1'),
      },
    },
    asked: {
      ...quizMeta('asked', ['QZ-3', 'QZ-4', 'QZ-5', 'QZ-8', 'QZ-14']),
      on: {
        ...BEGUN,
        ...ONWARD_ONLY,
        answer: [
          ...ANSWER_REFUSALS,
          { target: 'answered', actions: 'keepAnswer', meta: { rule: 'QZ-3' } },
        ],
        next: refusing('answer first', 'QZ-5'),
        pass: [refusingWhen('notThisPlace', 'not this question', 'QZ-14'), ...onward('QZ-14')],
        finish: LEAVE,
      },
    },
    answered: {
      ...quizMeta('answered', ['QZ-5', 'QZ-6', 'QZ-7', 'QZ-8']),
      on: {
        ...BEGUN,
        ...ONWARD_ONLY,
        answer: refusing('already answered', 'QZ-7'),
        next: onward('QZ-6'),
        pass: refusing('already answered', 'QZ-14'),
        finish: LEAVE,
      },
    },
    sitting: {
      ...quizMeta('sitting', ['QZ-3', 'QZ-4', 'QZ-9', 'QZ-10', 'QZ-11']),
      on: {
        ...BEGUN,
        answer: [...ANSWER_REFUSALS, { actions: 'keepAnswer', meta: { rule: 'QZ-10' } }],
        next: [
          refusingWhen('isLast', 'last question', 'QZ-9'),
          { actions: 'goOn', meta: { rule: 'QZ-9' } },
        ],
        pass: refusing('no need to pass', 'QZ-14'),
        'go to': [
          refusingWhen('placeMissing', 'no such question', 'QZ-9'),
          { actions: 'goTo', meta: { rule: 'QZ-9' } },
        ],
        finish: { target: 'over', actions: 'noteEnd', meta: { rule: 'QZ-11' } },
      },
    },
    over: {
      ...quizMeta('over', ['QZ-12']),
      on: { '*': refusing('over', 'QZ-12') },
    },
  },
});
