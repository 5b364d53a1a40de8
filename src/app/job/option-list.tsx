import { useId } from 'react';
import { say } from '../../i18n/index.ts';

interface Props {
  readonly question: string;
  readonly options: readonly string[];
  /** Why each is right or wrong; shown once something was answered. */
  readonly why: readonly string[];
  readonly right: number;
  /** Null while nothing was answered. */
  readonly answered: number | null;
  readonly disabled?: boolean;
  readonly onAnswer: (option: number) => void;
}

/** One question; each answer says why it is right or wrong once one was given. */
export function OptionList(props: Props) {
  const { question, options, why, right, answered, disabled = false, onAnswer } = props;
  const id = useId();
  return (
    <section className="question" aria-labelledby={id}>
      <h3 id={id}>{question}</h3>
      <ul className="options">
        {options.map((option, place) => (
          <li key={option} data-right={answered === null ? undefined : place === right}>
            {answered === null ? (
              <button
                type="button"
                className="button option"
                disabled={disabled}
                onClick={() => onAnswer(place)}
              >
                {option}
              </button>
            ) : (
              <>
                <p>
                  <span className="option-mark" aria-hidden="true">
                    {place === right ? '✓' : '×'}
                  </span>{' '}
                  <strong>{option}</strong>{' '}
                  <span className="quiet">
                    {[
                      ...(place === right ? [say('lesson.right-one')] : []),
                      ...(place === answered ? [say('lesson.your-answer')] : []),
                    ].join(', ')}
                  </span>
                </p>
                <p>{why[place]}</p>
              </>
            )}
          </li>
        ))}
      </ul>
      <p className={answered === right ? 'said' : 'invalid'} role="status">
        {answered === null ? '' : say(answered === right ? 'lesson.right' : 'lesson.wrong')}
      </p>
    </section>
  );
}
