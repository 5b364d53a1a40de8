import type { ClassPoll } from '../../../machines/class/index.ts';
import type { PollCounts, Spoken } from '../../classroom/protocol/index.ts';
import { say } from '../../i18n/index.ts';
import { CountBars } from './count-bars.tsx';
import { keptAnswer } from './kept-answers.ts';

interface Props {
  readonly poll: ClassPoll;
  readonly counts: PollCounts | null;
  readonly here: number;
  readonly onSay: (entry: Spoken) => Promise<void>;
}

/** What is being asked: how many answered, shown to all when the instructor wants it. */
export function OpenPoll({ poll, counts, here, onSay }: Props) {
  const { id, question, shown } = poll;
  const { right, why } = shown ?? keptAnswer(id);
  const counted = shown?.counts ?? (counts?.poll === id ? counts.counts : []);
  const answered = counted.reduce((sum, one) => sum + one, 0);
  return (
    <div className="poll-open">
      <p className="poll-text">{question.text}</p>
      <CountBars options={question.options} counts={counted} right={right} />
      {why === '' ? null : <p className="quiet">{why}</p>}
      <p role="status">
        {say('teach-poll.answered', { count: answered, here: Math.max(here, answered) })}{' '}
        {say(shown === null ? 'teach-poll.hidden' : 'teach-poll.shown')}
      </p>
      <div className="buttons">
        {shown === null ? (
          <button
            type="button"
            className="button primary"
            onClick={() => void onSay({ type: 'show poll', id, right, why, counts: [] })}
          >
            {say('teach-poll.show')}
          </button>
        ) : null}
        <button
          type="button"
          className="button"
          onClick={() => void onSay({ type: 'end poll', id })}
        >
          {say('teach-poll.end')}
        </button>
      </div>
    </div>
  );
}
