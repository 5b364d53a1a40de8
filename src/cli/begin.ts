import { sayMessage } from '../i18n/index.ts';
import type { Library } from '../scenario/index.ts';
import { type Arguments, type CommandSpec, parseArguments } from './arguments.ts';
import { issueLines } from './issue-lines.ts';
import { readLibrary } from './library.ts';
import { type Outcome, refuse } from './outcome.ts';

export type Begun =
  | ({ readonly ok: true; readonly library: Library } & Arguments)
  | { readonly ok: false; readonly outcome: Outcome };

/** What every command that works on the shipped files begins with: its words understood, the files read. */
export function begin(words: readonly string[], spec: CommandSpec, root: string): Begun {
  const parsed = parseArguments(words, spec);
  if (!parsed.ok) return { ok: false, outcome: refuse(sayMessage(parsed.mistake)) };
  const library = readLibrary(root);
  if (!library.ok) return { ok: false, outcome: refuse(issueLines(library.issues)) };
  return { ok: true, library: library.value, ...parsed.value };
}
