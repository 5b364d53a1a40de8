import type { Condition } from './condition.ts';
import type { Cause, CommandName, InputName, StepName, TargetName } from './terminals.ts';
import type { DurationName } from './timings.ts';
import type { WatchName } from './watches.ts';

export interface Wait {
  readonly input: InputName;
  readonly wanted: boolean;
  readonly when?: Condition;
}
export interface Drive {
  readonly command: CommandName;
  readonly when?: Condition;
}
export interface Failure {
  readonly cause: Cause;
  readonly when?: Condition;
}

/**
 * What a state of the sequence says of itself. The outputs are computed from it and the
 * pages explain from it, so that neither can drift from the other.
 */
export interface StateMeta {
  readonly step: StepName;
  /** Names the state within its step. */
  readonly phase: string;
  /** Message code. */
  readonly purpose: string;
  readonly when?: Condition;
  readonly waitsFor: readonly Wait[];
  readonly drives: readonly Drive[];
  readonly target: TargetName;
  /** The timer that must run out before the state is left. */
  readonly lasts: DurationName | null;
  /** The timer after which the state has certainly been left. */
  readonly limit: DurationName | null;
  /** Failures of the step's own; those of supervision are named by its watch. */
  readonly failsAs: readonly Failure[];
  readonly rules: readonly string[];
  readonly watch: WatchName;
}
export interface RuleMeta {
  readonly rule: string;
}

/** The config by which a state describes itself. */
export function describedAs(meta: Omit<StateMeta, 'purpose'>) {
  return { meta: { ...meta, purpose: `step.${slugOf(meta.step)}` } satisfies StateMeta };
}

/** The config by which entering a step is made known to supervision. */
export function entering({ step, watch }: Pick<StateMeta, 'step' | 'watch'>) {
  return { entry: [{ type: 'enterStep' as const, params: { step, watch } }] };
}

/** Both, for a step that is one state. */
export function asStep(meta: Omit<StateMeta, 'purpose'>) {
  return { ...describedAs(meta), ...entering(meta) };
}

export const VENT_OPEN = {
  command: 'ventValve',
  when: { vent: ['normally open'] },
} as const satisfies Drive;

function slugOf(step: StepName): string {
  return step.replace(/[^a-z]+/g, '-');
}
