import { phaseMeta } from './meta.ts';
import { NOTHING_MORE, PAPER } from './paper.ts';
import { refusing, refusingWhen } from './refuse.ts';
import { deskSetup } from './setup.ts';

const { pin, note } = PAPER;
/** On to the next stop; behind the last one, to the end. */
const NEXT = [
  { guard: 'stopsToCome', target: 'run', meta: { rule: 'JB-20' } },
  { target: 'outro', meta: { rule: 'JB-20' } },
] as const;
const NOTHING_BROKEN = refusing('nothing is broken', 'JB-21');

/** A lesson: a start that stops at its steps, explains each, asks one thing and may be broken. */
export const lessonMachine = deskSetup.createMachine({
  id: 'lesson',
  context: ({ input }) => input,
  initial: 'intro',
  on: { '*': refusing('not now', 'JB-14') },
  states: {
    intro: {
      ...phaseMeta('intro', ['JB-18']),
      on: {
        begin: [
          {
            guard: 'stopsToCome',
            target: 'run',
            actions: 'noteBegin',
            meta: { rule: 'JB-18' },
          },
          { target: 'outro', actions: 'noteBegin', meta: { rule: 'JB-18' } },
        ],
        '*': refusing('begin first', 'JB-18'),
      },
    },
    run: {
      ...phaseMeta('run', ['JB-18']),
      on: {
        pin,
        note,
        explain: [
          refusingWhen('stopNotNext', 'not the next step', 'JB-18'),
          { target: 'explain', actions: 'countStop', meta: { rule: 'JB-18' } },
        ],
      },
    },
    explain: {
      ...phaseMeta('explain', ['JB-19']),
      on: {
        pin,
        note,
        answer: [
          refusingWhen('stepNotThis', 'not this step', 'JB-19'),
          refusingWhen('stopOptionMissing', 'no such option', 'JB-19'),
          { target: 'answered', actions: 'keepAnswer', meta: { rule: 'JB-19' } },
        ],
        next: refusing('answer first', 'JB-20'),
        break: refusing('answer first', 'JB-21'),
        'put back': NOTHING_BROKEN,
      },
    },
    answered: {
      ...phaseMeta('answered', ['JB-19', 'JB-20', 'JB-21']),
      on: {
        pin,
        note,
        answer: refusing('already answered', 'JB-19'),
        break: [
          {
            guard: 'mayBreakHere',
            target: 'broken',
            actions: 'keepBroken',
            meta: { rule: 'JB-21' },
          },
          refusing('nothing to break here', 'JB-21'),
        ],
        'put back': NOTHING_BROKEN,
        next: NEXT,
      },
    },
    broken: {
      ...phaseMeta('broken', ['JB-21']),
      on: {
        pin,
        note,
        'put back': { target: 'answered', actions: 'dropBroken', meta: { rule: 'JB-21' } },
        '*': refusing('put it back first', 'JB-21'),
      },
    },
    outro: {
      ...phaseMeta('outro', ['JB-22']),
      on: { note, close: { target: 'debrief', meta: { rule: 'JB-22' } } },
    },
    debrief: { ...phaseMeta('debrief', ['JB-12']), on: NOTHING_MORE },
  },
});
