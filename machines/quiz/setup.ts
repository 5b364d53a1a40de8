import { assign, setup } from 'xstate';
import { type QuizEntry, type QuizResponse, SURE_WORDS } from './entries.ts';
import type { QuizMeta, QuizRuleMeta } from './meta.ts';
import type { QuizAnswer, QuizPaper, QuizRefusal } from './state.ts';

export interface QuizContext extends QuizPaper {
  /** Why the last entry was not taken; null where it was. */
  readonly refusal: QuizRefusal | null;
}

interface Given {
  readonly context: QuizContext;
  readonly event: QuizEntry;
}

/** Everything the chart names. The chart itself holds no condition inline. */
export const quizSetup = setup({
  types: {} as {
    context: QuizContext;
    events: QuizEntry;
    input: QuizContext;
    meta: QuizMeta;
    transitionMeta: QuizRuleMeta;
  },
  guards: {
    isExam: given('begin', ({ mode }) => mode === 'exam'),
    noItems: given('begin', ({ items }) => items.length === 0),
    itemTwice: given('begin', ({ items }) => new Set(items).size < items.length),
    notThisPlace: ({ context, event }) =>
      (event.type === 'answer' || event.type === 'pass') && event.place !== context.place,
    nothingAnswered: given('answer', ({ response }) => !isWhole(response)),
    unsure: given('answer', ({ confidence }) => !SURE_WORDS.includes(confidence)),
    placeMissing: given('go to', ({ place }, { items }) => !(place in items)),
    isLast: ({ context }) => context.place === context.items.length - 1,
  },
  actions: {
    refuse: assign((_, params: { refusal: QuizRefusal }) => params),
    layOut: take('begin', ({ atISO, mode, seed, items }) => ({
      mode,
      seed,
      items,
      startedISO: atISO,
      answers: items.map(() => null),
    })),
    keepAnswer: take('answer', ({ atISO, place, response, confidence }, { answers }) => ({
      answers: answers.map((before, i) =>
        i === place ? ({ response, confidence, atISO } satisfies QuizAnswer) : before,
      ),
    })),
    goOn: assign({ place: ({ context }) => context.place + 1 }),
    goTo: take('go to', ({ place }) => ({ place })),
    noteEnd: assign({ endedISO: ({ event }) => event.atISO }),
  },
});

type Typed<Type extends QuizEntry['type']> = Extract<QuizEntry, { type: Type }>;

function given<Type extends QuizEntry['type']>(
  type: Type,
  holds: (entry: Typed<Type>, context: QuizContext) => boolean,
) {
  return ({ context, event }: Given): boolean =>
    event.type === type && holds(event as Typed<Type>, context);
}

function take<Type extends QuizEntry['type']>(
  type: Type,
  change: (entry: Typed<Type>, context: QuizContext) => Partial<QuizContext>,
) {
  return assign<QuizContext, QuizEntry, undefined, QuizEntry, never>(({ context, event }) =>
    event.type === type ? change(event as Typed<Type>, context) : {},
  );
}

/** Whether there is an answer in it at all, whatever it is worth. */
function isWhole(response: QuizResponse): boolean {
  switch (response.is) {
    case 'choice':
      return Number.isInteger(response.option) && response.option >= 0;
    case 'order':
      return (
        response.order.length > 0 &&
        [...response.order].sort((a, b) => a - b).every((place, i) => place === i)
      );
    case 'number':
      return Number.isFinite(response.value);
  }
}
