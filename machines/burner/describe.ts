import { applies } from './condition.ts';
import type { Wait } from './meta.ts';
import { PHASES, type Phase, STEP_INFO } from './phases.ts';
import type { Cause, CommandName, InputName, StepName, TargetName, Variant } from './terminals.ts';
import type { DurationName } from './timings.ts';

/** A wait or a failure as it stands for one plant: codes and names, no sentences. */
export interface PhaseDescription {
  readonly phase: number;
  readonly name: string;
  readonly waitsFor: readonly { readonly input: InputName; readonly wanted: boolean }[];
  readonly drives: readonly CommandName[];
  readonly target: TargetName;
  readonly lasts: DurationName | null;
  readonly limit: DurationName | null;
  readonly failsAs: readonly Cause[];
  readonly rules: readonly string[];
}
export interface StepDescription {
  readonly step: StepName;
  /** Message code. */
  readonly purpose: string;
  readonly phases: readonly PhaseDescription[];
  /** Of all phases together: what the step waits for in the end, drives at some time, and can fail as. */
  readonly waitsFor: PhaseDescription['waitsFor'];
  readonly drives: readonly CommandName[];
  readonly target: TargetName;
  readonly limits: readonly DurationName[];
  readonly failsAs: readonly Cause[];
  readonly rules: readonly string[];
}

export function describePhase(index: number, variant: Variant): PhaseDescription {
  const { meta } = PHASES[index] as Phase;
  const here = <T extends { readonly when?: Wait['when'] }>(all: readonly T[]): readonly T[] =>
    all.filter((one) => applies(one.when, variant));
  return {
    phase: index,
    name: meta.phase,
    waitsFor: here(meta.waitsFor).map(({ input, wanted }) => ({ input, wanted })),
    drives: here(meta.drives).map(({ command }) => command),
    target: meta.target,
    lasts: meta.lasts,
    limit: meta.limit,
    failsAs: here(meta.failsAs).map(({ cause }) => cause),
    rules: meta.rules,
  };
}

/** A step as this plant has it; undefined where the plant has no such step. */
export function describeStep(step: StepName, variant: Variant): StepDescription | undefined {
  const own = STEP_INFO[step].filter(({ meta }) => applies(meta.when, variant));
  const [first] = own;
  if (first === undefined) return undefined;
  const phases = own.map(({ index }) => describePhase(index, variant));
  const waits = new Map(
    phases.flatMap((phase) => phase.waitsFor).map((wait) => [wait.input, wait]),
  );
  return {
    step,
    purpose: first.meta.purpose,
    phases,
    waitsFor: [...waits.values()],
    drives: distinct(phases.flatMap((phase) => phase.drives)),
    target: first.meta.target,
    limits: distinct(phases.flatMap((phase) => phase.limit ?? [])),
    failsAs: distinct(phases.flatMap((phase) => phase.failsAs)),
    rules: distinct(phases.flatMap((phase) => phase.rules)),
  };
}

function distinct<T>(all: readonly T[]): T[] {
  return [...new Set(all)];
}
