import { type ReactNode, useRef, useState } from 'react';
import type { ClassWhat } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';
import type { QuizMode } from '../../quiz/index.ts';
import { useBank } from '../quiz/use-bank.ts';
import { PaperChoices } from '../teach-paper/paper-choices.tsx';
import { quizForClass } from './open-class.ts';

interface Props {
  readonly busy: boolean;
  readonly onOpen: (what: ClassWhat) => void;
  readonly children: ReactNode;
}

const MODES = ['standard', 'exam'] as const satisfies readonly QuizMode[];

/** A quiz for the class, put together as a paper is. */
export function ClassQuiz({ busy, onOpen, children }: Props) {
  const bank = useBank();
  const button = useRef<HTMLButtonElement>(null);
  const [mode, setMode] = useState<(typeof MODES)[number]>('standard');
  const [empty, setEmpty] = useState(false);
  if (bank.state === 'failed') {
    return (
      <div className="class-note" role="alert">
        <p>{say('quiz.bank.failed')}</p>
        <button type="button" className="button" onClick={bank.again}>
          {say('quiz.item.again')}
        </button>
      </div>
    );
  }
  return (
    <>
      <fieldset className="way-choice">
        <legend>{say('teach-class.quiz.told')}</legend>
        <div className="segments">
          {MODES.map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === mode}
              onClick={() => setMode(each)}
            >
              {say(`teach-class.quiz.told.${each}`)}
            </button>
          ))}
        </div>
      </fieldset>
      {children}
      <PaperChoices
        cards={bank.state === 'loaded' ? bank.cards : null}
        isMaking={busy}
        button={button}
        label={say('teach-class.open')}
        onMake={(choice, cards) => {
          const title = say('teach-class.quiz.title', { number: choice.number });
          const what = quizForClass(choice, cards, mode, title);
          setEmpty(what === null);
          if (what !== null) onOpen(what);
        }}
      />
      <p className="invalid" role="status">
        {empty ? say('quiz.paper.none') : ''}
      </p>
    </>
  );
}
