import { useMemo } from 'react';
import type { Skill } from '../../../machines/job/index.ts';
import { masteryWord } from '../../diagnosis/mastery/index.ts';
import { say } from '../../i18n/index.ts';
import { masteryOfTopics } from '../../quiz/index.ts';
import { SkillBar } from '../learner/skill-bar.tsx';
import { SkillDrawing } from '../learner/skill-drawing.tsx';
import { masteryName, skillTitle } from '../learner/skill-words.ts';
import { hrefOf } from '../shell/route.ts';
import { courseEndISO } from './course-end.ts';
import type { QuizGround } from './quiz-offers.ts';

interface Props {
  readonly ground: QuizGround;
  readonly ready: boolean;
  readonly onBegin: (skill: Skill) => void;
}

/** The nine skills, each with how far one is, and a quiz of its own. */
export function QuizSkills({ ground, ready, onBegin }: Props) {
  const { cards, answers, nowISO, ratings } = ground;
  const skills = useMemo(
    () => masteryOfTopics(cards, answers, nowISO, { courseEndISO: courseEndISO(ground.courseEnd) }),
    [cards, answers, nowISO, ground.courseEnd],
  );
  return (
    <section className="quiz-part" aria-labelledby="skills-title">
      <h2 id="skills-title">{say('quiz.skills')}</h2>
      <p className="choices-lead">
        {say('quiz.skills.lead')} <a href={hrefOf({ page: 'learner' })}>{say('quiz.skills.map')}</a>
      </p>
      <ul className="quiz-skills">
        {skills.map(({ skill, topics, known }) => {
          const rating = ratings[skill];
          const word = masteryWord(rating);
          return (
            <li key={skill}>
              <button
                type="button"
                className="skill"
                data-word={word}
                aria-disabled={!ready || topics === 0}
                onClick={() => (topics === 0 ? undefined : onBegin(skill))}
              >
                <span className="skill-head">
                  <SkillDrawing skill={skill} />
                  <strong>{skillTitle(skill)}</strong>
                </span>
                <span className="skill-word">{masteryName(word)}</span>
                <SkillBar rating={rating ?? null} />
                <span className="skill-known">
                  {topics === 0
                    ? say(ready ? 'quiz.skills.none' : 'quiz.bank.loading')
                    : say('quiz.skills.known', { known, count: topics })}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
