import type { RunSetup } from '../../engine/index.ts';
import { applyFaults, type Fault } from '../../faults/index.ts';
import { IN_SERVICE, STANDING } from '../observe/moment.ts';
import { checkName } from '../observe/reading.ts';
import { CALL_S, type Plan } from './plan.ts';
import { onsetsOf, particlesFor, severityOf, withTolerances } from './spread.ts';
import { keyName, type Sample, takeSample } from './take-sample.ts';

/** Plants with nothing wrong, from which the bins take their edges. */
export const SOUND_PLANTS = 20;
/** Particles of a fault whose severity has a range. */
export const MOST_PARTICLES = 10;
/** Nothing wrong is as likely as a common fault: people do call for nothing. */
export const SOUND_PRIOR = 2;

const ENDS_IN = keyName(checkName('watch one start'), STANDING, 'ends in');

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
  const setups = setupsOf(plan, fault).slice(0, first);
  return setups.flatMap((setup) => {
    const readings = takeSample(setup, plan);
    if (comesLater(setup) && readings.get(ENDS_IN) === IN_SERVICE) return [];
    return [{ severity: setup.faults[0]?.severity ?? 0, readings }];
  });
}

/** What comes later and stops nothing is no reason to call anyone. */
function comesLater({ faults }: RunSetup): boolean {
  return faults.some(({ onset }) => onset.kind === 'time');
}

/**
 * What a fault does to the parameters of each of its particles, and when, as a text: two faults or
 * plants of which it is the same run alike.
 */
export function effectOf(plan: Plan, fault: Fault): string {
  return setupsOf(plan, fault)
    .map((own) => {
      applyFaults(own.plant, own.faults);
      return JSON.stringify([
        own.plant,
        own.initial,
        own.seed,
        own.faults.map(({ onset }) => onset),
      ]);
    })
    .join('\n');
}

function setupsOf({ setup, serviceS }: Plan, fault: Fault | null): readonly RunSetup[] {
  if (fault === null) {
    return Array.from({ length: SOUND_PLANTS }, (_, seed) => withTolerances(setup, seed));
  }
  const count = particlesFor(fault, MOST_PARTICLES);
  return onsetsOf(fault, count, CALL_S, serviceS).map((onset, seed) => {
    const severity = seed < count ? severityOf(fault, seed, count) : fault.severity.typical;
    const faults = [{ fault: fault.id, severity, onset }];
    return { ...withTolerances(setup, seed), faults };
  });
}
