import { type FormEvent, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Confidence, Item, Response } from '../../quiz/index.ts';
import { ItemResponse } from '../quiz-item/item-response.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ConfidenceChoice } from './confidence-choice.tsx';

export interface Chosen {
  readonly response: Response | null;
  readonly confidence: Confidence | null;
}

interface Props {
  readonly item: Item;
  readonly surroundings: Store<Surroundings>;
  readonly chosen: Chosen;
  readonly onChoose: (chosen: Chosen) => void;
  /** What the button says that gives the answer. */
  readonly label: string;
  readonly onAnswer: (response: Response, confidence: Confidence) => void;
}

/** The answer, how sure one is, and then both given. What is missing is said, not hidden. */
export function AnswerForm(props: Props) {
  const { item, surroundings, chosen, onChoose, label, onAnswer } = props;
  const [missing, setMissing] = useState<'answer' | 'sure' | null>(null);
  const choose = (change: Partial<Chosen>) => {
    setMissing(null);
    onChoose({ ...chosen, ...change });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { response, confidence } = chosen;
    if (response === null) return setMissing('answer');
    if (confidence === null) return setMissing('sure');
    onAnswer(response, confidence);
  };
  return (
    <form className="quiz-form" onSubmit={submit} noValidate>
      <ItemResponse
        key={item.id}
        item={item}
        response={chosen.response}
        onRespond={(response) => choose({ response })}
        surroundings={surroundings}
      />
      <ConfidenceChoice
        chosen={chosen.confidence}
        onChoose={(confidence) => choose({ confidence })}
      />
      <p className="buttons quiz-give">
        <button type="submit" className="button primary">
          {label}
        </button>
        <span className="invalid" role="status">
          {missing === null ? '' : say(`quiz.missing.${missing}`)}
        </span>
      </p>
    </form>
  );
}
