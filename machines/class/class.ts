import { classMeta } from './meta.ts';
import { refusing, refusingWhen } from './refuse.ts';
import { classSetup } from './setup.ts';

const OPENED = { open: refusing('opened already', 'CL-1') } as const;

/** The instructor's own page does these on the one plant; as entries they are for own copies. */
const NOT_TOGETHER = refusingWhen('isTogether', 'not in this way of teaching', 'CL-4');
const NOT_AT_A_QUIZ = refusingWhen('isQuiz', 'not in this way of teaching', 'CL-4');

/** What may be said while people gather as well as during the work. */
const ALWAYS = {
  hint: { actions: 'keepHint', meta: { rule: 'CL-8' } },
  'lock tools': { actions: 'lockTools', meta: { rule: 'CL-7' } },
  spotlight: { actions: 'spotlight', meta: { rule: 'CL-11' } },
  project: { actions: 'project', meta: { rule: 'CL-11' } },
  poll: [
    refusingWhen('pollOpen', 'a poll is open', 'CL-9'),
    refusingWhen('tooFewOptions', 'too few options', 'CL-9'),
    { actions: 'askPoll', meta: { rule: 'CL-9' } },
  ],
  'show poll': [
    refusingWhen('pollMissing', 'no such poll', 'CL-10'),
    refusingWhen('pollShown', 'shown already', 'CL-10'),
    { actions: 'showPoll', meta: { rule: 'CL-10' } },
  ],
  'end poll': [
    refusingWhen('pollMissing', 'no such poll', 'CL-10'),
    { actions: 'endPoll', meta: { rule: 'CL-10' } },
  ],
} as const;

const TRIGGERS = {
  when: [
    NOT_AT_A_QUIZ,
    refusingWhen('nothingToDo', 'nothing to do', 'CL-6'),
    refusingWhen('triggerTwice', 'trigger twice', 'CL-6'),
    { actions: 'keepTrigger', meta: { rule: 'CL-6' } },
  ],
  'forget when': [
    refusingWhen('triggerMissing', 'no such trigger', 'CL-6'),
    { actions: 'dropTrigger', meta: { rule: 'CL-6' } },
  ],
} as const;

/**
 * A class: opened with what is worked on, gathering until the work begins, under way until it is
 * closed. It knows nothing of plants and of who sits where.
 */
export const classMachine = classSetup.createMachine({
  id: 'class',
  context: ({ input }) => input,
  initial: 'not opened',
  states: {
    'not opened': {
      ...classMeta('not opened', ['CL-1']),
      on: {
        open: [
          refusingWhen('togetherWithoutStart', 'only together with a start', 'CL-2'),
          { target: 'gathering', actions: 'keepOpening', meta: { rule: 'CL-1' } },
        ],
        '*': refusing('not opened', 'CL-1'),
      },
    },
    gathering: {
      ...classMeta('gathering', ['CL-3', 'CL-6', 'CL-7', 'CL-8', 'CL-9', 'CL-10', 'CL-11']),
      on: {
        ...OPENED,
        ...ALWAYS,
        ...TRIGGERS,
        begin: { target: 'under way', actions: 'thaw', meta: { rule: 'CL-3' } },
        close: { target: 'closed', meta: { rule: 'CL-12' } },
        '*': refusing('not begun', 'CL-3'),
      },
    },
    'under way': {
      ...classMeta('under way', ['CL-4', 'CL-5', 'CL-6', 'CL-7', 'CL-8', 'CL-9', 'CL-10', 'CL-11']),
      on: {
        ...OPENED,
        ...ALWAYS,
        ...TRIGGERS,
        begin: refusing('begun already', 'CL-3'),
        freeze: [NOT_TOGETHER, { actions: 'freeze', meta: { rule: 'CL-4' } }],
        run: [
          NOT_TOGETHER,
          refusingWhen('noSuchSpeed', 'no such speed', 'CL-4'),
          { actions: 'run', meta: { rule: 'CL-4' } },
        ],
        'next step': [NOT_TOGETHER, NOT_AT_A_QUIZ, { actions: 'rest', meta: { rule: 'CL-4' } }],
        rewind: [
          NOT_TOGETHER,
          refusingWhen('isQuiz', 'nothing to rewind', 'CL-4'),
          { actions: 'rest', meta: { rule: 'CL-4' } },
        ],
        'rewind by': [
          NOT_TOGETHER,
          refusingWhen('isQuiz', 'nothing to rewind', 'CL-4'),
          { actions: 'rest', meta: { rule: 'CL-4' } },
        ],
        do: [
          NOT_TOGETHER,
          NOT_AT_A_QUIZ,
          refusingWhen('nothingToDo', 'nothing to do', 'CL-5'),
          { meta: { rule: 'CL-5' } },
        ],
        close: { target: 'closed', meta: { rule: 'CL-12' } },
      },
    },
    closed: {
      ...classMeta('closed', ['CL-12']),
      on: { '*': refusing('closed', 'CL-12') },
    },
  },
});
