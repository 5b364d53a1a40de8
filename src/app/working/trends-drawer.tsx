import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Trends } from '../../view/index.ts';
import { channelName } from '../../wording/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { useFacts } from './session-context.tsx';
import { TrendsHost } from './trends-host.tsx';

interface Props {
  readonly look: Surroundings;
  readonly onClose: () => void;
}

const CLOSER = 1.6;
const PAN_S = 10;
const FIRST_CHOSEN = ['gas.interspace.pressure', 'air.windbox.pressure', 'flame.signal'];

/** Any recorded quantity against time, several at once. */
export function TrendsDrawer({ look, onClose }: Props) {
  const { channels } = useFacts();
  const [chosen, setChosen] = useState<readonly string[]>(() =>
    FIRST_CHOSEN.filter((id) => channels.some((channel) => channel.id === id)),
  );
  const [trends, setTrends] = useState<Trends | null>(null);
  function toggle(id: string, on: boolean): void {
    setChosen(on ? [...chosen, id] : chosen.filter((each) => each !== id));
  }
  return (
    <section className="trends" aria-labelledby="trends-title">
      <div className="trends-bar">
        <h2 id="trends-title">{say('app.trends.title')}</h2>
        <div className="trends-tools">
          {trends === null ? null : (
            <>
              <ToolButton sign="+" word="closer" onUse={() => trends.zoomBy(CLOSER)} />
              <ToolButton sign="−" word="further" onUse={() => trends.zoomBy(1 / CLOSER)} />
              <ToolButton sign="‹" word="earlier" onUse={() => trends.panBy(-PAN_S)} />
              <ToolButton sign="›" word="later" onUse={() => trends.panBy(PAN_S)} />
              <button type="button" className="button" onClick={() => trends.zoomTo(null)}>
                {say('app.trends.whole')}
              </button>
            </>
          )}
          <button type="button" className="button" onClick={onClose}>
            {say('app.trends.close')}
          </button>
        </div>
      </div>
      <TrendsHost look={look} chosen={chosen} onTrends={setTrends} />
      <fieldset className="trends-picker">
        <legend>{say('app.trends.pick')}</legend>
        {channels
          .filter(({ kind }) => kind !== 'word')
          .map(({ id, part }) => (
            <label className="check" key={id}>
              <input
                type="checkbox"
                checked={chosen.includes(id)}
                onChange={(event) => toggle(id, event.target.checked)}
              />
              {part === 'hidden'
                ? say('app.trends.hidden', { name: channelName(id) })
                : channelName(id)}
            </label>
          ))}
      </fieldset>
    </section>
  );
}

function ToolButton(props: {
  readonly sign: string;
  readonly word: 'closer' | 'further' | 'earlier' | 'later';
  readonly onUse: () => void;
}) {
  const label = say(`app.trends.${props.word}`);
  return (
    <button
      type="button"
      className="button zoom"
      aria-label={label}
      title={label}
      onClick={props.onUse}
    >
      {props.sign}
    </button>
  );
}
