import { useState } from 'react';
import type { Action } from '../../engine/index.ts';
import { say } from '../../i18n/index.ts';
import { NumberField } from './number-field.tsx';
import { ShareSlider } from './share-slider.tsx';
import { useTeach } from './teach-context.ts';
import { useFactsOfClass } from './use-facts-of-class.ts';
import { WaitingActs } from './waiting-acts.tsx';
import { WhenChoice } from './when-choice.tsx';

/** What stands around the plant: what it must give, the weather, gas and mains. */
export function SurroundingsPanel() {
  const { drive } = useTeach();
  const facts = useFactsOfClass();
  const [step, setStep] = useState<string | null>(null);
  if (facts === null) return <p className="quiet">{say('teach-class.facts.loading')}</p>;
  const act = (action: Action) => drive.act([action], step);
  return (
    <>
      <WaitingActs />
      <WhenChoice step={step} onStep={setStep} />
      <ShareSlider
        label={say('teach-class.load')}
        first={0.5}
        max={1}
        onSet={(load) => act({ type: 'set-load', load })}
      />
      <ShareSlider
        label={say('teach-class.gas')}
        first={1}
        max={1.5}
        onSet={(share) => act({ type: 'set-gas-supply', share })}
      />
      <ShareSlider
        label={say('teach-class.mains')}
        first={1}
        max={1.2}
        onSet={(share) => act({ type: 'set-mains', share })}
      />
      <Weather onSet={act} />
    </>
  );
}

const PA_PER_MBAR = 100;

function Weather({ onSet }: { readonly onSet: (action: Action) => void }) {
  const [celsius, setCelsius] = useState<number | null>(20);
  const [mbar, setMbar] = useState<number | null>(0);
  const [percent, setPercent] = useState<number | null>(50);
  const isWhole = celsius !== null && mbar !== null && percent !== null;
  return (
    <fieldset className="weather">
      <legend>{say('teach-class.weather')}</legend>
      <NumberField
        label={say('teach-class.weather.celsius')}
        value={celsius}
        min={-40}
        max={50}
        onChange={setCelsius}
      />
      <NumberField
        label={say('teach-class.weather.barometer')}
        value={mbar}
        min={-60}
        max={50}
        onChange={setMbar}
      />
      <NumberField
        label={say('teach-class.weather.humidity')}
        value={percent}
        min={0}
        max={100}
        onChange={setPercent}
      />
      <button
        type="button"
        className="button"
        disabled={!isWhole}
        onClick={() => {
          if (!isWhole) return;
          onSet({
            type: 'set-weather',
            temperatureC: celsius,
            weatherPa: mbar * PA_PER_MBAR,
            relativeHumidity: percent / 100,
          });
        }}
      >
        {say('teach-class.weather.set')}
      </button>
    </fieldset>
  );
}
