import { say } from '../../i18n/index.ts';
import { useExercise } from '../job/exercise-context.tsx';

const FIELDS = ['cause', 'evidence', 'done', 'watch'] as const;

/** What was written for whoever comes next. */
export function HandoverNote() {
  const { desk } = useExercise();
  const { handover } = desk;
  if (handover === null) return null;
  return (
    <details className="fold">
      <summary>{say('debrief.note')}</summary>
      <dl className="job-card-lines">
        {FIELDS.map((field) => (
          <div key={field}>
            <dt>{say(`job.finish.${field}`)}</dt>
            <dd className="as-written">{handover[field] === '' ? '–' : handover[field]}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
