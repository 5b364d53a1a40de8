import { fileURLToPath } from 'node:url';
import { readLibrary } from '../../src/cli/library.ts';
import type { RunSetup } from '../../src/engine/index.ts';
import { type Library, type RunChoices, setupOf } from '../../src/scenario/index.ts';

/** The shipped library, read as the command line reads it. */
export const library: Library = readShipped();

export function shippedSetup(scenario: string, choices: RunChoices = {}): RunSetup {
  const setup = setupOf(library, scenario, choices);
  if (setup === null) throw new Error(`no scenario ${scenario}`);
  return setup;
}

function readShipped(): Library {
  const read = readLibrary(fileURLToPath(new URL('../..', import.meta.url)));
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2));
  return read.value;
}
