import { say, sayWord } from '../../i18n/index.ts';
import { useFactsOfClass } from './use-facts-of-class.ts';

interface Props {
  /** Null: now. */
  readonly step: string | null;
  readonly onStep: (step: string | null) => void;
}

/** Now, or when a run enters a step. */
export function WhenChoice({ step, onStep }: Props) {
  const facts = useFactsOfClass();
  const steps = facts?.stepNames ?? [];
  return (
    <label className="field">
      <span>{say('teach-class.when')}</span>
      <select
        value={step ?? ''}
        onChange={({ target }) => onStep(target.value === '' ? null : target.value)}
      >
        <option value="">{say('teach-class.when.now')}</option>
        {steps.map((each) => (
          <option key={each} value={each}>
            {say('teach-class.when.step', { step: sayWord('step', each, '.title') })}
          </option>
        ))}
      </select>
    </label>
  );
}
