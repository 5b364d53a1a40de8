import type { Path, Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { WrongHere } from './field-frame.tsx';
import { fieldId, labelOf, useForm } from './form-context.ts';

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
}

export function FlagField({ path, schema, value }: Props) {
  const { edit } = useForm();
  return (
    <div className="author-field">
      <label className="check">
        <input
          type="checkbox"
          id={fieldId(path)}
          checked={value === true}
          onChange={({ target }) => edit({ do: 'set', path, value: target.checked })}
        />
        <span>{schema.description ?? labelOf(path)}</span>
      </label>
      <WrongHere path={path} />
    </div>
  );
}
