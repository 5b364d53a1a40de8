import '../styles/job/forms.css';
import '../styles/learner.css';
import '../styles/quiz.css';
import { useMemo, useState } from 'react';
import type { Skill } from '../../../machines/job/index.ts';
import { ratingsOf } from '../../diagnosis/mastery/index.ts';
import { say } from '../../i18n/index.ts';
import type { QuizMode } from '../../quiz/index.ts';
import { BackToFront } from '../front/back-to-front.tsx';
import { FrontFrame } from '../front/front-frame.tsx';
import { keptResults } from '../learner/keep-results.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { deviceShelf } from '../work/shelf.ts';
import { AnswersFile } from './answers-file.tsx';
import { anySeed, beginQuiz } from './begin-quiz.ts';
import { CalibrationPart } from './calibration-part.tsx';
import { courseEnd } from './course-end.ts';
import { CourseEnd } from './course-end-field.tsx';
import { KeptNote } from './kept-note.tsx';
import type { QuizGround } from './quiz-offers.ts';
import { QuizSkills } from './quiz-skills.tsx';
import { QuizWays } from './quiz-ways.tsx';
import { QuizzesInHand } from './quizzes-in-hand.tsx';
import { RecentQuizzes } from './recent-quizzes.tsx';
import { useBank } from './use-bank.ts';
import { useFirstItem } from './use-first-item.ts';
import { useQuizDevice } from './use-quiz-device.ts';

/** Ways to begin a quiz, and what the answers so far say. */
export function QuizHomePage() {
  const device = useQuizDevice();
  const bank = useBank();
  const [endsOn, setEndsOn] = useState(courseEnd);
  const [seed] = useState(anySeed);
  const { kept, answers } = device;
  const cards = bank.state === 'loaded' ? bank.cards : null;
  const ground = useMemo<QuizGround>(
    () => ({
      cards: cards ?? [],
      answers,
      ratings: ratingsOf(keptResults(deviceShelf).results),
      nowISO: new Date().toISOString(),
      courseEnd: endsOn,
    }),
    [cards, answers, endsOn],
  );
  useFirstItem(cards === null ? null : ground, device.open, seed);
  const begin = (mode: QuizMode, skill?: Skill) => {
    const quiz = beginQuiz(ground, mode, seed, skill);
    if (quiz !== null) location.hash = hrefOf({ page: 'quiz-taking', quiz });
  };
  return (
    <FrontFrame>
      <div className="quiz-home">
        <BackToFront />
        <PageHeading>{say('quiz.title')}</PageHeading>
        <p className="front-lead">{say('quiz.lead')}</p>
        <KeptNote kept={kept} />
        <QuizzesInHand device={device} />
        <QuizWays bank={bank} ground={ground} onBegin={begin} />
        <div className="quiz-home-columns">
          <QuizSkills
            ground={ground}
            ready={cards !== null}
            onBegin={(skill) => begin('one skill', skill)}
          />
          <CalibrationPart answers={answers} />
        </div>
        <RecentQuizzes record={kept.record} />
        <section className="quiz-part" aria-labelledby="kept-title">
          <h2 id="kept-title">{say('quiz.kept')}</h2>
          <CourseEnd day={endsOn} onChange={setEndsOn} />
          <AnswersFile device={device} />
        </section>
      </div>
    </FrontFrame>
  );
}
