import { assign, setup } from 'xstate';
import type { DeskPaper, Pin, Refusal } from './desk.ts';
import type { DeskEntry, Guidance } from './entries.ts';
import type { DeskMeta, DeskRuleMeta } from './meta.ts';

export interface DeskContext extends DeskPaper {
  /** Why the last entry was not taken; null where it was. */
  readonly refusal: Refusal | null;
}

/** Where arriving did not say, as no entry did before there was a choice. */
const UNSAID: Guidance = 'practice';

interface Given {
  readonly context: DeskContext;
  readonly event: DeskEntry;
}

/** Everything the three charts name. The charts themselves hold no condition inline. */
export const deskSetup = setup({
  types: {} as {
    context: DeskContext;
    events: DeskEntry;
    input: DeskContext;
    meta: DeskMeta;
    transitionMeta: DeskRuleMeta;
  },
  guards: {
    toolNotPermitted: given('arrive', ({ tools }, { plan }) => {
      const permitted = plan.tools ?? 'all';
      return permitted !== 'all' && tools.some((tool) => !permitted.includes(tool));
    }),
    suspectTwice: given('suspect', ({ ranked }) => new Set(ranked).size < ranked.length),
    notGuided: ({ context }) => context.guidance !== 'guided',
    isAssessment: ({ context }) => context.guidance === 'assessment',
    pinMissing: given('claim', ({ why }, { pins }) => why.some((index) => !(index in pins))),
    partUnnamed: given('claim', ({ part }) => part.trim() === ''),
    claimedAlready: given('claim', ({ part }, { claims }) =>
      claims.some((claim) => claim.part === part),
    ),
    somethingClaimed: ({ context }) => context.claims.length > 0,
    moreThanOneClaimed: ({ context }) => context.claims.length > 1,
    outOfTime: ({ context, event }) =>
      event.t > (context.begunAt ?? event.t) + (context.plan.limitS ?? Number.POSITIVE_INFINITY),
    drillOptionMissing: given('answer', ({ option }, { plan }) => !isOption(option, plan.options)),
    stopNotNext: given(
      'explain',
      ({ step }, { plan, stops }) => plan.steps?.[stops]?.step !== step,
    ),
    stepNotThis: given('answer', ({ step }, context) => stopOf(context)?.step !== step),
    stopOptionMissing: given(
      'answer',
      ({ option }, context) => !isOption(option, stopOf(context)?.options),
    ),
    mayBreakHere: ({ context }) => stopOf(context)?.mayBreak === true,
    stopsToCome: ({ context }) => context.stops < (context.plan.steps?.length ?? 0),
  },
  actions: {
    refuse: assign((_, params: { refusal: Refusal }) => params),
    takeTools: take('arrive', ({ tools }) => ({ tools })),
    setGuidance: take('arrive', ({ guidance = UNSAID }) => ({ guidance })),
    keepHint: take('hint', ({ t, rung }, { hints }) => ({ hints: [...hints, { t, rung }] })),
    keepFeedback: take('feedback', ({ t }, { feedbacks }) => ({ feedbacks: [...feedbacks, t] })),
    keepTopic: take('ask', ({ topic }, { asked }) => ({
      asked: asked.includes(topic) ? asked : [...asked, topic],
    })),
    keepSheetRead: assign({ sheetRead: true }),
    keepPin: take('pin', ({ t, what, place, other, reading, step }, { pins }) => ({
      pins: [...pins, { t, what, place, other, reading, step } satisfies Pin],
    })),
    keepNote: take('note', ({ t, text }, { notes }) => ({ notes: [...notes, { t, text }] })),
    keepSuspects: take('suspect', ({ ranked }) => ({ suspects: ranked })),
    noteBegin: assign({ begunAt: ({ context, event }) => context.begunAt ?? event.t }),
    keepClaim: take('claim', ({ t, part, why, mechanism }, { claims }) => ({
      claims: [...claims, { t, part, why, mechanism, unsupported: why.length === 0 }],
    })),
    dropClaim: assign({ claims: ({ context }) => context.claims.slice(0, -1) }),
    keepHandover: take('hand over', ({ t, cause, evidence, done, watch }) => ({
      handover: { t, cause, evidence, done, watch },
    })),
    dropHandover: assign({ handover: null }),
    keepAnswer: take('answer', ({ t, step, option }, { answers }) => ({
      answers: [...answers, { t, step, option }],
    })),
    countStop: assign({ stops: ({ context }) => context.stops + 1 }),
    keepBroken: take('break', ({ fault }) => ({ broken: fault })),
    dropBroken: assign({ broken: null }),
  },
});

type Typed<Type extends DeskEntry['type']> = Extract<DeskEntry, { type: Type }>;

function given<Type extends DeskEntry['type']>(
  type: Type,
  holds: (entry: Typed<Type>, context: DeskContext) => boolean,
) {
  return ({ context, event }: Given): boolean =>
    event.type === type && holds(event as Typed<Type>, context);
}

/** What an entry of this type changes on paper. */
function take<Type extends DeskEntry['type']>(
  type: Type,
  change: (entry: Typed<Type>, context: DeskContext) => Partial<DeskContext>,
) {
  return assign<DeskContext, DeskEntry, undefined, DeskEntry, never>(({ context, event }) =>
    event.type === type ? change(event as Typed<Type>, context) : {},
  );
}

function stopOf({ plan, stops }: DeskContext) {
  return plan.steps?.[stops - 1];
}

function isOption(option: number, options = 0): boolean {
  return Number.isInteger(option) && option >= 0 && option < options;
}
