import { refusing, refusingWhen } from './refuse.ts';

/** What may be written down or asked at any time between arriving and the end. None of it leads on. */
export const PAPER = {
  pin: { actions: 'keepPin', meta: { rule: 'JB-3' } },
  note: { actions: 'keepNote', meta: { rule: 'JB-3' } },
  ask: { actions: 'keepTopic', meta: { rule: 'JB-4' } },
  'read sheet': { actions: 'keepSheetRead', meta: { rule: 'JB-4' } },
  suspect: [
    refusingWhen('suspectTwice', 'suspected twice', 'JB-5'),
    { actions: 'keepSuspects', meta: { rule: 'JB-5' } },
  ],
  hint: [
    refusingWhen('notGuided', 'hints are for guided work', 'JB-24'),
    { actions: 'keepHint', meta: { rule: 'JB-24' } },
  ],
  feedback: [
    refusingWhen('isAssessment', 'no feedback in an assessment', 'JB-25'),
    { actions: 'keepFeedback', meta: { rule: 'JB-25' } },
  ],
} as const;

/** What no claim may be: without a part, on a pin that is not there, or a second time. */
export const CLAIM_REFUSALS = [
  refusingWhen('partUnnamed', 'nothing named', 'JB-6'),
  refusingWhen('pinMissing', 'no such pin', 'JB-6'),
  refusingWhen('claimedAlready', 'claimed already', 'JB-6'),
] as const;

/** The end: whatever else is said is refused. */
export const NOTHING_MORE = { '*': refusing('closed', 'JB-12') } as const;
