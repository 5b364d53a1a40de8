import type { ReactNode } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import type { PlantExercises } from '../library/exercises.ts';
import { type ExercisePage, hrefOf } from '../shell/route.ts';
import type { WorkEntry } from '../work/work-types.ts';

interface Props {
  readonly exercises: PlantExercises;
  readonly saved: readonly WorkEntry[];
}

/** What can be practised on a plant, each with how far one is. */
export function ExerciseLists({ exercises, saved }: Props) {
  const { lessons, jobs, drills } = exercises;
  const stateOf = (kind: ExercisePage, id: string) => {
    const entry = saved.find(
      (each) => each.kind === kind && each.id === id && each.branchOf === null,
    );
    return entry === undefined ? 'fresh' : entry.closed ? 'closed' : 'open';
  };
  return (
    <>
      <Section name="lessons" empty={lessons.length === 0}>
        {lessons.map(({ id, title, intro }) => (
          <Choice
            key={id}
            href={hrefOf({ page: 'lesson', id })}
            title={title}
            state={stateOf('lesson', id)}
          >
            <span className="choice-text">{intro}</span>
          </Choice>
        ))}
      </Section>
      <Section name="jobs" empty={jobs.length === 0}>
        {jobs.map(({ id, title, level, skills, budgetMinutes, card }) => (
          <Choice
            key={id}
            href={hrefOf({ page: 'job', id })}
            title={title}
            state={stateOf('job', id)}
          >
            <span className="choice-text">{card.complaint}</span>
            <span className="choice-facts">
              <Level level={level} />
              <span>{skills.map((skill) => sayWord('job.skill', skill)).join(', ')}</span>
              <span>{say('practise.budget', { minutes: budgetMinutes })}</span>
            </span>
          </Choice>
        ))}
      </Section>
      <Section name="drills" empty={drills.length === 0}>
        {drills.map(({ id, title, question, skill, limitS }) => (
          <Choice
            key={id}
            href={hrefOf({ page: 'drill', id })}
            title={title}
            state={stateOf('drill', id)}
          >
            <span className="choice-text">{question}</span>
            <span className="choice-facts">
              <span>{sayWord('job.skill', skill)}</span>
              <span>{say('practise.limit', { seconds: limitS })}</span>
            </span>
          </Choice>
        ))}
      </Section>
    </>
  );
}

function Section(props: {
  readonly name: 'lessons' | 'jobs' | 'drills';
  readonly empty: boolean;
  readonly children: ReactNode;
}) {
  const { name, empty, children } = props;
  return (
    <section className="choices-section" aria-labelledby={`${name}-title`}>
      <div className="choices-head">
        <h2 className="choices-title" id={`${name}-title`}>
          {say(`practise.${name}`)}
        </h2>
        <p className="choices-lead">{say(empty ? 'practise.none' : `practise.${name}-lead`)}</p>
      </div>
      {empty ? null : (
        <ul className="choices" data-of={name}>
          {children}
        </ul>
      )}
    </section>
  );
}

function Choice(props: {
  readonly href: string;
  readonly title: string;
  readonly state: 'fresh' | 'open' | 'closed';
  readonly children: ReactNode;
}) {
  const { href, title, state, children } = props;
  return (
    <li>
      <a className="choice exercise" href={href}>
        <strong>{title}</strong>
        {state === 'fresh' ? null : (
          <span className="choice-state" data-state={state}>
            {say(`practise.state.${state}`)}
          </span>
        )}
        {children}
      </a>
    </li>
  );
}

const LEVELS = [1, 2, 3, 4, 5] as const;

function Level({ level }: { readonly level: number }) {
  return (
    <span className="level">
      <span aria-hidden="true">
        {LEVELS.map((each) => (
          <span key={each} className="level-mark" data-filled={each <= level} />
        ))}
      </span>
      {say('practise.level', { level })}
    </span>
  );
}
