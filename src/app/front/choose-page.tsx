import type { ReactNode } from 'react';
import { say } from '../../i18n/index.ts';
import { countBlind, startsOfLibrary } from '../library/starts.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { FrontFrame } from './front-frame.tsx';

/** Practise and Teach choose from the same starts; the second opens them for a projector. */
export function ChoosePage({ door }: { readonly door: 'practise' | 'teach' }) {
  const projector = door === 'teach';
  const { healthy, troubled } = startsOfLibrary();
  const href = (scenario: string) => hrefOf({ page: 'watch', scenario, projector });
  return (
    <FrontFrame>
      <a className="back" href="#/">
        ← {say('app.back')}
      </a>
      <PageHeading>{say(`app.${door}.title`)}</PageHeading>
      <p className="front-lead">{say(`app.${door}.lead`)}</p>
      {healthy.slice(0, 1).map((start) => (
        <section className="choice-first" key={start.id} aria-labelledby="first-start">
          <div>
            <h2 id="first-start">{start.title}</h2>
            <p className="choices-lead">{start.summary}</p>
          </div>
          <a className="button primary" href={href(start.id)}>
            {say(projector ? 'app.teach.show' : 'app.watch.title')}
          </a>
        </section>
      ))}
      <Choices
        title={say('app.choose.troubled')}
        lead={say('app.choose.troubled-lead')}
        starts={troubled}
        href={href}
      >
        {projector ? null : <Surprise />}
      </Choices>
      <Choices
        title={say('app.choose.more-healthy')}
        lead=""
        starts={healthy.slice(1)}
        href={href}
      />
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
  readonly starts: readonly { id: string; title: string; summary: string }[];
  readonly href: (id: string) => string;
  readonly children?: ReactNode;
}) {
  if (props.starts.length === 0) return null;
  return (
    <section>
      <h2 className="choices-title">{props.title}</h2>
      {props.lead === '' ? null : <p className="choices-lead">{props.lead}</p>}
      {props.children}
      <ul className="choices">
        {props.starts.map((start) => (
          <li key={start.id}>
            <a className="choice" href={props.href(start.id)}>
              <strong>{start.title}</strong>
              <span>{start.summary}</span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Nothing but a number, drawn anew each time. */
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
