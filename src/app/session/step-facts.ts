import type { StepDescription, Timings } from '../../../machines/burner/index.ts';
import type { StepFacts } from './protocol.ts';

/**
 * What the page says of a step, in seconds of the plant's profile. Phases that only last
 * add up; one that waits has a limit, and may have a time of its own before the waiting.
 */
export function stepFacts(described: StepDescription, timings: Timings): StepFacts {
  const { step, purpose, phases, waitsFor, drives, failsAs } = described;
  const timed = phases.filter(({ lasts, limit }) => lasts !== null && lasts === limit);
  const waiting = phases.filter((phase) => !timed.includes(phase));
  const timedS = timed.reduce((sum, { lasts }) => sum + (lasts === null ? 0 : timings[lasts]), 0);
  const [first] = waiting;
  const lastsFirst = first?.lasts ?? null;
  return {
    step,
    purpose,
    waits: waitsFor.map(({ input, wanted }) => ({ input, wanted })),
    drives: [...drives],
    lastsS: first === undefined ? orNull(timedS) : lastsFirst === null ? null : timings[lastsFirst],
    failLimitS: first?.limit == null ? null : timedS + timings[first.limit],
    failsAs: [...failsAs],
  };
}

function orNull(seconds: number): number | null {
  return seconds > 0 ? seconds : null;
}
