import { ASK_TOPICS } from '../../../machines/job/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import type { Job } from '../library/exercises.ts';
import { useExercise } from './exercise-context.tsx';

/** The people at the plant: a question each, and what they answer. */
export function People({ job }: { readonly job: Job }) {
  const { desk, take } = useExercise();
  return (
    <section className="people" aria-labelledby="people-title">
      <h3 id="people-title">{say('job.ask')}</h3>
      <p className="quiet">{say('job.ask.lead')}</p>
      <ul>
        {ASK_TOPICS.map((topic) => {
          const asked = desk.asked.includes(topic);
          return (
            <li key={topic}>
              <button
                type="button"
                className="button topic"
                aria-expanded={asked}
                aria-disabled={asked || desk.phase === 'handover'}
                onClick={() => {
                  if (!asked) take({ type: 'ask', topic });
                }}
              >
                {sayWord('job.topic', topic)}
              </button>
              <div aria-live="polite">{asked ? <Answers job={job} topic={topic} /> : null}</div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function Answers({ job, topic }: { readonly job: Job; readonly topic: string }) {
  const answers = job.people.filter((each) => each.topic === topic);
  if (answers.length === 0) return <p className="quiet">{say('job.ask.nothing')}</p>;
  return answers.map(({ says, who }) => (
    <blockquote key={says} className="answer">
      {says}
      <footer>{who ?? job.card.by}</footer>
    </blockquote>
  ));
}
