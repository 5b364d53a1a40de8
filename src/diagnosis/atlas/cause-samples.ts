import type { RunSetup } from '../../engine/index.ts';
import { applyFaults, type Fault } from '../../faults/index.ts';
import type { Plan } from './plan.ts';
import { particlesFor, severityOf, withTolerances } from './spread.ts';
import { type Sample, takeSample } from './take-sample.ts';

/** Plants with nothing wrong, from which the bins take their edges. */
export const SOUND_PLANTS = 20;
/** Particles of a fault whose severity has a range. */
export const MOST_PARTICLES = 8;
/** Nothing wrong is as likely as a common fault: people do call for nothing. */
export const SOUND_PRIOR = 2;

export interface CauseSample {
  readonly severity: number;
  readonly readings: Sample;
}

/**
 * Particles of a fault, or of sound plants for null.
 *
 * @param first only so many of them; all of them if left out
 */
export function samplesOf(
  plan: Plan,
  fault: Fault | null,
  first = Number.POSITIVE_INFINITY,
): readonly CauseSample[] {
  const setups = setupsOf(plan.setup, fault).slice(0, first);
  return setups.map((setup) => ({
    severity: setup.faults[0]?.severity ?? 0,
    readings: takeSample(setup, plan),
  }));
}

/**
 * What a fault does to the parameters of each of its particles, as a text: two faults or plants of which
 * it is the same run alike.
 */
export function effectOf(setup: RunSetup, fault: Fault): string {
  return setupsOf(setup, fault)
    .map((own) => {
      applyFaults(own.plant, own.faults);
      return JSON.stringify([own.plant, own.initial, own.seed]);
    })
    .join('\n');
}

function setupsOf(setup: RunSetup, fault: Fault | null): readonly RunSetup[] {
  const count = fault === null ? SOUND_PLANTS : particlesFor(fault, MOST_PARTICLES);
  return Array.from({ length: count }, (_, seed) => {
    const own = withTolerances(setup, seed);
    if (fault === null) return own;
    const severity = severityOf(fault, seed, count);
    return { ...own, faults: [{ fault: fault.id, severity, onset: { kind: 'start' } }] };
  });
}
