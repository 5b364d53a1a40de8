import type { QuizPhase } from './state.ts';

/** What a phase of a quiz says of itself. */
export interface QuizMeta {
  readonly phase: QuizPhase;
  readonly rules: readonly string[];
}
export interface QuizRuleMeta {
  readonly rule: string;
}

export function quizMeta(phase: QuizPhase, rules: readonly string[]) {
  return { meta: { phase, rules } satisfies QuizMeta };
}
