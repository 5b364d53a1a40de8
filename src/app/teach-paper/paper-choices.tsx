import { type FormEvent, type RefObject, useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { ITEM_KINDS, type ItemCard } from '../../quiz/index.ts';
import type { PaperChoice } from '../../records/index.ts';
import { plantTitle } from '../library/exercises.ts';
import { ChoiceOfSome } from './choice-of-some.tsx';
import { MOST_NUMBER, MOST_QUESTIONS, wholeWithin } from './whole-number.ts';

interface Props {
  /** Null while they are fetched. */
  readonly cards: readonly ItemCard[] | null;
  readonly isMaking: boolean;
  readonly button: RefObject<HTMLButtonElement | null>;
  /** What is made, where it is no paper. */
  readonly label?: string;
  /** What its number is called and good for, where it is no paper. */
  readonly numberWords?: { readonly name: string; readonly about: string };
  readonly onMake: (choice: PaperChoice, cards: readonly ItemCard[]) => void;
}

const FIRST = { number: '1', count: '20' } as const;

/** What goes on a paper, and its number. */
export function PaperChoices(props: Props) {
  const { cards, isMaking, button, label = say('quiz.paper.make'), numberWords, onMake } = props;
  const [numberText, setNumberText] = useState<string>(FIRST.number);
  const [countText, setCountText] = useState<string>(FIRST.count);
  const [plants, setPlants] = useState<readonly string[]>([]);
  const [skills, setSkills] = useState<PaperChoice['skills']>([]);
  const [kinds, setKinds] = useState<PaperChoice['kinds']>([]);
  const number = wholeWithin(numberText, 1, MOST_NUMBER);
  const count = wholeWithin(countText, 1, MOST_QUESTIONS);
  const have = cards ?? [];
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isMaking || cards === null || number === null || count === null) return;
    onMake({ number, count, plants, skills, kinds }, cards);
  };
  return (
    <form className="paper-choices" onSubmit={submit}>
      <div className="paper-numbers">
        <label className="field">
          <span>{numberWords?.name ?? say('quiz.paper.number')}</span>
          <input
            inputMode="numeric"
            value={numberText}
            aria-invalid={number === null}
            aria-describedby="paper-number-about"
            onChange={({ target }) => setNumberText(target.value)}
          />
        </label>
        <label className="field">
          <span>{say('quiz.paper.count')}</span>
          <input
            inputMode="numeric"
            value={countText}
            aria-invalid={count === null}
            aria-describedby="paper-number-about"
            onChange={({ target }) => setCountText(target.value)}
          />
        </label>
      </div>
      <p className="quiet" id="paper-number-about">
        {numberWords?.about ?? say('quiz.paper.number.about')}
      </p>
      <p className="invalid" role="status">
        {[
          ...(number === null ? [say('quiz.paper.number.wrong', { max: MOST_NUMBER })] : []),
          ...(count === null ? [say('quiz.paper.count.wrong', { max: MOST_QUESTIONS })] : []),
        ].join(' ')}
      </p>
      <ChoiceOfSome
        legend={say('quiz.paper.plants')}
        all={[...new Set(have.map(({ plant }) => plant))].filter((plant) => plant !== '').sort()}
        chosen={plants}
        nameOf={plantTitle}
        onChange={setPlants}
      />
      <ChoiceOfSome
        legend={say('quiz.paper.skills')}
        all={[...new Set(have.flatMap((card) => card.skills))].sort()}
        chosen={skills}
        nameOf={skillName}
        onChange={setSkills}
      />
      <ChoiceOfSome
        legend={say('quiz.paper.kinds')}
        all={ITEM_KINDS.filter((kind) => have.some((card) => card.kind === kind))}
        chosen={kinds}
        nameOf={(kind) => sayWord('quiz.kind', kind)}
        onChange={setKinds}
      />
      <button
        type="submit"
        ref={button}
        className="button primary"
        disabled={cards === null || number === null || count === null}
        // Not disabled, since whoever pressed it by key is to stay there.
        aria-disabled={isMaking}
      >
        {label}
      </button>
    </form>
  );
}

function skillName(skill: string): string {
  const name = sayWord('job.skill', skill);
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}
