import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { startsByPlant } from '../library/starts.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { FrontFrame } from './front-frame.tsx';
import { PlantChooser } from './plant-chooser.tsx';
import { StartsList } from './starts-list.tsx';

/** The starts again, to be opened for a projector. */
export function TeachPage() {
  const plants = startsByPlant();
  const [chosen, setChosen] = useState(plants[0]?.plant ?? '');
  const plant = plants.find((each) => each.plant === chosen);
  return (
    <FrontFrame>
      <a className="back" href="#/">
        ← {say('app.back')}
      </a>
      <PageHeading>{say('app.teach.title')}</PageHeading>
      <p className="front-lead">{say('app.teach.lead')}</p>
      <PlantChooser plants={plants} chosen={chosen} onChoose={setChosen} />
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
