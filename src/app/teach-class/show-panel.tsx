import { PROJECTIONS, type Projection } from '../../../machines/class/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { hrefOf } from '../shell/route.ts';
import type { OwnClass } from './own-classes.ts';
import { useBook, useChosenSeats, useTeach } from './teach-context.ts';

/** What the projector shows. */
export function ShowPanel() {
  const { own, say: tell } = useTeach();
  const { shows, names, spotlight } = useBook();
  const [chosen = null, ...others] = useChosenSeats();
  const project = (next: { shows?: Projection; names?: boolean }) =>
    void tell({ type: 'project', shows, names, ...next });
  return (
    <>
      <a
        className="button primary"
        href={hrefOf({ page: 'projector', id: own.id, key: own.projectorKey })}
        target={`projector ${own.id}`}
      >
        {say('teach-class.show.window')}
      </a>
      <p className="quiet">{say('teach-class.show.window.about')}</p>
      <fieldset className="show-what">
        <legend>{say('teach-class.show.what')}</legend>
        <div className="buttons">
          {PROJECTIONS.filter((each) => canShow(each, own)).map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === shows}
              onClick={() => project({ shows: each })}
            >
              {sayWord('teach-class.show', each)}
            </button>
          ))}
        </div>
      </fieldset>
      <button
        type="button"
        className="button"
        aria-pressed={names}
        onClick={() => project({ names: !names })}
      >
        {say('teach-class.show.names')}
      </button>
      {own.way === 'together' || own.kind === 'quiz' ? null : (
        <section aria-labelledby="spotlight-title">
          <h3 id="spotlight-title">{say('teach-class.spotlight')}</h3>
          <p className="quiet">
            {spotlight === null
              ? say('teach-class.spotlight.none')
              : say('teach-class.spotlight.now', { seat: spotlight })}
          </p>
          <div className="buttons">
            <button
              type="button"
              className="button"
              disabled={chosen === null || others.length > 0}
              onClick={() =>
                void tell(
                  { type: 'spotlight', seat: chosen },
                  { type: 'project', shows: 'spotlight', names },
                )
              }
            >
              {chosen === null || others.length > 0
                ? say('teach-class.spotlight.choose')
                : say('teach-class.spotlight.on', { seat: chosen })}
            </button>
            {spotlight === null ? null : (
              <button
                type="button"
                className="button"
                onClick={() => void tell({ type: 'spotlight', seat: null })}
              >
                {say('teach-class.spotlight.off')}
              </button>
            )}
          </div>
        </section>
      )}
    </>
  );
}

function canShow(projection: Projection, { way, kind }: OwnClass): boolean {
  if (projection === 'plant') return way === 'together';
  if (projection === 'spotlight') return way === 'own copies' && kind !== 'quiz';
  return true;
}
