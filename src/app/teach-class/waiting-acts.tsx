import { say, sayWord } from '../../i18n/index.ts';
import { actText } from './act-text.ts';
import { useBook, useTeach } from './teach-context.ts';
import { toText } from './to-text.ts';

/** What is laid ready for a step, each with a way to take it back. */
export function WaitingActs() {
  const { triggers } = useBook();
  const { say: tell } = useTeach();
  if (triggers.length === 0) return null;
  return (
    <section className="waiting-acts" aria-labelledby="waiting-acts-title">
      <h3 id="waiting-acts-title">{say('teach-class.waiting-acts')}</h3>
      <ul>
        {triggers.map(({ id, to, step, acts }) => (
          <li key={id}>
            <span>
              <strong>{acts.map(actText).join(', ')}</strong>
              <span className="quiet">
                {say('teach-class.when.step', { step: sayWord('step', step, '.title') })} ·{' '}
                {toText(to)}
              </span>
            </span>
            <button
              type="button"
              className="button"
              onClick={() => void tell({ type: 'forget when', id })}
            >
              {say('teach-class.take-back')}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
