import '../styles/teach-poll.css';
import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { errorText } from '../class/code-words.ts';
import { keepAnswer } from './kept-answers.ts';
import { MakePoll } from './make-poll.tsx';
import { OpenPoll } from './open-poll.tsx';
import type { PollDraft } from './poll-draft.ts';
import type { PollWays } from './poll-ways.ts';

/** One question to everyone: made, asked, shown, ended. */
export function PollPanel(ways: PollWays) {
  const [trouble, setTrouble] = useState('');
  const ask = async ({ question, right, why }: PollDraft) => {
    const poll = crypto.randomUUID?.() ?? idOfTime();
    keepAnswer({ poll, right, why });
    tell(
      await ways.say({
        type: 'poll',
        id: poll,
        question: { ...question, stem: [...question.stem], options: [...question.options] },
      }),
    );
  };
  const tell = (said: Awaited<ReturnType<PollWays['say']>>) =>
    setTrouble(said.ok ? '' : say('teach-poll.refused', { why: errorText(said.error) }));
  return (
    <section className="poll-panel" aria-labelledby="poll-panel-title">
      <h2 id="poll-panel-title">{say('teach-poll.title')}</h2>
      {ways.poll === null ? (
        <MakePoll moment={ways.moment} onAsk={(draft) => void ask(draft)} />
      ) : (
        <OpenPoll
          poll={ways.poll}
          counts={ways.counts}
          here={ways.here}
          onSay={async (entry) => tell(await ways.say(entry))}
        />
      )}
      <p className="invalid" role="status">
        {trouble}
      </p>
    </section>
  );
}

/** On a plain address of the local network a browser has no ids to give. */
function idOfTime(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
