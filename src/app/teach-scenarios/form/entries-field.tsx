import { useRef, useState } from 'react';
import { say } from '../../../i18n/index.ts';
import { isGroup, type Path, type Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { ActField } from './act-field.tsx';
import { entryTitle } from './entry-title.ts';
import { WrongHere } from './field-frame.tsx';
import { fieldId, issuesUnder, labelOf, useForm } from './form-context.ts';
import { GroupFields } from './group-fields.tsx';
import { hintOf } from './hint-of.ts';
import { branchOf, startingValue } from './starting-value.ts';

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly value: Plain | undefined;
  readonly required: boolean;
}

/** A list: entries to open, to move, to take away, and one more at its end. */
export function EntriesField({ path, schema, value, required }: Props) {
  const { edit, renderField } = useForm();
  const [opened, setOpened] = useState<number | null>(null);
  const add = useRef<HTMLButtonElement>(null);
  const entries = Array.isArray(value) ? value : [];
  const items = schema.items ?? {};
  const label = labelOf(path);
  const isPlain = items.type === 'string' && items.enum === undefined;
  const remove = (index: number) => {
    if (entries.length === 1 && !required) edit({ do: 'remove', path });
    else edit({ do: 'remove', path: [...path, index] });
    add.current?.focus();
  };
  return (
    <fieldset className="author-group" id={fieldId(path)} tabIndex={-1}>
      <legend>{label}</legend>
      {schema.description === undefined ? null : (
        <p className="quiet author-hint">{hintOf(schema)}</p>
      )}
      <WrongHere path={path} />
      <ol className="author-entries">
        {entries.map((entry, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an entry is its place
          <li key={i}>
            {isPlain || !isGroup(entry) ? (
              renderField({
                path: [...path, i],
                schema: items,
                value: entry,
                required: true,
                beside: {},
              })
            ) : (
              <Entry
                path={[...path, i]}
                schema={items}
                entry={entry}
                startsOpen={opened === i || entries.length === 1}
              />
            )}
            <div className="buttons author-entry-acts">
              <EntryButton
                sign="↑"
                name={say('author.entry.up', { what: label, number: i + 1 })}
                disabled={i === 0}
                onPress={() => edit({ do: 'swap', path, index: i - 1 })}
              />
              <EntryButton
                sign="↓"
                name={say('author.entry.down', { what: label, number: i + 1 })}
                disabled={i === entries.length - 1}
                onPress={() => edit({ do: 'swap', path, index: i })}
              />
              <EntryButton
                sign="×"
                name={say('author.entry.remove', { what: label, number: i + 1 })}
                disabled={false}
                onPress={() => remove(i)}
              />
            </div>
          </li>
        ))}
      </ol>
      {entries.length >= (schema.maxItems ?? Number.POSITIVE_INFINITY) ? null : (
        <button
          type="button"
          className="button"
          ref={add}
          onClick={() => {
            setOpened(entries.length);
            const fresh = freshEntry(items, entries.at(-1));
            edit({ do: 'insert', path, index: entries.length, value: fresh });
          }}
        >
          {say('author.add-to', { what: label })}
        </button>
      )}
    </fieldset>
  );
}

function Entry(props: {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly entry: Plain;
  readonly startsOpen: boolean;
}) {
  const { path, schema, entry, startsOpen } = props;
  const { issues } = useForm();
  const [open, setOpen] = useState(startsOpen);
  const wrong = issuesUnder(issues, path);
  const branch = schema.oneOf === undefined ? schema : branchOf(schema, entry);
  return (
    <details
      className="fold author-entry"
      id={fieldId(path)}
      open={open}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        <span>{entryTitle(path, entry)}</span>
        {wrong > 0 ? (
          <span className="invalid">{say('author.issues.count', { count: wrong })}</span>
        ) : null}
      </summary>
      {open ? (
        <>
          <WrongHere path={path} />
          {schema.oneOf === undefined ? null : (
            <ActField path={path} schema={schema} value={entry} />
          )}
          {branch === null ? null : (
            <GroupFields
              path={path}
              schema={branch}
              value={entry}
              keys={Object.keys(branch.properties ?? {}).filter((key) => key !== 'do')}
            />
          )}
        </>
      ) : null}
    </details>
  );
}

function EntryButton(props: {
  readonly sign: string;
  readonly name: string;
  readonly disabled: boolean;
  readonly onPress: () => void;
}) {
  return (
    <button
      type="button"
      className="button plain"
      aria-label={props.name}
      title={props.name}
      disabled={props.disabled}
      onClick={props.onPress}
    >
      <span aria-hidden="true">{props.sign}</span>
    </button>
  );
}

/** What is done comes not before what was done last. */
function freshEntry(items: FileSchema, last: Plain | undefined): Plain {
  const fresh = startingValue(items);
  const at = isGroup(last) ? last.at : undefined;
  return isGroup(fresh) && typeof fresh.at === 'number' && typeof at === 'number'
    ? { ...fresh, at }
    : fresh;
}
