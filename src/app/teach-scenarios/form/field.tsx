import type { ReactNode } from 'react';
import type { Path, Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { ChoiceField, RightField } from './choice-field.tsx';
import { EitherField } from './either-field.tsx';
import { EntriesField } from './entries-field.tsx';
import { FaultField } from './fault-field.tsx';
import { FlagField } from './flag-field.tsx';
import type { FieldProps } from './form-context.ts';
import { GroupField } from './group-field.tsx';
import { namedField } from './named-field.tsx';
import { NumberField } from './number-field.tsx';
import { OnsetField } from './onset-field.tsx';
import { SeverityField } from './severity-field.tsx';
import { TextField } from './text-field.tsx';
import { wordTitle } from './word-title.ts';
import { WordsField } from './words-field.tsx';

/** One key of a file: what is special by its name, all others by their schema. */
export function Field(props: FieldProps): ReactNode {
  const { path, schema, value, required, beside } = props;
  const key = path.at(-1);
  if (key === 'fault') return <FaultField {...props} />;
  if (key === 'severity') return <SeverityField {...props} />;
  if (key === 'onset') return <OnsetField {...props} />;
  if (key === 'right' && Array.isArray(beside.options)) {
    return <RightField path={path} schema={schema} value={value} options={beside.options} />;
  }
  return namedField(props) ?? bySchema(path, schema, value, required);
}

function bySchema(
  path: Path,
  schema: FileSchema,
  value: Plain | undefined,
  required: boolean,
): ReactNode {
  const same = { path, schema, value, required };
  if (schema.enum !== undefined) {
    const options = schema.enum.map(String);
    const titled = options.map((word) => ({ value: word, title: wordTitle(path, word) }));
    return <ChoiceField {...same} options={titled} />;
  }
  const words = wordsOf(schema);
  if (words !== null) return <WordsField {...same} words={words.words} allWord={words.allWord} />;
  if (schema.anyOf !== undefined) return <EitherField {...same} />;
  switch (schema.type) {
    case 'object':
      return <GroupField {...same} />;
    case 'array':
      return <EntriesField {...same} />;
    case 'boolean':
      return <FlagField path={path} schema={schema} value={value} />;
    case 'number':
    case 'integer':
      return <NumberField {...same} />;
    default:
      return <TextField {...same} />;
  }
}

/** A list of which each word stands once at most; `steps` of what is expected may come again. */
function wordsOf(schema: FileSchema) {
  const list = schema.anyOf?.find(({ type }) => type === 'array') ?? schema;
  const all = schema.anyOf?.find((branch) => branch.const !== undefined)?.const;
  const words = list.items?.enum;
  if (list.type !== 'array' || words === undefined || (list.maxItems ?? 0) > words.length) {
    return null;
  }
  return { words: words.map(String), allWord: typeof all === 'string' ? all : null };
}
