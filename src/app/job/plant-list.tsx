import type { LookWhat } from '../../engine/index.ts';
import { say } from '../../i18n/index.ts';
import { useFacts } from '../working/session-context.tsx';
import { Isolation } from './isolation.tsx';
import { PanelValues } from './panel-shows.tsx';
import { placeName, pointWords, toolName } from './point-words.ts';

/** The same plant in words: what the panel shows, what can be turned, looked at and measured. */
export function PlantList({ onLook }: { readonly onLook: (what: LookWhat) => void }) {
  const facts = useFacts();
  return (
    <div className="equipment job-list">
      <div className="equipment-columns">
        <section>
          <h3>{say('job.panel-shows')}</h3>
          <PanelValues />
        </section>
        <section>
          <h3>{say('job.acts.isolate')}</h3>
          <Isolation />
        </section>
        <section>
          <h3>{say('job.look.what')}</h3>
          <ul className="look-list">
            {facts.lookPlaces.map((what) => (
              <li key={what}>
                <button type="button" className="button" onClick={() => onLook(what)}>
                  {placeName(what)}
                </button>
              </li>
            ))}
          </ul>
        </section>
        <section>
          <h3>{say('job.list.points')}</h3>
          <dl>
            {facts.testPoints
              .filter(({ where }) => 'item' in where)
              .map(({ id, tools }) => (
                <div key={id}>
                  <dt>{pointWords(facts, id)}</dt>
                  <dd>{tools.map(toolName).join(', ')}</dd>
                </div>
              ))}
          </dl>
        </section>
      </div>
    </div>
  );
}
