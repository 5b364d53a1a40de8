import { say, sayWord } from '../../i18n/index.ts';
import { type Job, plantTitle } from '../library/exercises.ts';

/** What the call-out says: who called, from where, and why. */
export function JobCard({ job }: { readonly job: Job }) {
  const { site, card } = job;
  return (
    <section className="job-card" aria-labelledby="job-card-title">
      <h2 id="job-card-title">{say('job.card')}</h2>
      <blockquote className="job-card-complaint">{card.complaint}</blockquote>
      <dl className="job-card-lines">
        <Line what={say('job.card.saw')} is={card.saw} />
        <Line what={say('job.card.reported')} is={card.by} />
        <Line what={say('job.card.when')} is={card.when} />
        <Line what={say('job.card.site')} is={`${site.name}. ${site.where}`} />
        <Line what={say('job.card.plant')} is={plantTitle(job.plant)} />
        <Line
          what={say('job.card.allowed')}
          is={say('practise.budget', { minutes: job.budgetMinutes })}
        />
        <Line
          what={say('job.card.skills')}
          is={job.skills.map((skill) => sayWord('job.skill', skill)).join(', ')}
        />
      </dl>
      <p className="caution">
        {job.caution === undefined ? '' : `${job.caution} `}
        {say('job.card.caution')}
      </p>
    </section>
  );
}

function Line({ what, is }: { readonly what: string; readonly is: string }) {
  return (
    <div>
      <dt>{what}</dt>
      <dd>{is}</dd>
    </div>
  );
}
