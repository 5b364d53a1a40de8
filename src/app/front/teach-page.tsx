import { say } from '../../i18n/index.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { BackToFront } from './back-to-front.tsx';
import { FrontFrame } from './front-frame.tsx';
import { PlantChooser } from './plant-chooser.tsx';
import { StartsList } from './starts-list.tsx';
import { useChosenPlant } from './use-chosen-plant.ts';

/** The starts again, to be opened for a projector. */
export function TeachPage() {
  const { plant, chooser } = useChosenPlant();
  return (
    <FrontFrame>
      <BackToFront />
      <PageHeading>{say('app.teach.title')}</PageHeading>
      <p className="front-lead">{say('app.teach.lead')}</p>
      <p className="teach-paper">
        <a className="button" href={hrefOf({ page: 'paper' })}>
          {say('app.teach.paper')}
        </a>
        <span>{say('app.teach.paper.about')}</span>
      </p>
      <PlantChooser {...chooser} />
      {plant === undefined ? null : (
        <>
          <p className="choices-lead">{plant.description}</p>
          <StartsList plant={plant} projector={true} />
        </>
      )}
      <section className="not-built">
        <h2>{say('app.not-built')}</h2>
        <p>{say('app.teach.not-built')}</p>
      </section>
    </FrontFrame>
  );
}
