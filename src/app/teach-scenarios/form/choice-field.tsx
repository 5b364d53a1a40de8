import { say } from '../../../i18n/index.ts';
import type { Path, Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { FieldFrame } from './field-frame.tsx';
import { useForm } from './form-context.ts';
import { hintOf } from './hint-of.ts';
import { textIn } from './text-field.tsx';

export interface Option {
  readonly value: string;
  readonly title: string;
}

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  readonly required: boolean;
  readonly options: readonly Option[];
  readonly label?: string;
  /** What it is to leave it out. */
  readonly none?: string;
  /** Does more than to write the word. */
  readonly onChoose?: (value: string) => void;
}

export function ChoiceField(props: Props) {
  const { path, schema, value, required, options, label, none, onChoose } = props;
  const { edit } = useForm();
  const written = textIn(value);
  const isKnown = written === '' || options.some((option) => option.value === written);
  const choose = (chosen: string) => {
    if (onChoose !== undefined) onChoose(chosen);
    else if (chosen === '') edit({ do: 'remove', path });
    else edit({ do: 'set', path, value: chosen });
  };
  return (
    <FieldFrame path={path} label={label} hint={hintOf(schema)}>
      {(described) => (
        <select {...described} value={written} onChange={({ target }) => choose(target.value)}>
          {required && written !== '' ? null : (
            <option value="">{none ?? say(required ? 'author.choose' : 'author.none')}</option>
          )}
          {isKnown ? null : <option value={written}>{written}</option>}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.title}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}

/** `right` counts the answers from 0; here they are chosen by what they say. */
export function RightField({
  path,
  schema,
  value,
  options,
}: {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  readonly options: readonly Plain[];
}) {
  const { edit } = useForm();
  return (
    <ChoiceField
      path={path}
      schema={{ ...schema, description: '' }}
      value={value}
      required={true}
      options={options.map((option, i) => ({
        value: String(i),
        title: say('author.answer', { number: i + 1, text: textIn(option) }),
      }))}
      onChoose={(chosen) => edit({ do: 'set', path, value: Number(chosen) })}
    />
  );
}
