import { phaseMeta } from './meta.ts';
import { CLAIM_REFUSALS, NOTHING_MORE, PAPER } from './paper.ts';
import { refusing, refusingWhen } from './refuse.ts';
import { deskSetup } from './setup.ts';

/** Back to the plant with what was claimed so far. */
const WORK_ON = {
  target: 'working',
  actions: ['noteBegin', 'dropHandover'],
  meta: { rule: 'JB-9' },
} as const;
const CLAIM = [
  ...CLAIM_REFUSALS,
  { target: 'claim', actions: 'keepClaim', meta: { rule: 'JB-6' } },
] as const;
/** The last claim falls; with none left the search is open again. */
const WITHDRAW = [
  { guard: 'moreThanOneClaimed', actions: 'dropClaim', meta: { rule: 'JB-7' } },
  {
    guard: 'somethingClaimed',
    target: 'working',
    actions: 'dropClaim',
    meta: { rule: 'JB-7' },
  },
  refusing('nothing claimed', 'JB-7'),
] as const;
const PROVE = [
  { guard: 'somethingClaimed', target: 'proof', meta: { rule: 'JB-8' } },
  refusing('nothing claimed', 'JB-8'),
] as const;
/** Before the proof: what is missing, the claim or only its proof. */
const NOT_YET_HANDED_OVER = [
  refusingWhen('somethingClaimed', 'prove first', 'JB-10'),
  refusing('nothing claimed', 'JB-10'),
] as const;
const NOT_YET_CLOSED = refusing('hand over first', 'JB-11');

/** A job, from its card to the debrief. */
export const jobMachine = deskSetup.createMachine({
  id: 'job',
  context: ({ input }) => input,
  initial: 'card',
  on: { '*': refusing('not now', 'JB-14') },
  states: {
    card: {
      ...phaseMeta('card', ['JB-1', 'JB-2', 'JB-23']),
      on: {
        arrive: [
          refusingWhen('toolNotPermitted', 'tool not permitted', 'JB-1'),
          { target: 'at the plant', actions: ['takeTools', 'setGuidance'], meta: { rule: 'JB-1' } },
        ],
        note: PAPER.note,
        '*': refusing('not there yet', 'JB-2'),
      },
    },
    'at the plant': {
      ...phaseMeta('at the plant', ['JB-2', 'JB-3', 'JB-4', 'JB-5', 'JB-24', 'JB-25']),
      on: {
        ...PAPER,
        begin: { target: 'working', actions: 'noteBegin', meta: { rule: 'JB-2' } },
        claim: refusing('begin first', 'JB-2'),
        prove: refusing('nothing claimed', 'JB-8'),
        'hand over': NOT_YET_HANDED_OVER,
        close: NOT_YET_CLOSED,
      },
    },
    working: {
      ...phaseMeta('working', ['JB-3', 'JB-4', 'JB-5', 'JB-6', 'JB-24', 'JB-25']),
      on: {
        ...PAPER,
        claim: CLAIM,
        withdraw: WITHDRAW,
        prove: PROVE,
        'hand over': NOT_YET_HANDED_OVER,
        close: NOT_YET_CLOSED,
      },
    },
    claim: {
      ...phaseMeta('claim', ['JB-6', 'JB-7', 'JB-8', 'JB-24', 'JB-25']),
      on: {
        ...PAPER,
        claim: CLAIM,
        withdraw: WITHDRAW,
        begin: WORK_ON,
        prove: PROVE,
        'hand over': NOT_YET_HANDED_OVER,
        close: NOT_YET_CLOSED,
      },
    },
    proof: {
      ...phaseMeta('proof', ['JB-7', 'JB-8', 'JB-9', 'JB-10', 'JB-24', 'JB-25']),
      on: {
        ...PAPER,
        claim: CLAIM,
        withdraw: WITHDRAW,
        begin: WORK_ON,
        'hand over': { target: 'handover', actions: 'keepHandover', meta: { rule: 'JB-10' } },
        close: NOT_YET_CLOSED,
      },
    },
    handover: {
      ...phaseMeta('handover', ['JB-9', 'JB-10', 'JB-11']),
      on: {
        note: PAPER.note,
        'hand over': { actions: 'keepHandover', meta: { rule: 'JB-10' } },
        begin: WORK_ON,
        close: { target: 'debrief', meta: { rule: 'JB-11' } },
        '*': refusing('handed over', 'JB-11'),
      },
    },
    debrief: { ...phaseMeta('debrief', ['JB-12']), on: NOTHING_MORE },
  },
});
