import type { ClassPhase } from './state.ts';

/** What a phase of a class says of itself. */
export interface ClassMeta {
  readonly phase: ClassPhase;
  readonly rules: readonly string[];
}
export interface ClassRuleMeta {
  readonly rule: string;
}

export function classMeta(phase: ClassPhase, rules: readonly string[]) {
  return { meta: { phase, rules } satisfies ClassMeta };
}
