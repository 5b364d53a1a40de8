import { type FormEvent, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import { useFacts, useSession } from '../working/session-context.tsx';
import { ChoiceList } from './choice-list.tsx';

/** A wire across a contact, and those that are on. */
export function JumperForm() {
  const session = useSession();
  const { wiring } = useFacts();
  const bench = useStorePart(session.atThePlant, (state) => state.bench);
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
  const wires = wiring.wires.map((wire) => ({ value: wire, text: wire }));
  const ready = from !== '' && to !== '' && from !== to;
  function act(event: FormEvent): void {
    event.preventDefault();
    if (ready) session.perform({ type: 'jumper', from, to, on: true });
  }
  const jumpers = bench?.jumpers ?? [];
  return (
    <form className="work-form" onSubmit={act} aria-label={say('job.acts.jumper')}>
      <h4>{say('job.jumper.standing')}</h4>
      {jumpers.length === 0 ? <p className="quiet">{say('job.jumper.none')}</p> : null}
      <ul className="standing-list">
        {jumpers.map((each) => (
          <li key={`${each.from} ${each.to}`}>
            <span>{say('job.tools.between', each)}</span>
            <button
              type="button"
              className="button"
              aria-label={say('job.jumper.off-it', each)}
              onClick={() => session.perform({ type: 'jumper', ...each, on: false })}
            >
              {say('job.jumper.off')}
            </button>
          </li>
        ))}
      </ul>
      <ChoiceList
        label={say('job.jumper.from')}
        value={from}
        empty={say('job.jumper.choose')}
        options={wires}
        onChoose={setFrom}
      />
      <ChoiceList
        label={say('job.jumper.to')}
        value={to}
        empty={say('job.jumper.choose')}
        options={wires.filter(({ value }) => value !== from)}
        onChoose={setTo}
      />
      <p className="caution strong">{say('job.jumper.caution')}</p>
      <button type="submit" className="button warn" disabled={!ready}>
        {say('job.jumper.on')}
      </button>
    </form>
  );
}
