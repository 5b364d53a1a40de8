import { type FormEvent, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import { useSession } from '../working/session-context.tsx';
import { ChoiceList } from './choice-list.tsx';

const LET_GO = -1;
const MAX_DEG = 90;

/** A servo moved by hand, so that blade and feedback can be compared. */
export function StrokeForm({ servos }: { readonly servos: readonly string[] }) {
  const session = useSession();
  const bench = useStorePart(session.atThePlant, (state) => state.bench);
  const [servo, setServo] = useState(servos[0] ?? '');
  const [deg, setDeg] = useState('45');
  const held = bench?.strokes.find((each) => each.servo === servo) ?? null;
  const number = Number(deg);
  const ready = deg.trim() !== '' && number >= 0 && number <= MAX_DEG;
  function act(event: FormEvent): void {
    event.preventDefault();
    if (ready) session.perform({ type: 'stroke', servo, deg: number });
  }
  return (
    <form className="work-form" onSubmit={act} aria-label={say('job.acts.stroke')}>
      <ChoiceList
        label={say('job.stroke.servo')}
        value={servo}
        options={servos.map((each) => ({ value: each, text: each.replace(/-/g, ' ') }))}
        onChoose={setServo}
      />
      <label className="field">
        <span>{say('job.stroke.to')}</span>
        <input
          type="number"
          min={0}
          max={MAX_DEG}
          step={1}
          value={deg}
          onChange={({ target }) => setDeg(target.value)}
        />
      </label>
      <p className="caution">{say('job.stroke.caution')}</p>
      <div className="buttons">
        <button type="submit" className="button primary" disabled={!ready}>
          {say('job.stroke.do')}
        </button>
        <button
          type="button"
          className="button"
          disabled={held === null}
          onClick={() => session.perform({ type: 'stroke', servo, deg: LET_GO })}
        >
          {say('job.stroke.let-go')}
        </button>
      </div>
      <p className="said" role="status">
        {held === null ? '' : say('job.stroke.held', { deg: Math.round(held.deg) })}
      </p>
    </form>
  );
}
