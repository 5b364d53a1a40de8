import '../styles/teach-poll.css';
import type { ProjectorClient } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import { CountBars } from '../teach-poll/count-bars.tsx';

/** The question on the wall; what was answered only once the instructor shows it. */
export function ProjectedPoll({ client }: { readonly client: ProjectorClient }) {
  const poll = useStorePart(client.store, ({ book }) => book.poll);
  if (poll === null)
    return <p className="projected-none">{say('teach-class.projector.no-poll')}</p>;
  const { question, shown } = poll;
  return (
    <div className="projected-poll">
      {question.stem.length === 0 ? null : (
        <ul className="projected-stem">
          {question.stem.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <h2>{question.text}</h2>
      {shown === null ? (
        <ol className="projected-options">
          {question.options.map((option) => (
            <li key={option}>{option}</li>
          ))}
        </ol>
      ) : (
        <>
          <CountBars options={question.options} counts={shown.counts} right={shown.right} />
          {shown.why === '' ? null : <p>{shown.why}</p>}
        </>
      )}
    </div>
  );
}
