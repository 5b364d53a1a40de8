import { sayMessage } from '../../i18n/index.ts';
import type { AuthorIssue } from './author-protocol.ts';

export interface SaidIssue {
  readonly line: number;
  readonly column: number;
  /** As the form has it: `faults[0].severity`; empty for the whole file. */
  readonly path: string;
  readonly says: string;
}

export function sayIssue({ line, column, path, says }: AuthorIssue): SaidIssue {
  const said = sayMessage(says);
  return { line, column, path, says: said.charAt(0).toUpperCase() + said.slice(1) };
}
