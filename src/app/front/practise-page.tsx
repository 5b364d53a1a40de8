import '../styles/job/practise.css';
import { say } from '../../i18n/index.ts';
import { NextLine } from '../learner/next-line.tsx';
import { exercisesOf } from '../library/exercises.ts';
import { countBlind } from '../library/starts.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { BackToFront } from './back-to-front.tsx';
import { ExerciseLists } from './exercise-lists.tsx';
import { FrontFrame } from './front-frame.tsx';
import { PlantChooser } from './plant-chooser.tsx';
import { SavedWork, WorkInHand } from './saved-work.tsx';
import { StartsList } from './starts-list.tsx';
import { useChosenPlant } from './use-chosen-plant.ts';
import { useSavedWork } from './use-saved-work.ts';

/** Jobs, drills, lessons and starts of a plant, and what one has in hand. */
export function PractisePage() {
  const saved = useSavedWork();
  const { plant, chooser } = useChosenPlant();
  return (
    <FrontFrame>
      <BackToFront />
      <div className="practise-head">
        <div>
          <PageHeading>{say('app.practise.title')}</PageHeading>
          <p className="front-lead">{say('app.practise.lead')}</p>
        </div>
        <div>
          <PlantChooser {...chooser} />
          {plant === undefined ? null : <p className="choices-lead">{plant.description}</p>}
        </div>
      </div>
      <NextLine />
      <WorkInHand saved={saved} />
      {plant === undefined ? null : (
        <>
          <ExerciseLists exercises={exercisesOf(plant.plant)} saved={saved.list.entries} />
          <section className="choices-section" aria-labelledby="starts-title">
            <div className="choices-head">
              <h2 className="choices-title" id="starts-title">
                {say('practise.watch')}
              </h2>
              <p className="choices-lead">{say('practise.watch-lead')}</p>
            </div>
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
