import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { dataIn, isGroup, MAX_FILE_CHARACTERS } from '../../scenario/editing/index.ts';
import { AUTHOR_KINDS, type AuthorKind } from './author-kinds.ts';
import { takeFile } from './begin-file.ts';
import { nameOf } from './own-files.ts';

/** Takes in a file as it is; whatever is wrong with it is told where it is opened. */
export function ImportButton() {
  const [said, setSaid] = useState('');
  /** Nothing in it says what kind it is. */
  const [open, setOpen] = useState<{ name: string; text: string } | null>(null);
  const take = (kind: AuthorKind, name: string, text: string) => {
    const trouble = takeFile(kind, nameIn(text) ?? nameOf(name.replace(/\.ya?ml$/i, '')), text);
    if (trouble !== null) setSaid(say('author.keep.refused'));
  };
  const read = async (file: File) => {
    setOpen(null);
    if (file.size > 4 * MAX_FILE_CHARACTERS) {
      setSaid(say('author.import.too-large', { name: file.name }));
      return;
    }
    const text = textOf(await file.arrayBuffer());
    if (text === null) setSaid(say('author.import.not-text', { name: file.name }));
    else {
      const kind = kindOf(text);
      if (kind !== null) take(kind, file.name, text);
      else {
        setSaid(say('author.import.kind', { name: file.name }));
        setOpen({ name: file.name, text });
      }
    }
  };
  return (
    <div className="author-import">
      <label className="button file">
        {say('author.import')}
        <input
          type="file"
          accept=".yaml,.yml,application/yaml,text/yaml"
          className="for-readers"
          onChange={({ target }) => {
            const file = target.files?.[0];
            target.value = '';
            if (file !== undefined) void read(file);
          }}
        />
      </label>
      <p role="status">{said}</p>
      {open === null ? null : (
        <div className="buttons">
          {AUTHOR_KINDS.map((kind) => (
            <button
              key={kind}
              type="button"
              className="button"
              onClick={() => take(kind, open.name, open.text)}
            >
              {say(`author.import.as.${kind}`)}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

/** As an editor has it: no mark before the first letter, one sign at the end of a line. */
function textOf(bytes: ArrayBuffer): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes).replace(/\r\n?/g, '\n');
  } catch {
    return null;
  }
}

/** By what only that kind has, as the command line tells a file outside of its folder. */
function kindOf(text: string): AuthorKind | null {
  const data = dataIn(text);
  if (!isGroup(data)) return null;
  const has = (key: string) => Object.hasOwn(data, key);
  if (has('card') || has('budgetMinutes')) return 'job';
  if (has('question')) return 'drill';
  if (has('items')) return 'quiz';
  if (has('intro') || has('outro')) return 'lesson';
  return has('expect') || has('initial') ? 'start' : null;
}

function nameIn(text: string): string | null {
  const data = dataIn(text);
  const id = isGroup(data) ? data.id : undefined;
  return typeof id === 'string' && /^[a-z][a-z0-9-]{0,63}$/.test(id) ? id : null;
}
