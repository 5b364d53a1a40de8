import type { QuizRefusal } from './state.ts';

/** A branch that takes nothing and says why. Behind a guarded branch it is what the guard's "no" means. */
export function refusing(refusal: QuizRefusal, rule: string) {
  return { actions: { type: 'refuse', params: { refusal } }, meta: { rule } } as const;
}

export function refusingWhen<Guard extends string>(
  guard: Guard,
  refusal: QuizRefusal,
  rule: string,
) {
  return { guard, ...refusing(refusal, rule) } as const;
}
