import { say } from '../../i18n/index.ts';
import type { PollDraft } from './poll-draft.ts';

interface Props {
  readonly draft: PollDraft;
  readonly onAsk: (draft: PollDraft) => void;
}

/** The question before it is asked, with what only the instructor sees. */
export function DraftView({ draft, onAsk }: Props) {
  const { question, right, why } = draft;
  return (
    <div className="poll-draft">
      {question.stem.length === 0 ? null : (
        <ul className="poll-stem">
          {question.stem.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <p className="poll-text">{question.text}</p>
      <ol className="poll-options">
        {question.options.map((option, place) => (
          <li key={option} data-right={place === right}>
            {option}
            {place === right ? <strong> {say('teach-poll.right')}</strong> : null}
          </li>
        ))}
      </ol>
      {why === '' ? null : <p className="quiet">{why}</p>}
      <button type="button" className="button primary" onClick={() => onAsk(draft)}>
        {say('teach-poll.ask')}
      </button>
    </div>
  );
}
