import { type FormEvent, useId, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { useStore, useStorePart } from '../session/store.ts';
import { settings as preferences } from '../settings/settings.ts';
import { useSession } from '../working/session-context.tsx';
import { ChoiceList } from './choice-list.tsx';
import { settingScale } from './setting-scale.ts';

/** A dial, what it stands at, and the value that it is set to. */
export function AdjustForm() {
  const session = useSession();
  const dials = useStorePart(session.atThePlant, (state) => state.settings);
  const { units } = useStore(preferences);
  const hint = useId();
  const [chosen, setChosen] = useState('');
  const [text, setText] = useState('');
  const [said, setSaid] = useState('');
  const dial = dials.find((each) => keyOf(each) === chosen) ?? null;
  const scale = dial === null ? null : settingScale(dial, units);
  const value = scale?.typed(text) ?? null;
  const inRange = dial !== null && value !== null && value >= dial.min && value <= dial.max;
  function act(event: FormEvent<HTMLFormElement>): void {
    event.preventDefault();
    if (dial === null || scale === null || value === null || !inRange) return;
    const { part, setting } = dial;
    session.perform({ type: 'adjust', part, setting, value });
    setSaid(say('job.adjust.done', { part, setting, value: `${text} ${scale.symbol}`.trim() }));
    setText('');
    event.currentTarget.querySelector('input')?.focus();
  }
  const range =
    dial === null || scale === null
      ? null
      : {
          min: scale.shown(dial.min),
          max: `${scale.shown(dial.max)} ${scale.symbol}`.trim(),
          value: `${scale.shown(dial.value)} ${scale.symbol}`.trim(),
        };
  return (
    <form className="work-form" onSubmit={act} aria-label={say('job.acts.adjust')}>
      <ChoiceList
        label={say('job.adjust.setting')}
        value={chosen}
        empty={say('job.adjust.choose')}
        options={dials.map((each) => ({
          value: keyOf(each),
          text: `${each.part}: ${each.setting}`,
        }))}
        onChoose={(next) => {
          setChosen(next);
          setText('');
          setSaid('');
        }}
      />
      {range === null || scale === null ? null : (
        <>
          <label className="field">
            <span>
              {say('job.adjust.value')}
              {scale.symbol === '' ? '' : `, ${scale.symbol}`}
            </span>
            <input
              type="text"
              inputMode="decimal"
              autoComplete="off"
              value={text}
              aria-describedby={hint}
              aria-invalid={text !== '' && !inRange}
              onChange={({ target }) => setText(target.value)}
            />
          </label>
          <p id={hint} className={text !== '' && !inRange ? 'invalid' : 'quiet'}>
            {text !== '' && !inRange
              ? say('job.adjust.out-of-range', range)
              : say('job.adjust.now', range)}
          </p>
        </>
      )}
      <p className="caution">{say('job.adjust.caution')}</p>
      <button type="submit" className="button primary" disabled={!inRange}>
        {say('job.adjust.do')}
      </button>
      <p className="said" role="status">
        {said}
      </p>
    </form>
  );
}

function keyOf({ part, setting }: { readonly part: string; readonly setting: string }): string {
  return `${part}: ${setting}`;
}
