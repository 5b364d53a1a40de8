import { say } from '../../i18n/index.ts';
import { EventsTab } from './events-tab.tsx';
import { FaultsTab } from './faults-tab.tsx';
import { PanelTab } from './panel-tab.tsx';
import { Tabs } from './tabs.tsx';

export type BenchTab = 'panel' | 'events' | 'faults';
interface Props {
  readonly tabs: readonly BenchTab[];
  /** Null when the bench is folded away. */
  readonly tab: BenchTab | null;
  readonly onTab: (tab: BenchTab | null) => void;
}

/** What can be done, what happened, what may be wrong. */
export function Bench({ tabs, tab, onTab }: Props) {
  const fold = say(tab === null ? 'app.bench.unfold' : 'app.bench.fold');
  return (
    <section className="bench" aria-label={say('app.bench.title')}>
      <Tabs
        label={say('app.bench.title')}
        tabs={tabs.map((name) => ({ name, title: say(`app.bench.${name}`) }))}
        chosen={tab}
        onChoose={onTab}
        extra={
          <button
            type="button"
            className="button plain"
            aria-expanded={tab !== null}
            aria-label={fold}
            title={fold}
            onClick={() => onTab(tab === null ? (tabs[0] ?? null) : null)}
          >
            <svg width="18" height="18" viewBox="0 0 18 18" fill="none" aria-hidden="true">
              <path
                d={tab === null ? 'M3 12 l6 -6 l6 6' : 'M3 6 l6 6 l6 -6'}
                stroke="currentColor"
                strokeWidth="2"
                strokeLinecap="round"
                strokeLinejoin="round"
              />
            </svg>
          </button>
        }
      >
        {tab === 'events' ? <EventsTab /> : null}
        {tab === 'faults' ? <FaultsTab /> : null}
        {tab === 'panel' ? <PanelTab /> : null}
      </Tabs>
    </section>
  );
}
