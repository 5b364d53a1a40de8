import { checksFirst } from './checks-first.ts';
import { greedyOf } from './greedy.ts';
import type { Learner } from './learner.ts';

/** The exact optimum where what is left can be thought through, before that by gain for cost. */
export const ideal: Learner = {
  name: 'ideal',
  byChance: false,
  goThrough: checksFirst(() => (view, open) => {
    const thought = view.thought();
    if (thought === null) return greedyOf(view, open);
    const question = thought.best?.ask.question;
    return open.find((one) => one.question === question) ?? null;
  }),
};
