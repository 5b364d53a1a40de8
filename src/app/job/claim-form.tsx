import { type FormEvent, useState } from 'react';
import { NO_FAULT } from '../../../machines/job/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { useFacts } from '../working/session-context.tsx';
import { ChoiceList } from './choice-list.tsx';
import { useExercise } from './exercise-context.tsx';
import { pinWords } from './point-words.ts';

/** The cause: which part, what is wrong with it, which readings say so. */
export function ClaimForm({ title }: { readonly title: string }) {
  const facts = useFacts();
  const { desk, take } = useExercise();
  const [part, setPart] = useState(desk.suspects[0] ?? '');
  const [mechanism, setMechanism] = useState('');
  const [why, setWhy] = useState<readonly number[]>([]);
  const [refused, setRefused] = useState('');
  function claim(event: FormEvent): void {
    event.preventDefault();
    const refusal = take({ type: 'claim', part, why, mechanism: mechanism.trim() });
    setRefused(refusal === null ? '' : sayWord('refusal', refusal));
    if (refusal === null) setMechanism('');
  }
  return (
    <form className="work-form" onSubmit={claim} aria-label={title}>
      <h3>{title}</h3>
      <p className="quiet">{say('job.finish.claim-lead')}</p>
      <ChoiceList
        label={say('job.finish.part')}
        value={part}
        empty={say('job.repair.choose-part')}
        options={[
          ...facts.parts.map((each) => ({ value: each.part, text: each.part })),
          { value: NO_FAULT, text: say('job.finish.no-fault') },
        ]}
        onChoose={setPart}
      />
      <label className="field">
        <span>{say('job.finish.mechanism')}</span>
        <textarea
          rows={3}
          maxLength={2000}
          value={mechanism}
          onChange={({ target }) => setMechanism(target.value)}
        />
      </label>
      <fieldset className="evidence">
        <legend>{say('job.finish.why')}</legend>
        {desk.pins.length === 0 ? <p className="quiet">{say('job.finish.no-pins')}</p> : null}
        {desk.pins.map((pin, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a claim names pins by their place
          <label className="check" key={place}>
            <input
              type="checkbox"
              checked={why.includes(place)}
              onChange={({ target }) =>
                setWhy(
                  target.checked
                    ? [...why, place].sort((a, b) => a - b)
                    : why.filter((each) => each !== place),
                )
              }
            />
            <span>
              {pinWords(facts, pin)}: <strong>{pin.reading}</strong>
            </span>
          </label>
        ))}
      </fieldset>
      <button type="submit" className="button primary" disabled={part === ''}>
        {say('job.finish.do-claim')}
      </button>
      <p className="invalid" role="status">
        {refused}
      </p>
    </form>
  );
}
