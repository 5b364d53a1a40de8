import '../styles/job/practise.css';
import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { exercisesOf } from '../library/exercises.ts';
import { countBlind, startsByPlant } from '../library/starts.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { ExerciseLists } from './exercise-lists.tsx';
import { FrontFrame } from './front-frame.tsx';
import { PlantChooser } from './plant-chooser.tsx';
import { SavedWork, WorkInHand } from './saved-work.tsx';
import { StartsList } from './starts-list.tsx';
import { useSavedWork } from './use-saved-work.ts';

/** Jobs, drills, lessons and starts of a plant, and what one has in hand. */
export function PractisePage() {
  const plants = startsByPlant();
  const saved = useSavedWork();
  const [chosen, setChosen] = useState(plants[0]?.plant ?? '');
  const plant = plants.find((each) => each.plant === chosen);
  return (
    <FrontFrame>
      <a className="back" href="#/">
        ← {say('app.back')}
      </a>
      <PageHeading>{say('app.practise.title')}</PageHeading>
      <p className="front-lead">{say('app.practise.lead')}</p>
      <WorkInHand saved={saved} />
      <PlantChooser plants={plants} chosen={chosen} onChoose={setChosen} />
      {plant === undefined ? null : (
        <>
          <p className="choices-lead">{plant.description}</p>
          <ExerciseLists exercises={exercisesOf(plant.plant)} saved={saved.list.entries} />
          <section aria-labelledby="starts-title">
            <h2 className="choices-title" id="starts-title">
              {say('practise.watch')}
            </h2>
            <p className="choices-lead">{say('practise.watch-lead')}</p>
            <StartsList plant={plant} projector={false} />
          </section>
        </>
      )}
      <Surprise />
      <SavedWork saved={saved} />
    </FrontFrame>
  );
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
