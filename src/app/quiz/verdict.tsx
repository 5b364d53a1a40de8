import { useEffect, useRef } from 'react';
import { say } from '../../i18n/index.ts';
import type { Confidence } from '../../quiz/index.ts';
import { confidenceWord } from './confidence-words.ts';

interface Props {
  readonly right: boolean;
  readonly confidence: Confidence;
  /** Just answered: a reader goes on here, and the reasons are brought onto the screen. */
  readonly fresh: boolean;
}

/** Part of the window within which a heading need not be moved to be read on from. */
const UPPER_PART = 0.4;

/** Right or not, in words, and how sure one had been. */
export function Verdict({ right, confidence, fresh }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    const { current } = heading;
    if (!fresh || current === null) return;
    current.focus({ preventScroll: true });
    const { top } = current.getBoundingClientRect();
    if (top < 0 || top > UPPER_PART * innerHeight) current.scrollIntoView({ block: 'start' });
  }, [fresh]);
  return (
    <div className="quiz-verdict" data-right={right}>
      <h2 ref={heading} tabIndex={-1}>
        <span className="quiz-verdict-mark" aria-hidden="true">
          {right ? '✓' : '×'}
        </span>{' '}
        {say(right ? 'quiz.right' : 'quiz.wrong')}
      </h2>
      <p>{say('quiz.had-said', { word: confidenceWord(confidence), percent: confidence })}</p>
    </div>
  );
}
