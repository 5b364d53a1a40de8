import type { JudgedDecision } from '../../diagnosis/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { useStorePart } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { useFacts } from '../working/session-context.tsx';
import { feedbackWords } from './feedback-words.ts';

/** What is said of one decision. */
export function FeedbackText({ decision }: { readonly decision: JudgedDecision }) {
  const facts = useFacts();
  const { desk } = useExercise();
  const units = useStorePart(settings, (state) => state.units);
  const { about, said, small } = feedbackWords(facts, decision, desk.suspects, units);
  return (
    <>
      <p className="guidance-said">
        <strong>{about}.</strong> {said.join(' ')}
      </p>
      {small === '' ? null : <p className="guidance-small">{small}</p>}
    </>
  );
}
