import { type RefObject, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { ItemCard } from '../../quiz/index.ts';
import type { PaperChoice } from '../../records/index.ts';
import { useBank } from '../quiz/use-bank.ts';
import { PaperChoices } from '../teach-paper/paper-choices.tsx';
import { Segments } from './segments.tsx';

const MODES = ['standard', 'exam'] as const;
export type QuizMode = (typeof MODES)[number];

interface Props {
  readonly isMaking: boolean;
  readonly button: RefObject<HTMLButtonElement | null>;
  readonly onMake: (choice: PaperChoice, cards: readonly ItemCard[], mode: QuizMode) => void;
}

/** Which questions, drawn as for a paper, and when they are told on. */
export function QuizPart({ isMaking, button, onMake }: Props) {
  const bank = useBank();
  const [mode, setMode] = useState<QuizMode>('standard');
  if (bank.state === 'failed') {
    return (
      <div className="paper-trouble" role="alert">
        <p>{say('quiz.bank.failed')}</p>
        <button type="button" className="button" onClick={bank.again}>
          {say('quiz.item.again')}
        </button>
      </div>
    );
  }
  return (
    <>
      <Segments
        legend={say('package.told')}
        all={MODES}
        chosen={mode}
        nameOf={(one) => say(`package.told.${one}`)}
        onChoose={setMode}
      />
      <PaperChoices
        cards={bank.state === 'loaded' ? bank.cards : null}
        isMaking={isMaking}
        button={button}
        label={say('package.make')}
        numberWords={{ name: say('package.number'), about: say('package.number.about') }}
        onMake={(choice, cards) => onMake(choice, cards, mode)}
      />
    </>
  );
}
