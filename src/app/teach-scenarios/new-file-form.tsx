import { type FormEvent, useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { AUTHOR_KINDS, type AuthorKind } from './author-kinds.ts';
import type { AuthorFacts } from './author-protocol.ts';
import { beginFile } from './begin-file.ts';
import { FaultSelect } from './fault-select.tsx';
import { newFile } from './new-file.ts';
import { type KeepTrouble, nameOf } from './own-files.ts';

/** A new file from a plant, with nothing wrong or with one fault; in order from the first moment. */
export function NewFileForm({ facts }: { readonly facts: AuthorFacts | null }) {
  const [kind, setKind] = useState<AuthorKind>('start');
  const [plantId, setPlantId] = useState('');
  const [faultId, setFaultId] = useState('');
  const [search, setSearch] = useState('');
  const [title, setTitle] = useState('');
  const [trouble, setTrouble] = useState<KeepTrouble | null>(null);
  const plants = facts?.plants ?? [];
  const plant = plants.find(({ id }) => id === plantId) ?? plants[0];
  const fault = plant?.faults.find(({ id }) => id === faultId) ?? null;
  const begin = (event: FormEvent) => {
    event.preventDefault();
    if (plant === undefined) return;
    const said = title.trim() === '' ? say(`author.new.title.${kind}`) : title.trim();
    const id = nameOf(said) || kind;
    setTrouble(beginFile(kind, id, newFile({ kind, id, title: said, plant, fault })));
  };
  return (
    <form className="author-new" onSubmit={begin}>
      <label className="field">
        <span>{say('author.new.kind')}</span>
        <select value={kind} onChange={({ target }) => setKind(target.value as AuthorKind)}>
          {AUTHOR_KINDS.map((each) => (
            <option key={each} value={each}>
              {sayWord('author.kind', each)}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>{say('author.key.plant')}</span>
        <select value={plant?.id ?? ''} onChange={({ target }) => setPlantId(target.value)}>
          {plants.length === 0 ? <option value="">{say('app.loading')}</option> : null}
          {plants.map((each) => (
            <option key={each.id} value={each.id}>
              {each.title}
            </option>
          ))}
        </select>
      </label>
      <label className="field author-new-title">
        <span>{say('author.key.title')}</span>
        <input
          type="text"
          autoComplete="off"
          maxLength={80}
          value={title}
          placeholder={say(`author.new.title.${kind}`)}
          onChange={({ target }) => setTitle(target.value)}
        />
      </label>
      {kind === 'quiz' ? null : (
        <fieldset className="field author-new-fault">
          <legend>{say('author.new.fault')}</legend>
          <FaultSelect
            described={{ id: 'author-new-fault' }}
            label={say('author.new.fault')}
            faults={plant?.faults ?? []}
            chosen={fault?.id ?? ''}
            search={search}
            onSearch={setSearch}
            onChoose={setFaultId}
            none={say('author.new.healthy')}
          />
        </fieldset>
      )}
      <p className="author-new-act">
        <button type="submit" className="button primary" disabled={plant === undefined}>
          {say('author.new.begin')}
        </button>
      </p>
      {trouble === null ? null : (
        <p className="author-trouble" role="alert">
          {say(trouble === 'no room' ? 'author.keep.no-room' : 'author.keep.refused')}
        </p>
      )}
    </form>
  );
}
