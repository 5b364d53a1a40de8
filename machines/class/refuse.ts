import type { ClassRefusal } from './state.ts';

/** A branch that takes nothing and says why. Behind a guarded branch it is what the guard's "no" means. */
export function refusing(refusal: ClassRefusal, rule: string) {
  return { actions: { type: 'refuse', params: { refusal } }, meta: { rule } } as const;
}

export function refusingWhen<Guard extends string>(
  guard: Guard,
  refusal: ClassRefusal,
  rule: string,
) {
  return { guard, ...refusing(refusal, rule) } as const;
}
