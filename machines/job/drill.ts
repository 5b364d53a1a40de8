import { phaseMeta } from './meta.ts';
import { CLAIM_REFUSALS, NOTHING_MORE, PAPER } from './paper.ts';
import { refusing, refusingWhen } from './refuse.ts';
import { deskSetup } from './setup.ts';

const IN_TIME = refusingWhen('outOfTime', 'time is up', 'JB-16');

/** A drill: one question, one answer, a short time. */
export const drillMachine = deskSetup.createMachine({
  id: 'drill',
  context: ({ input }) => input,
  initial: 'card',
  on: { '*': refusing('not now', 'JB-14') },
  states: {
    card: {
      ...phaseMeta('card', ['JB-1', 'JB-15', 'JB-23']),
      on: {
        arrive: [
          refusingWhen('toolNotPermitted', 'tool not permitted', 'JB-1'),
          { actions: ['takeTools', 'setGuidance'], meta: { rule: 'JB-1' } },
        ],
        begin: { target: 'working', actions: 'noteBegin', meta: { rule: 'JB-15' } },
        '*': refusing('begin first', 'JB-15'),
      },
    },
    working: {
      ...phaseMeta('working', ['JB-3', 'JB-4', 'JB-5', 'JB-16', 'JB-24', 'JB-25']),
      on: {
        ...PAPER,
        claim: [
          IN_TIME,
          ...CLAIM_REFUSALS,
          { target: 'claim', actions: 'keepClaim', meta: { rule: 'JB-16' } },
        ],
        answer: [
          IN_TIME,
          refusingWhen('drillOptionMissing', 'no such option', 'JB-16'),
          { target: 'claim', actions: 'keepAnswer', meta: { rule: 'JB-16' } },
        ],
        close: { target: 'debrief', meta: { rule: 'JB-17' } },
      },
    },
    claim: {
      ...phaseMeta('claim', ['JB-17']),
      on: {
        note: PAPER.note,
        close: { target: 'debrief', meta: { rule: 'JB-17' } },
        '*': refusing('already answered', 'JB-17'),
      },
    },
    debrief: { ...phaseMeta('debrief', ['JB-12']), on: NOTHING_MORE },
  },
});
