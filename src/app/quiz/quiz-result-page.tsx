import '../styles/job/forms.css';
import '../styles/learner.css';
import '../styles/quiz.css';
import { useEffect } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { NextList } from '../learner/next-list.tsx';
import { dayOf, skillTitle } from '../learner/skill-words.ts';
import { useLearnerMap } from '../learner/use-learner-map.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { packagedPage } from '../shell/packaged.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { WayOut } from '../shell/way-out.tsx';
import { useWorkPlace } from '../work/work-place.ts';
import { beginWith } from './begin-quiz.ts';
import { CalibrationPart } from './calibration-part.tsx';
import { CountedTrouble } from './counted-trouble.tsx';
import { NoSuchQuiz } from './no-such-quiz.tsx';
import { PartList } from './part-list.tsx';
import { kindName, quizTitle } from './quiz-words.ts';
import { partsByKind, partsBySkill } from './result-parts.ts';
import { ResultQuestions } from './result-questions.tsx';
import { ResultWaiting } from './result-waiting.tsx';
import { type QuizResult, useQuizResult } from './use-quiz-result.ts';

interface Props {
  /** By when it was begun, digits alone. */
  readonly quiz: string;
  readonly surroundings: Store<Surroundings>;
}

/** What came of a quiz, and why, question by question. */
export function QuizResultPage({ quiz: name, surroundings }: Props) {
  const now = useQuizResult(name);
  if (now.state === 'unknown') return <NoSuchQuiz name={name} />;
  if (now.state !== 'there') return <ResultWaiting name={name} now={now} />;
  return <Result result={now.result} surroundings={surroundings} />;
}

function Result(props: {
  readonly result: QuizResult;
  readonly surroundings: Store<Surroundings>;
}) {
  const { result, surroundings } = props;
  const { mode, skill, items, answers, startedISO, unjudged, counted } = result;
  const right = answers.filter((answer) => answer.right).length;
  const notRight = items.filter((id) => !answers.some((each) => each.item === id && each.right));
  const leftOpen = items.length - answers.length - unjudged;
  const packaged = packagedPage();
  const place = useWorkPlace();
  const outcome = right / items.length;
  useEffect(() => packaged?.tell(outcome), [packaged, outcome]);
  useEffect(() => place.ended(outcome), [place, outcome]);
  const isAlone = packaged === null && !place.isClass;
  const again = () => {
    const quiz = beginWith('got wrong', notRight);
    if (quiz !== null) location.hash = hrefOf({ page: 'quiz-taking', quiz });
  };
  return (
    <FrontFrame units={true}>
      <div className="quiz-result">
        <WayOut className="back" href={hrefOf({ page: 'quiz' })}>
          ← {say('quiz.title')}
        </WayOut>
        <PageHeading>{say('quiz.result', { right, count: items.length })}</PageHeading>
        <p className="choices-lead">
          {say('quiz.result.of', {
            quiz: packaged?.title ?? quizTitle(mode, skill),
            when: dayOf(startedISO),
          })}
          {leftOpen > 0 ? ` ${say('quiz.result.open', { count: leftOpen })}` : ''}
          {unjudged > 0 ? ` ${say('quiz.result.unjudged', { count: unjudged })}` : ''}
        </p>
        <CountedTrouble counted={counted} />
        <p className="buttons quiz-result-acts">
          {notRight.length === 0 || !isAlone ? null : (
            <button type="button" className="button primary" onClick={again}>
              {say('quiz.again-wrong', { count: notRight.length })}
            </button>
          )}
          <WayOut className="button" href={hrefOf({ page: 'quiz' })}>
            {say('quiz.to-quizzes')}
          </WayOut>
        </p>
        {answers.length === 0 ? null : (
          <div className="quiz-result-columns">
            <PartList
              id="by-skill"
              title={say('quiz.by-skill')}
              parts={partsBySkill(answers)}
              nameOf={skillTitle}
            />
            <PartList
              id="by-kind"
              title={say('quiz.by-kind')}
              parts={partsByKind(answers)}
              nameOf={kindName}
            />
            <CalibrationPart answers={answers} one={true} />
          </div>
        )}
        <ResultQuestions result={result} surroundings={surroundings} />
        {isAlone ? <WhatNext /> : null}
      </div>
    </FrontFrame>
  );
}

function WhatNext() {
  const { next } = useLearnerMap().map;
  return (
    <section className="quiz-part" aria-labelledby="next-title">
      <h2 id="next-title">{say('learner.next')}</h2>
      <NextList next={next} />
      <p>
        <a href={hrefOf({ page: 'learner' })}>{say('quiz.skills.map')}</a>
      </p>
    </section>
  );
}
