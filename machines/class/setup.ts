import { assign, setup } from 'xstate';
import { CLASS_SPEEDS, type ClassEntry, type ClassTo } from './entries.ts';
import type { ClassMeta, ClassRuleMeta } from './meta.ts';
import type { ClassBook, ClassPace, ClassRefusal } from './state.ts';

export interface ClassContext extends ClassBook {
  /** Why the last entry was not taken; null where it was. */
  readonly refusal: ClassRefusal | null;
}

interface Given {
  readonly context: ClassContext;
  readonly event: ClassEntry;
}

/** Everything the chart names. The chart itself holds no condition inline. */
export const classSetup = setup({
  types: {} as {
    context: ClassContext;
    events: ClassEntry;
    input: ClassContext;
    meta: ClassMeta;
    transitionMeta: ClassRuleMeta;
  },
  guards: {
    togetherWithoutStart: given(
      'open',
      ({ way, what }) => way === 'together' && what.kind !== 'start',
    ),
    isTogether: ({ context }) => context.way === 'together',
    isQuiz: ({ context }) => context.what?.kind === 'quiz',
    noSuchSpeed: given('run', ({ speed }) => !CLASS_SPEEDS.some((one) => one === speed)),
    nothingToDo: ({ event }) =>
      (event.type === 'do' || event.type === 'when') && event.acts.length === 0,
    triggerTwice: given('when', ({ id }, { triggers }) => triggers.some((one) => one.id === id)),
    triggerMissing: given(
      'forget when',
      ({ id }, { triggers }) => !triggers.some((one) => one.id === id),
    ),
    pollOpen: ({ context }) => context.poll !== null,
    pollMissing: ({ context, event }) =>
      (event.type === 'show poll' || event.type === 'end poll') && context.poll?.id !== event.id,
    pollShown: ({ context }) => context.poll !== null && context.poll.shown !== null,
    tooFewOptions: given('poll', ({ question }) => question.options.length < 2),
  },
  actions: {
    refuse: assign((_, params: { refusal: ClassRefusal }) => params),
    keepOpening: take('open', ({ what, way, seed, atMs }) => ({
      what,
      way,
      seed,
      openedMs: atMs,
    })),
    thaw: assign({ pace: ({ context }) => ({ ...context.pace, frozen: false }) }),
    freeze: take('freeze', ({ to }, book) => paced(book, to, { frozen: true })),
    run: take('run', ({ to, speed }, book) => paced(book, to, { frozen: false, speed })),
    rest: assign(({ context, event }) =>
      'to' in event ? paced(context, event.to, { frozen: true }) : {},
    ),
    keepTrigger: take('when', ({ id, to, step, acts }, { triggers }) => ({
      triggers: [...triggers, { id, to, step, acts }],
    })),
    dropTrigger: take('forget when', ({ id }, { triggers }) => ({
      triggers: triggers.filter((one) => one.id !== id),
    })),
    lockTools: take('lock tools', ({ tools }) => ({ lockedTools: [...new Set(tools)] })),
    keepHint: take('hint', ({ n, to, text }, { hints }) => ({
      hints: [...hints, { n, to, text }],
    })),
    askPoll: take('poll', ({ id, question }) => ({ poll: { id, question, shown: null } })),
    showPoll: take('show poll', ({ right, why, counts }, { poll }) => ({
      poll: poll === null ? null : { ...poll, shown: { right, why, counts } },
    })),
    endPoll: assign({ poll: null }),
    spotlight: take('spotlight', ({ seat }) => ({ spotlight: seat })),
    project: take('project', ({ shows, names }) => ({ shows, names })),
  },
});

type Typed<Type extends ClassEntry['type']> = Extract<ClassEntry, { type: Type }>;

function given<Type extends ClassEntry['type']>(
  type: Type,
  holds: (entry: Typed<Type>, context: ClassContext) => boolean,
) {
  return ({ context, event }: Given): boolean =>
    event.type === type && holds(event as Typed<Type>, context);
}

function take<Type extends ClassEntry['type']>(
  type: Type,
  change: (entry: Typed<Type>, context: ClassContext) => Partial<ClassContext>,
) {
  return assign<ClassContext, ClassEntry, undefined, ClassEntry, never>(({ context, event }) =>
    event.type === type ? change(event as Typed<Type>, context) : {},
  );
}

/** What is told to all takes the place of what single seats were told before. */
function paced(
  { pace, paces }: ClassBook,
  to: ClassTo,
  change: Partial<ClassPace>,
): Partial<ClassContext> {
  if (to === 'all') return { pace: { ...pace, ...change }, paces: [] };
  const before = paces.find(({ seat }) => seat === to.seat) ?? { seat: to.seat, ...pace };
  const others = paces.filter(({ seat }) => seat !== to.seat);
  return { paces: [...others, { ...before, ...change }] };
}
