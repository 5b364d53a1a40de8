import { type ReactNode, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartPane } from '../working/chart-pane.tsx';
import { EventsTab } from '../working/events-tab.tsx';
import { PlantPane } from '../working/plant-pane.tsx';
import { TrendsDrawer } from '../working/trends-drawer.tsx';

interface Props {
  readonly look: Surroundings;
  /** What the run is looked at for. */
  readonly head?: ReactNode;
  readonly onBack: () => void;
}

/** The run once more, with everything shown: the record is looked at, nothing is done. */
export function Replay({ look, head = null, onBack }: Props) {
  const [trends, setTrends] = useState(false);
  return (
    <>
      <main className="plant">
        <PlantPane look={look} trends={trends} onTrends={() => setTrends(!trends)} />
        {trends ? <TrendsDrawer look={look} onClose={() => setTrends(false)} /> : null}
      </main>
      <aside className="side" aria-label={say('debrief.replay')}>
        <div className="side-head">
          {head}
          <p className="quiet">{say('debrief.replay-lead')}</p>
          <button type="button" className="button primary" onClick={onBack}>
            {say('debrief.report')}
          </button>
        </div>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus */}
        <section className="replay-events" aria-label={say('app.events.title')} tabIndex={0}>
          <EventsTab revealed={true} />
        </section>
      </aside>
      <ChartPane look={look} />
    </>
  );
}
