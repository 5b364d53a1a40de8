import type { Cause, StepName } from './terminals.ts';

/** From outside: the packed word of inputs, sent only when it changed. */
export interface InputsEvent {
  readonly type: 'inputs';
  readonly word: number;
}

/** Raised by one region for another, never sent from outside. */
export type InternalEvent =
  | { readonly type: 'trip'; readonly cause: Cause; readonly step: StepName }
  | { readonly type: 'rest proved' }
  | { readonly type: 'fuel opened' }
  | { readonly type: 'flame proved' }
  | { readonly type: 'fuel shut' }
  | { readonly type: 'locked out' }
  | { readonly type: 'awake' }
  | { readonly type: 'reset' };

export type BurnerEvent = InputsEvent | InternalEvent;
