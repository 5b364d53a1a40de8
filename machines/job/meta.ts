import type { DeskPhase } from './desk.ts';

/** What a phase of the desk says of itself. */
export interface DeskMeta {
  readonly phase: DeskPhase;
  /** Message code. */
  readonly purpose: string;
  readonly rules: readonly string[];
}
export interface DeskRuleMeta {
  readonly rule: string;
}

export function phaseMeta(phase: DeskPhase, rules: readonly string[]) {
  return {
    meta: { phase, purpose: `desk.${phase.replace(/ /g, '-')}`, rules } satisfies DeskMeta,
  };
}
