import { say, sayWord } from '../../../i18n/index.ts';
import type { AuthorKind } from '../author-kinds.ts';
import { WrongHere } from './field-frame.tsx';
import { useForm } from './form-context.ts';
import { FORM_SECTIONS } from './form-sections.ts';
import { GroupFields } from './group-fields.tsx';

interface Props {
  readonly kind: AuthorKind;
  /** The text cannot be read: what stands here is of before, and waits. */
  readonly waits: boolean;
  readonly readOnly: boolean;
}

/** The same file as fields. */
export function FileForm({ kind, waits, readOnly }: Props) {
  const { facts, data } = useForm();
  const schema = facts.schemas[kind];
  return (
    <div className="author-form">
      {waits ? (
        <p className="author-waits" role="status">
          {say('author.form.waits')}
        </p>
      ) : null}
      <fieldset disabled={waits || readOnly} aria-label={say('author.form')}>
        <WrongHere path={[]} />
        {FORM_SECTIONS[kind].map(({ name, keys }) => (
          <section key={name} className="author-section" aria-labelledby={`author-${name}`}>
            <h3 id={`author-${name}`}>{sayWord('author.section', name)}</h3>
            <GroupFields path={[]} schema={schema} value={data} keys={keys} />
          </section>
        ))}
      </fieldset>
    </div>
  );
}
