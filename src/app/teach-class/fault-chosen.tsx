import { type FormEvent, useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import type { Unit } from '../../quantity/index.ts';
import { severityScale, severityText } from '../reading/severity-scale.ts';
import type { FaultFacts } from '../session/protocol.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { FAULT_MANNERS, type FaultManner, faultAct } from './fault-acts.ts';
import { NumberField } from './number-field.tsx';
import { useTeach } from './teach-context.ts';
import { WhenChoice } from './when-choice.tsx';

interface Props {
  readonly fault: FaultFacts;
  readonly onBack: () => void;
}

/** One fault: how much of it, in which manner and when. */
export function FaultChosen({ fault, onBack }: Props) {
  const { drive } = useTeach();
  const { units } = useStore(settings);
  const [severity, setSeverity] = useState(fault.typical);
  const [manner, setManner] = useState<FaultManner>('at once');
  const [minutes, setMinutes] = useState<number | null>(2);
  const [periodS, setPeriod] = useState<number | null>(30);
  const [percent, setPercent] = useState<number | null>(30);
  const [step, setStep] = useState<string | null>(null);
  const text = severityText(fault.unit as Unit, severity, units);
  const scale = severityScale(fault.min, fault.max);
  const isWhole =
    manner === 'at once' ||
    (manner === 'growing' ? minutes !== null : periodS !== null && percent !== null);
  const putIn = (event: FormEvent) => {
    event.preventDefault();
    if (!isWhole) return;
    const act = faultAct({
      fault: fault.id,
      severity,
      manner,
      overS: (minutes ?? 0) * 60,
      periodS: periodS ?? 1,
      duty: (percent ?? 0) / 100,
    });
    drive.act([act], step);
    onBack();
  };
  return (
    <form className="fault-chosen" onSubmit={putIn}>
      <button type="button" className="button plain" onClick={onBack}>
        ← {say('teach-class.fault.all')}
      </button>
      <h3>{fault.id}</h3>
      <p className="quiet">{fault.mechanism}</p>
      {fault.max - fault.min <= 0 ? null : (
        <label className="severity">
          <span className="severity-line">
            <span>{fault.means}</span> <strong>{text}</strong>
          </span>
          <input
            type="range"
            min={0}
            max={1}
            step={0.005}
            value={scale.placeOf(severity)}
            aria-valuetext={text}
            onChange={({ target }) => setSeverity(scale.at(Number(target.value)))}
          />
        </label>
      )}
      <fieldset>
        <legend>{say('teach-class.manner')}</legend>
        <div className="segments">
          {FAULT_MANNERS.map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === manner}
              onClick={() => setManner(each)}
            >
              {sayWord('teach-class.manner', each)}
            </button>
          ))}
        </div>
      </fieldset>
      {manner === 'growing' ? (
        <NumberField
          label={say('teach-class.manner.over')}
          value={minutes}
          min={0.1}
          max={60}
          onChange={setMinutes}
        />
      ) : null}
      {manner === 'coming and going' ? (
        <div className="two-fields">
          <NumberField
            label={say('teach-class.manner.period')}
            value={periodS}
            min={1}
            max={3600}
            onChange={setPeriod}
          />
          <NumberField
            label={say('teach-class.manner.duty')}
            value={percent}
            min={1}
            max={99}
            onChange={setPercent}
          />
        </div>
      ) : null}
      <WhenChoice step={step} onStep={setStep} />
      <button type="submit" className="button primary" disabled={!isWhole}>
        {say(step === null ? 'teach-class.fault.put-in' : 'teach-class.fault.lay-ready')}
      </button>
    </form>
  );
}
