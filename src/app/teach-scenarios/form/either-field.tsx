import { say } from '../../../i18n/index.ts';
import { isGroup, type Path, type Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { WrongHere } from './field-frame.tsx';
import { fieldId, labelOf, useForm } from './form-context.ts';
import { GroupFields } from './group-fields.tsx';
import { startingValue } from './starting-value.ts';

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  readonly required: boolean;
}

/** One word, or a group that says more: `lockout: none`, or with its cause and step. */
export function EitherField({ path, schema, value }: Props) {
  const { edit } = useForm();
  const branches = schema.anyOf ?? [];
  const word = branches.find((branch) => branch.const !== undefined);
  const group = branches.find(({ type }) => type === 'object');
  const isWord = !isGroup(value);
  const label = labelOf(path);
  return (
    <fieldset className="author-group" id={fieldId(path)} tabIndex={-1}>
      <legend>{label}</legend>
      <div className="segments">
        <button
          type="button"
          className="button"
          aria-pressed={isWord}
          onClick={() => word && edit({ do: 'set', path, value: word.const as Plain })}
        >
          {say('author.lockout.none')}
        </button>
        <button
          type="button"
          className="button"
          aria-pressed={!isWord}
          onClick={() => {
            if (isWord && group !== undefined) {
              edit({ do: 'set', path, value: startingValue(group) });
            }
          }}
        >
          {say('author.lockout.some')}
        </button>
      </div>
      {isWord || group === undefined ? null : (
        <GroupFields path={path} schema={group} value={value} />
      )}
      <WrongHere path={path} />
    </fieldset>
  );
}
