import type { RunSetup } from '../engine/index.ts';
import { type Library, setupOf } from '../scenario/index.ts';

/** The shipped start of a plant in which nothing is wrong. */
export function soundSetup(library: Library, plant: string): RunSetup | null {
  const scenario = library.scenarios.find(
    (one) => one.plant === plant && one.faults.length === 0 && one.expect.reaches === 'modulation',
  );
  return scenario === undefined ? null : setupOf(library, scenario.id);
}
