import { say } from '../../i18n/index.ts';
import { CONFIDENCES, type Confidence } from '../../quiz/index.ts';
import { confidenceWord } from './confidence-words.ts';

interface Props {
  readonly chosen: Confidence | null;
  readonly onChoose: (confidence: Confidence) => void;
}

/** How sure one is, said before one knows. */
export function ConfidenceChoice({ chosen, onChoose }: Props) {
  return (
    <fieldset className="quiz-sure">
      <legend>{say('quiz.sure')}</legend>
      <div className="quiz-sure-choices">
        {CONFIDENCES.map((each) => (
          <label className="quiz-sure-choice" key={each}>
            <input
              type="radio"
              name="confidence"
              checked={each === chosen}
              onChange={() => onChoose(each)}
            />
            <span>
              <strong>{confidenceWord(each)}</strong>{' '}
              <span className="quiet">{say('quiz.sure.percent', { percent: each })}</span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
