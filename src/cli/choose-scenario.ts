import { existsSync } from 'node:fs';
import { sayMessage } from '../i18n/index.ts';
import { buildLibrary, type Library, nearest, phrase, type Scenario } from '../scenario/index.ts';
import { inQuotes, perhaps } from './arguments.ts';
import { issueLines } from './issue-lines.ts';
import { readLibrary } from './library.ts';
import { readTextFile } from './read-text-file.ts';

export type Choice =
  | { readonly ok: true; readonly library: Library; readonly scenario: Scenario }
  | { readonly ok: false; readonly mistake: string };

/** A shipped scenario by its name, or someone's own by its file, on shipped plants and profiles. */
export function chooseScenario(nameOrFile: string, root: string, command: string): Choice {
  const shipped = readLibrary(root);
  if (!shipped.ok) return { ok: false, mistake: issueLines(shipped.issues) };
  const library = shipped.value;
  const byName = library.scenarios.find(({ id }) => id === nameOrFile);
  if (byName !== undefined) return { ok: true, library, scenario: byName };
  if (!/[\\/]|\.(ya?ml|json)$/i.test(nameOrFile) && !existsSync(nameOrFile)) {
    const known = library.scenarios.map(({ id }) => id);
    const params = {
      command,
      found: inQuotes(nameOrFile),
      expected: phrase('expected.scenario', { known }),
      perhaps: perhaps(nearest(nameOrFile, known)),
    };
    return { ok: false, mistake: sayMessage(phrase('usage.unknown-scenario', params)) };
  }
  const file = readTextFile(nameOrFile);
  if (!file.ok) return { ok: false, mistake: issueLines(file.issues) };
  const built = buildLibrary([file.value], { base: library });
  if (!built.ok) return { ok: false, mistake: issueLines(built.issues) };
  const scenario = built.value.scenarios.find((other) => !library.scenarios.includes(other));
  if (scenario === undefined) {
    const params = { command, found: inQuotes(nameOrFile) };
    return { ok: false, mistake: sayMessage(phrase('usage.not-a-scenario', params)) };
  }
  return { ok: true, library: built.value, scenario };
}
