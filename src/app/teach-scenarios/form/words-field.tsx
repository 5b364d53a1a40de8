import { say } from '../../../i18n/index.ts';
import type { Path, Plain } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';
import { WrongHere } from './field-frame.tsx';
import { fieldId, labelOf, useForm } from './form-context.ts';
import { hintOf } from './hint-of.ts';
import { wordTitle } from './word-title.ts';

interface Props {
  readonly path: Path;
  readonly schema: FileSchema;
  readonly words: readonly string[];
  readonly value: Plain | undefined;
  /** The word that stands for all of them, where there is one. */
  readonly allWord: string | null;
}

/** Some of several words. What is left out, or the word for it, means all of them where the schema says so. */
export function WordsField({ path, schema, words, value, allWord }: Props) {
  const { edit } = useForm();
  const whole = value === undefined && schema.default !== undefined;
  const all = whole || (allWord !== null && value === allWord);
  const chosen = all ? words : Array.isArray(value) ? value.map(String) : [];
  const choose = (word: string, on: boolean) => {
    const next = words.filter((each) => (each === word ? on : chosen.includes(each)));
    const place = Array.isArray(value) ? value.indexOf(word) : -1;
    if (allWord !== null && next.length === words.length) edit({ do: 'set', path, value: allWord });
    else if (Array.isArray(value) && on) {
      edit({ do: 'insert', path, index: value.length, value: word });
    } else if (place >= 0 && next.length > 0) edit({ do: 'remove', path: [...path, place] });
    else edit({ do: 'set', path, value: next });
  };
  return (
    <fieldset className="author-field author-words" id={fieldId(path)} tabIndex={-1}>
      <legend>{labelOf(path)}</legend>
      {schema.description === undefined ? null : (
        <p className="quiet author-hint">{hintOf(schema)}</p>
      )}
      {whole ? <p className="quiet author-hint">{say('author.all-by-default')}</p> : null}
      <div className="author-checks">
        {words.map((word) => (
          <label className="check" key={word}>
            <input
              type="checkbox"
              checked={chosen.includes(word)}
              onChange={({ target }) => choose(word, target.checked)}
            />
            <span>{wordTitle(path, word)}</span>
          </label>
        ))}
      </div>
      <WrongHere path={path} />
    </fieldset>
  );
}
