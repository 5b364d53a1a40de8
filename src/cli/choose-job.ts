import { existsSync } from 'node:fs';
import { sayMessage } from '../i18n/index.ts';
import { buildLibrary, type Job, type Library, nearest, phrase } from '../scenario/index.ts';
import { inQuotes, perhaps } from './arguments.ts';
import { issueLines } from './issue-lines.ts';
import { readLibrary } from './library.ts';
import { readTextFile } from './read-text-file.ts';

type Choice =
  | { readonly ok: true; readonly library: Library; readonly job: Job }
  | { readonly ok: false; readonly mistake: string };

/** A shipped job by its name, or someone's own by its file. */
export function chooseJob(nameOrFile: string, root: string, command: string): Choice {
  const shipped = readLibrary(root);
  if (!shipped.ok) return { ok: false, mistake: issueLines(shipped.issues) };
  const library = shipped.value;
  const job = library.jobs.find(({ id }) => id === nameOrFile);
  if (job !== undefined) return { ok: true, library, job };
  if (!existsSync(nameOrFile)) {
    const known = library.jobs.map(({ id }) => id);
    const params = {
      command,
      found: inQuotes(nameOrFile),
      expected: phrase('usage.expect.job'),
      perhaps: perhaps(nearest(nameOrFile, known)),
    };
    return { ok: false, mistake: sayMessage(phrase('usage.unknown-job', params)) };
  }
  const file = readTextFile(nameOrFile);
  if (!file.ok) return { ok: false, mistake: issueLines(file.issues) };
  const built = buildLibrary([file.value], { base: library });
  if (!built.ok) return { ok: false, mistake: issueLines(built.issues) };
  const own = built.value.jobs.find((one) => !library.jobs.includes(one));
  if (own !== undefined) return { ok: true, library: built.value, job: own };
  const params = { command, found: inQuotes(nameOrFile) };
  return { ok: false, mistake: sayMessage(phrase('usage.not-a-job', params)) };
}
