import { useState } from 'react';
import { lookWords } from '../../bench/index.ts';
import type { LookReading, LookWhat } from '../../engine/index.ts';
import { say, sayMessage, sayWord } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { useFacts } from '../working/session-context.tsx';
import { ChoiceList } from './choice-list.tsx';
import { useExercise } from './exercise-context.tsx';
import { PanelHistory } from './panel-history.tsx';
import { placeName } from './point-words.ts';
import { Senses } from './senses.tsx';
import type { Looking, Seen } from './use-looking.ts';
import { usePin } from './use-pin.ts';

/** Eyes, ears and nose. */
export function Looks({ looking }: { readonly looking: Looking }) {
  const facts = useFacts();
  const { seen, look } = looking;
  const [chosen, setChosen] = useState<LookWhat | null>(null);
  const what = chosen ?? seen?.what ?? facts.lookPlaces[0] ?? null;
  if (what === null) return <Senses />;
  return (
    <div className="looks">
      <section aria-labelledby="looks-title">
        <h3 id="looks-title">{say('job.look.eyes')}</h3>
        <div className="field-row">
          <ChoiceList
            label={say('job.look.what')}
            value={what}
            options={facts.lookPlaces.map((each) => ({ value: each, text: placeName(each) }))}
            onChoose={(next) => setChosen(next as LookWhat)}
          />
          <button type="button" className="button primary" onClick={() => look(what)}>
            {say('job.look.look')}
          </button>
        </div>
        {seen === null ? null : <SeenThere seen={seen} />}
      </section>
      <Senses />
      <PanelHistory />
    </div>
  );
}

function SeenThere({ seen }: { readonly seen: Seen }) {
  const { desk } = useExercise();
  const pin = usePin();
  const words = seenWords(seen.reading);
  return (
    <div className="seen">
      <h4>{placeName(seen.what)}</h4>
      <p role="status">{words}</p>
      <p className="quiet">
        {say('job.look.at', {
          time: shortClock(seen.atS),
          step: sayWord('step', seen.step, '.title').toLowerCase(),
        })}
      </p>
      {seen.reading.needsOpening ? <p className="caution">{say('job.look.opening')}</p> : null}
      <button
        type="button"
        className="button"
        disabled={desk.phase === 'handover'}
        onClick={() => pin({ what: 'look', place: seen.what, reading: words })}
      >
        {say('job.look.pin')}
      </button>
    </div>
  );
}

/** Everything an eye found, in one line. */
function seenWords(reading: LookReading): string {
  const said = lookWords(reading).map(sayMessage);
  return said.length === 0 ? say('job.look.nothing') : said.join(' ');
}
