import { useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { exerciseTitle } from '../library/exercises.ts';
import { EXERCISE_PAGES, type ExercisePage, hrefOf } from '../shell/route.ts';
import type { KeptAside, WorkEntry } from '../work/work-types.ts';
import { shortClock } from '../working/clock-text.ts';
import { EraseButton } from './erase-button.tsx';
import { FileButton } from './file-button.tsx';
import type { SavedWorkOfDevice } from './use-saved-work.ts';

/** What one has in hand, to go on with. */
export function WorkInHand({ saved }: { readonly saved: SavedWorkOfDevice }) {
  const inHand = saved.list.entries.filter(isExercise).filter(({ closed }) => !closed);
  if (inHand.length === 0) return null;
  return (
    <section className="saved" aria-labelledby="in-hand-title">
      <h2 className="choices-title" id="in-hand-title">
        {say('practise.go-on')}
      </h2>
      <ul className="saved-list">
        {inHand.map((entry) => (
          <Entry key={keyOf(entry)} entry={entry} onErase={() => saved.erase(entry)} />
        ))}
      </ul>
    </section>
  );
}

/** What is kept besides, and the ways to take all of it elsewhere. */
export function SavedWork({ saved }: { readonly saved: SavedWorkOfDevice }) {
  const { list, erase } = saved;
  const shown = list.entries.filter(isExercise);
  const isEmpty = shown.length + list.aside.length === 0;
  return (
    <details className="fold saved">
      <summary>{say('practise.saved-work')}</summary>
      <p className="choices-lead">{say('practise.go-on-lead')}</p>
      <ul className="saved-list">
        {shown
          .filter(({ closed }) => closed)
          .map((entry) => (
            <Entry key={keyOf(entry)} entry={entry} onErase={() => erase(entry)} />
          ))}
        {list.aside.map((each) => (
          <Aside key={each.key} aside={each} onErase={() => erase({ key: each.key })} />
        ))}
      </ul>
      <div className="buttons">
        <button
          type="button"
          className="button"
          disabled={isEmpty}
          onClick={() => saved.exportAll()}
        >
          {say('practise.export')}
        </button>
        <Import saved={saved} />
        <EraseButton
          label={say('practise.erase-all')}
          ask={say('practise.erase-all-sure')}
          disabled={isEmpty}
          onSure={() => erase('all')}
        />
      </div>
    </details>
  );
}

function Entry({ entry, onErase }: { readonly entry: Exercise; readonly onErase: () => void }) {
  const title = exerciseTitle(entry.kind, entry.id);
  return (
    <li className="saved-entry">
      <span>
        <strong>{title ?? say('practise.gone', { id: entry.id })}</strong>
        <span className="quiet">
          {entry.branchOf === null
            ? ''
            : `${say('practise.branch', { time: shortClock(entry.branchOf.t) })} `}
          {say('practise.saved-at', {
            kind: sayWord('job.kind', entry.kind),
            when: new Date(entry.savedISO).toLocaleString(),
          })}
        </span>
      </span>
      <span className="buttons">
        {title === null ? null : (
          <a
            className="button primary"
            href={hrefOf(
              entry.branch === undefined
                ? { page: entry.kind, id: entry.id }
                : { page: 'branch', id: entry.id, branch: entry.branch },
            )}
            aria-label={`${wayOn(entry)}: ${title}`}
          >
            {wayOn(entry)}
          </a>
        )}
        <EraseButton
          name={say('practise.erase-one', { title: title ?? entry.id })}
          ask={say('practise.erase-sure', { title: title ?? entry.id })}
          onSure={onErase}
        />
      </span>
    </li>
  );
}

function keyOf({ kind, id, branch = 0 }: WorkEntry): string {
  return `${kind} ${id} ${branch}`;
}

function wayOn({ closed, branchOf }: Exercise): string {
  if (closed && branchOf !== null) return say('practise.compare');
  return say(closed ? 'practise.read-again' : 'practise.go-on-one');
}

function Aside({ aside, onErase }: { readonly aside: KeptAside; readonly onErase: () => void }) {
  const { name, why, key } = aside;
  const title =
    name === null || name.kind === 'watch' ? key : (exerciseTitle(name.kind, name.id) ?? name.id);
  return (
    <li className="saved-entry">
      <span>
        <strong>{title}</strong>
        <span className="quiet">{sayWord('work.aside', why)}</span>
      </span>
      <EraseButton
        name={say('practise.erase-one', { title })}
        ask={say('practise.erase-sure', { title })}
        onSure={onErase}
      />
    </li>
  );
}

function Import({ saved }: { readonly saved: SavedWorkOfDevice }) {
  const [said, setSaid] = useState('');
  return (
    <>
      <FileButton
        label={say('practise.import')}
        onFile={(file) =>
          void saved.importFile(file).then(({ taken, troubles }) => {
            setSaid([say('practise.imported', { count: taken }), ...troubles].join(' '));
          })
        }
      />
      <span role="status">{said}</span>
    </>
  );
}

type Exercise = WorkEntry & { readonly kind: ExercisePage };

function isExercise(entry: WorkEntry): entry is Exercise {
  return EXERCISE_PAGES.some((page) => page === entry.kind);
}
