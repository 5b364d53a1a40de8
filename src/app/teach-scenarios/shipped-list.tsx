import { useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { plantTitle } from '../library/exercises.ts';
import { hrefOf } from '../shell/route.ts';
import { AUTHOR_KINDS, type AuthorKind } from './author-kinds.ts';
import { shippedFiles } from './shipped-files.ts';

/** The shipped files by kind: each can be looked at, and copied to be changed. */
export function ShippedList() {
  const [kind, setKind] = useState<AuthorKind>('start');
  const [plant, setPlant] = useState('');
  const all = shippedFiles(kind);
  const plants = [...new Set(all.map((file) => file.plant))].filter((each) => each !== '').sort();
  const files = all.filter((file) => plant === '' || plants.length === 0 || file.plant === plant);
  return (
    <section aria-labelledby="author-shipped">
      <h2 className="choices-title" id="author-shipped">
        {say('author.shipped.title')}
      </h2>
      <p className="choices-lead">{say('author.shipped.about')}</p>
      <fieldset className="segments author-kinds" aria-label={say('author.new.kind')}>
        {AUTHOR_KINDS.map((each) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={each === kind}
            onClick={() => setKind(each)}
          >
            {sayWord('author.kinds', each)}
          </button>
        ))}
      </fieldset>
      {plants.length < 2 ? null : (
        <fieldset className="segments author-kinds" aria-label={say('author.key.plant')}>
          {['', ...plants].map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === plant}
              onClick={() => setPlant(each)}
            >
              {each === '' ? say('author.shipped.all-plants') : plantTitle(each)}
            </button>
          ))}
        </fieldset>
      )}
      <ul className="choices">
        {files.map(({ id, title, plant: of }) => (
          <li key={id}>
            <a className="choice" href={hrefOf({ page: 'scenario', kind, id })}>
              <strong>{title}</strong>
              {of === '' ? null : <span>{plantTitle(of)}</span>}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
