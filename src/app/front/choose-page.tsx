import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { countBlind, type Start, startsByPlant } from '../library/starts.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { FrontFrame } from './front-frame.tsx';

/** Practise and Teach choose from the same starts; the second opens them for a projector. */
export function ChoosePage({ door }: { readonly door: 'practise' | 'teach' }) {
  const projector = door === 'teach';
  const plants = startsByPlant();
  const [chosen, setChosen] = useState(plants[0]?.plant ?? '');
  const plant = plants.find((each) => each.plant === chosen);
  const href = (scenario: string) => hrefOf({ page: 'watch', scenario, projector });
  return (
    <FrontFrame>
      <a className="back" href="#/">
        ← {say('app.back')}
      </a>
      <PageHeading>{say(`app.${door}.title`)}</PageHeading>
      <p className="front-lead">{say(`app.${door}.lead`)}</p>
      {plants.length < 2 ? null : (
        <fieldset className="plants">
          <legend>{say('app.choose.plant')}</legend>
          <div className="segments">
            {plants.map((each) => (
              <button
                key={each.plant}
                type="button"
                className="button"
                aria-pressed={each.plant === chosen}
                onClick={() => setChosen(each.plant)}
              >
                {each.title}
              </button>
            ))}
          </div>
        </fieldset>
      )}
      {plant === undefined ? null : (
        <>
          <p className="choices-lead">{plant.description}</p>
          {plant.healthy.slice(0, 1).map((start) => (
            <section className="choice-first" key={start.id} aria-labelledby="first-start">
              <div>
                <h2 id="first-start">{start.title}</h2>
                <p className="choices-lead">{start.summary}</p>
                <Teaches start={start} />
              </div>
              <a className="button primary" href={href(start.id)}>
                {say(projector ? 'app.teach.show' : 'app.watch.title')}
              </a>
            </section>
          ))}
          <Choices
            title={say('app.choose.troubled')}
            lead={say('app.choose.troubled-lead')}
            starts={plant.troubled}
            href={href}
          />
          <Choices
            title={say('app.choose.more-healthy')}
            lead=""
            starts={plant.healthy.slice(1)}
            href={href}
          />
        </>
      )}
      {projector ? null : <Surprise />}
      <section className="not-built">
        <h2>{say('app.not-built')}</h2>
        <p>{say(`app.${door}.not-built`)}</p>
      </section>
    </FrontFrame>
  );
}

function Choices(props: {
  readonly title: string;
  readonly lead: string;
  readonly starts: readonly Start[];
  readonly href: (id: string) => string;
}) {
  if (props.starts.length === 0) return null;
  return (
    <section>
      <h2 className="choices-title">{props.title}</h2>
      {props.lead === '' ? null : <p className="choices-lead">{props.lead}</p>}
      <ul className="choices">
        {props.starts.map((start) => (
          <li key={start.id}>
            <a className="choice" href={props.href(start.id)}>
              <strong>{start.title}</strong>
              <span>{start.summary}</span>
              <Teaches start={start} />
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Teaches({ start }: { readonly start: Start }) {
  if (start.teaches === '') return null;
  return <span className="choice-teaches">{start.teaches}</span>;
}

/** Nothing but a number, drawn anew each time, from all plants. */
function Surprise() {
  const draw = () => {
    location.hash = hrefOf({ page: 'blind', number: Math.floor(Math.random() * countBlind()) });
  };
  return (
    <p className="choices-surprise">
      <button type="button" className="button" onClick={draw}>
        {say('app.choose.surprise')}
      </button>
    </p>
  );
}
