import { say } from '../../../i18n/index.ts';
import type { Path, Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { FieldFrame } from './field-frame.tsx';
import { useForm } from './form-context.ts';
import { hintOf } from './hint-of.ts';
import { textIn } from './text-field.tsx';
import { useDraft } from './use-draft.ts';

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  readonly required: boolean;
  readonly label?: string;
  readonly unit?: string;
  readonly hint?: string;
}

/** What is no number goes into the file as it was typed, where it is told what was expected. */
export function NumberField({ path, schema, value, required, label, unit, hint }: Props) {
  const { edit } = useForm();
  const draft = useDraft(textIn(value), (typed) => {
    const put = numberOr(typed);
    const kind = `field ${path.join('.')}`;
    if (put === '' && !required) edit({ do: 'remove', path }, kind);
    else edit({ do: 'set', path, value: put }, kind);
  });
  const shownUnit = unit ?? (schema.unit === '1' ? undefined : schema.unit);
  const fallback = typeof schema.default === 'number' ? String(schema.default) : undefined;
  return (
    <FieldFrame path={path} label={label} hint={hint ?? hintOf(schema)}>
      {(described) => (
        <span className="author-number">
          <input
            {...described}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={draft.value}
            placeholder={fallback}
            onFocus={draft.onFocus}
            onBlur={draft.onBlur}
            onChange={({ target }) => draft.type(target.value, String(numberOr(target.value)))}
          />
          {shownUnit === undefined ? null : <span>{shownUnit}</span>}
          {fallback === undefined || value !== undefined ? null : (
            <span className="quiet">{say('author.default', { value: fallback })}</span>
          )}
        </span>
      )}
    </FieldFrame>
  );
}

/** People write a decimal comma too. */
export function numberOr(typed: string): number | string {
  const text = typed.trim().replace('−', '-').replace(',', '.');
  return /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(text) ? Number(text) : typed.trim();
}
