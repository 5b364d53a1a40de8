import type { Path, Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { FieldFrame } from './field-frame.tsx';
import { useForm } from './form-context.ts';
import { hintOf } from './hint-of.ts';
import { useDraft } from './use-draft.ts';

/** Longer than this may be said in several lines. */
const ONE_LINE = 100;

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  readonly required: boolean;
  readonly label?: string;
  /** Names to choose from; others may be typed. */
  readonly names?: readonly string[];
}

export function TextField({ path, schema, value, required, label, names }: Props) {
  const { edit } = useForm();
  const written = textIn(value);
  const long = (schema.maxLength ?? 0) > ONE_LINE && names === undefined;
  const draft = useDraft(written, (typed) => {
    const text = tidy(typed);
    if (text === '' && !required) edit({ do: 'remove', path }, `field ${path.join('.')}`);
    else edit({ do: 'set', path, value: text }, `field ${path.join('.')}`);
  });
  const handlers = {
    value: draft.value,
    onFocus: draft.onFocus,
    onBlur: draft.onBlur,
  };
  return (
    <FieldFrame path={path} label={label} hint={hintOf(schema)}>
      {(described) =>
        long ? (
          <textarea
            {...described}
            {...handlers}
            rows={Math.min(12, 2 + Math.ceil(written.length / 70))}
            onChange={({ target }) => draft.type(target.value, tidy(target.value))}
          />
        ) : (
          <>
            <input
              {...described}
              {...handlers}
              type="text"
              autoComplete="off"
              list={names === undefined ? undefined : `${described.id}-names`}
              onChange={({ target }) => draft.type(target.value, tidy(target.value))}
            />
            {names === undefined ? null : (
              <datalist id={`${described.id}-names`}>
                {names.map((name) => (
                  <option key={name} value={name} />
                ))}
              </datalist>
            )}
          </>
        )
      }
    </FieldFrame>
  );
}

export function textIn(value: Plain | undefined): string {
  if (value === undefined || value === null) return '';
  return typeof value === 'object' ? '' : String(value);
}

/** Nobody means a space at either end. */
function tidy(text: string): string {
  return text
    .split('\n')
    .map((line) => line.trim())
    .join('\n')
    .trim();
}
