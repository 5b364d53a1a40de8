import { say, sayWord } from '../../i18n/index.ts';
import type { Job } from '../library/exercises.ts';

/** What people said that was not so, now that it may be told. */
export function PeopleTruth({ job }: { readonly job: Job }) {
  const doubtful = job.people.filter(({ truth }) => truth !== 'true');
  if (doubtful.length === 0) return null;
  return (
    <>
      <h3>{say('debrief.people')}</h3>
      <ul className="people-truth">
        {doubtful.map(({ says, truth, who }) => (
          <li key={says}>
            <blockquote className="answer">
              {says}
              <footer>{who ?? job.card.by}</footer>
            </blockquote>
            <p className="quiet">{sayWord('debrief.people', truth)}</p>
          </li>
        ))}
      </ul>
    </>
  );
}
