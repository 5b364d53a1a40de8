import { useMemo } from 'react';
import { PROOF_WORDS } from '../../engine/index.ts';
import { say } from '../../i18n/index.ts';
import type { Item } from '../../quiz/index.ts';
import { lanesOf, tallestChartPx } from '../../view/index.ts';
import { channelName, listWords, startWords } from '../../wording/index.ts';
import { panelChannels } from '../job/panel-channels.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartHost } from '../working/chart-host.tsx';
import { shortClock } from '../working/clock-text.ts';
import { plantOfLibrary } from '../working/schematic-plant.ts';
import {
  SessionProvider,
  useFacts,
  useSession,
  useSessionPart,
} from '../working/session-context.tsx';
import { TrendsHost } from '../working/trends-host.tsx';
import { ItemDrawn } from './item-drawn.tsx';
import { knownItem } from './item-maker.ts';
import { useItemRun } from './use-item-run.ts';
import { WhenRunning } from './when-running.tsx';

interface Props {
  readonly item: Item;
  readonly look: Surroundings;
}

/** The record of the start: as a chart, as trends where the question is of them, and in words. */
export function ItemRecord({ item, look }: Props) {
  const session = useItemRun(item);
  const { chart, trends } = item.stem.shows;
  return (
    <>
      <SessionProvider value={session}>
        {chart ? (
          <ItemDrawn title={say('app.chart.title')} kind="chart">
            {session === null ? null : (
              <WhenRunning>
                <Chart look={look} />
              </WhenRunning>
            )}
          </ItemDrawn>
        ) : null}
        {trends.length > 0 ? (
          <ItemDrawn
            title={say('quiz.stem.trends', { names: listWords(trends.map(channelName)) })}
            kind="trends"
          >
            {session === null ? null : (
              <WhenRunning>
                <TrendsHost look={look} chosen={trends} onTrends={nothing} />
              </WhenRunning>
            )}
          </ItemDrawn>
        ) : null}
        {session === null ? null : <BackToTheEnd />}
      </SessionProvider>
      {chart ? <StartInWords item={item} /> : null}
    </>
  );
}

/** No higher than its lanes make use of. */
function Chart({ look }: { readonly look: Surroundings }) {
  const { channels, scenario } = useFacts();
  const lanes = useMemo(
    () => lanesOf(panelChannels(channels), plantOfLibrary(scenario.plant)).length,
    [channels, scenario],
  );
  return (
    <div className="item-chart" style={{ maxHeight: tallestChartPx(lanes) }}>
      <ChartHost look={look} channelsShown={panelChannels} />
    </div>
  );
}

/** While someone looks at an earlier moment of the record. */
function BackToTheEnd() {
  const session = useSession();
  const lookingBack = useSessionPart((state) => state.lookingBack);
  if (!lookingBack) return null;
  return (
    <p className="item-look-back">
      <span role="status">{say('quiz.stem.looking-back')}</span>{' '}
      <button type="button" className="button" onClick={() => session.backToLive()}>
        {say('quiz.stem.to-the-end')}
      </button>
    </p>
  );
}

function StartInWords({ item }: { readonly item: Item }) {
  const known = knownItem(item.id);
  const start = known?.ok === true ? known.start : [];
  const lines = startWords(start, item.run?.untilS);
  const call = start.find((event) => event.type === 'proved' && event.what === CALL);
  if (lines.length === 0) return null;
  return (
    <details className="item-start">
      <summary>{say('quiz.stem.start')}</summary>
      {call === undefined ? null : (
        <p className="quiet">{say('quiz.stem.counted', { time: minutesOf(call.t) })}</p>
      )}
      <ol>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    </details>
  );
}

/** As the chart writes its times. */
function minutesOf(tS: number): string {
  return shortClock(Math.round(tS)).replace(/\.0$/, '');
}

/** As the controller's record has it. */
const CALL = PROOF_WORDS.callForHeat;
const nothing = (): void => undefined;
