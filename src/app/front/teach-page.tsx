import type { ReactNode } from 'react';
import { say } from '../../i18n/index.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { BackToFront } from './back-to-front.tsx';
import { FrontFrame } from './front-frame.tsx';
import { PlantChooser } from './plant-chooser.tsx';
import { StartsList } from './starts-list.tsx';
import { TeachCard } from './teach-card.tsx';
import { useChosenPlant } from './use-chosen-plant.ts';

/** What those who teach go to: a class, things of their own, and starts for a projector. */
export function TeachPage() {
  const { plant, chooser } = useChosenPlant();
  return (
    <FrontFrame>
      <BackToFront />
      <PageHeading>{say('app.teach.title')}</PageHeading>
      <Group name="class">
        <TeachCard
          first={true}
          href={hrefOf({ page: 'classes' })}
          title={say('app.teach.open')}
          about={say('app.teach.open.about')}
        />
      </Group>
      <Group name="own">
        <TeachCard
          href={hrefOf({ page: 'scenarios' })}
          title={say('app.teach.scenarios')}
          about={say('app.teach.scenarios.about')}
        />
        <TeachCard
          href={hrefOf({ page: 'paper' })}
          title={say('app.teach.paper')}
          about={say('app.teach.paper.about')}
        />
        <TeachCard
          href={hrefOf({ page: 'package' })}
          title={say('app.teach.package')}
          about={say('app.teach.package.about')}
        />
      </Group>
      <section className="choices-section" aria-labelledby="teach-show">
        <h2 className="choices-title" id="teach-show">
          {say('app.teach.group.show')}
        </h2>
        <p className="choices-lead">{say('app.teach.lead')}</p>
        <PlantChooser {...chooser} />
        {plant === undefined ? null : (
          <>
            <p className="choices-lead">{plant.description}</p>
            <StartsList plant={plant} projector={true} />
          </>
        )}
      </section>
    </FrontFrame>
  );
}

function Group({ name, children }: { readonly name: 'class' | 'own'; children: ReactNode }) {
  return (
    <section className="choices-section" aria-labelledby={`teach-${name}`}>
      <h2 className="choices-title" id={`teach-${name}`}>
        {say(`app.teach.group.${name}`)}
      </h2>
      <ul className="choices">{children}</ul>
    </section>
  );
}
