import { say } from '../../i18n/index.ts';
import type { PlantStarts, Start } from '../library/starts.ts';
import { hrefOf } from '../shell/route.ts';

interface Props {
  readonly plant: PlantStarts;
  /** For a class to look at. */
  readonly projector: boolean;
}

/** The starts of a plant: the plain healthy one first, then those with something wrong. */
export function StartsList({ plant, projector }: Props) {
  const href = (scenario: string) => hrefOf({ page: 'watch', scenario, projector });
  return (
    <>
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
