import { say } from '../../../i18n/index.ts';
import { isGroup, type Path, type Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { WrongHere } from './field-frame.tsx';
import { fieldId, labelOf, useForm } from './form-context.ts';
import { GroupFields } from './group-fields.tsx';
import { hintOf } from './hint-of.ts';
import { startingValue } from './starting-value.ts';

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  readonly required: boolean;
}

/** A group with a frame; one that may be left out is added and taken away whole. */
export function GroupField({ path, schema, value, required }: Props) {
  const { edit } = useForm();
  const label = labelOf(path);
  if (!isGroup(value) && !required) {
    return (
      <div className="author-field">
        <button
          type="button"
          className="button"
          id={fieldId(path)}
          onClick={() => edit({ do: 'set', path, value: startingValue(schema) })}
        >
          {say('author.add', { what: label })}
        </button>
        {schema.description === undefined ? null : (
          <p className="quiet author-hint">{hintOf(schema)}</p>
        )}
        <WrongHere path={path} />
      </div>
    );
  }
  return (
    <fieldset className="author-group" id={fieldId(path)} tabIndex={-1}>
      <legend>{label}</legend>
      <WrongHere path={path} />
      <GroupFields path={path} schema={schema} value={value} />
      {required ? null : (
        <button type="button" className="button" onClick={() => edit({ do: 'remove', path })}>
          {say('author.leave-out', { what: label })}
        </button>
      )}
    </fieldset>
  );
}
