import { createContext, type ReactNode, useContext } from 'react';
import { isMessage, say } from '../../../i18n/index.ts';
import {
  type FileEdit,
  type Path,
  type Plain,
  type PlainGroup,
  pathText,
} from '../../../scenario/editing/index.ts';
import type { AuthorFacts, AuthorPlant } from '../author-protocol.ts';
import type { FileSchema } from '../file-schema.ts';

export interface FieldProps {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  readonly required: boolean;
  /** The group that it stands in. */
  readonly beside: PlainGroup;
}

export interface FormWays {
  readonly facts: AuthorFacts;
  /** Null where the file names none that there is. */
  readonly plant: AuthorPlant | null;
  readonly data: PlainGroup;
  /** What is wrong, by path. */
  readonly issues: ReadonlyMap<string, readonly string[]>;
  /** @param kind changes of one kind that follow each other closely are undone together */
  edit(edit: FileEdit, kind?: string): void;
  /** Of any key; groups and lists are made of fields, and a field may be a group. */
  renderField(props: FieldProps): ReactNode;
}

const FormContext = createContext<FormWays | null>(null);
export const FormProvider = FormContext.Provider;

export function useForm(): FormWays {
  const ways = useContext(FormContext);
  if (ways === null) throw new Error('no form around this field');
  return ways;
}

export function fieldId(path: Path): string {
  return `field-${pathText(path)}`;
}

/** What a key is called: some have another name inside some groups. An entry has its number. */
export function labelOf(path: Path): string {
  const place = path.at(-1);
  if (typeof place === 'number') {
    return say('author.entry.label', { what: labelOf(path.slice(0, -1)), number: place + 1 });
  }
  const names = path.filter((part): part is string => typeof part === 'string');
  const key = names.at(-1) ?? '';
  const within = `author.key.${names.at(-2) ?? ''}.${key}`;
  if (isMessage(within)) return say(within);
  const plain = `author.key.${key}`;
  return isMessage(plain) ? say(plain) : key;
}

export function issuesUnder(issues: FormWays['issues'], path: Path): number {
  const own = pathText(path);
  let count = 0;
  for (const [where, said] of issues) {
    const rest = where.slice(own.length);
    if (where.startsWith(own) && (rest === '' || rest.startsWith('.') || rest.startsWith('['))) {
      count += said.length;
    }
  }
  return count;
}
