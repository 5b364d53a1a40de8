import { type ReactNode, useId, useState } from 'react';
import { PROOF_WORDS } from '../../engine/index.ts';
import { say } from '../../i18n/index.ts';
import type { Item } from '../../quiz/index.ts';
import { channelName, listWords, startWords } from '../../wording/index.ts';
import { panelChannels } from '../job/panel-channels.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartHost } from '../working/chart-host.tsx';
import { shortClock } from '../working/clock-text.ts';
import { SessionProvider, useSession, useSessionPart } from '../working/session-context.tsx';
import { TrendsHost } from '../working/trends-host.tsx';
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
          <Drawn title={say('app.chart.title')} kind="chart" running={session !== null}>
            <ChartHost look={look} channelsShown={panelChannels} />
          </Drawn>
        ) : null}
        {trends.length > 0 ? (
          <Drawn
            title={say('quiz.stem.trends', { names: listWords(trends.map(channelName)) })}
            kind="trends"
            running={session !== null}
          >
            <TrendsHost look={look} chosen={trends} onTrends={nothing} />
          </Drawn>
        ) : null}
        {session === null ? null : <BackToTheEnd />}
      </SessionProvider>
      {chart ? <StartInWords item={item} /> : null}
    </>
  );
}

interface DrawnProps {
  readonly title: string;
  readonly kind: 'chart' | 'trends';
  readonly running: boolean;
  readonly children: ReactNode;
}

/** A drawing that can be folded away; its room is kept while it is not there yet. */
function Drawn({ title, kind, running, children }: DrawnProps) {
  const id = useId();
  const [open, setOpen] = useState(true);
  return (
    <section className="item-drawn" data-kind={kind} aria-labelledby={id}>
      <h2 id={id}>
        <button
          type="button"
          className="chart-fold"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {title}
          <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
            <path
              d={open ? 'M2 4l4 4l4 -4' : 'M4 2l4 4l-4 4'}
              fill="none"
              stroke="currentColor"
              strokeWidth="2"
            />
          </svg>
        </button>
      </h2>
      {open ? (
        <div className="item-drawn-room">
          {running ? <WhenRunning>{children}</WhenRunning> : null}
        </div>
      ) : null}
    </section>
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
