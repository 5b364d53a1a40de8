import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Moment } from './ask-here.ts';
import { BankQuestion } from './bank-question.tsx';
import { FromHere } from './from-here.tsx';
import { OwnQuestionForm } from './own-question-form.tsx';
import type { PollDraft } from './poll-draft.ts';

const SOURCES = ['here', 'bank', 'own'] as const;
type Source = (typeof SOURCES)[number];

interface Props {
  readonly moment: () => Moment | null;
  readonly onAsk: (draft: PollDraft) => void;
}

/** Where the question comes from. */
export function MakePoll({ moment, onAsk }: Props) {
  const [source, setSource] = useState<Source>(() => (moment() === null ? 'bank' : 'here'));
  return (
    <>
      <fieldset className="segments poll-sources">
        <legend className="for-readers">{say('teach-poll.source')}</legend>
        {SOURCES.map((one) => (
          <button
            key={one}
            type="button"
            className="button"
            aria-pressed={one === source}
            onClick={() => setSource(one)}
          >
            {say(`teach-poll.source.${one}`)}
          </button>
        ))}
      </fieldset>
      {source === 'here' ? <FromHere moment={moment} onAsk={onAsk} /> : null}
      {source === 'bank' ? <BankQuestion onAsk={onAsk} /> : null}
      {source === 'own' ? <OwnQuestionForm onAsk={onAsk} /> : null}
    </>
  );
}
