import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { JobPlant } from '../job/job-plant.tsx';
import { Looks } from '../job/looks.tsx';
import { panelChannels } from '../job/panel-channels.ts';
import { PanelShows } from '../job/panel-shows.tsx';
import { PinList } from '../job/pin-list.tsx';
import { ToolBag } from '../job/tool-bag.tsx';
import { useLooking } from '../job/use-looking.ts';
import type { Drill } from '../library/exercises.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartPane } from '../working/chart-pane.tsx';
import { LookBackBar } from '../working/look-back-bar.tsx';
import { PanelTab } from '../working/panel-tab.tsx';
import { Tabs } from '../working/tabs.tsx';
import { DrillQuestion } from './drill-question.tsx';
import { TimeLeft } from './time-left.tsx';

const TABS = ['question', 'tools', 'look', 'panel', 'notes'] as const;
type DrillTab = (typeof TABS)[number];

interface Props {
  readonly drill: Drill;
  readonly look: Surroundings;
}

export function DrillWorking({ drill, look }: Props) {
  const [tab, setTab] = useState<DrillTab>('question');
  const [place, setPlace] = useState('');
  const looking = useLooking();
  return (
    <>
      <main className="plant">
        <JobPlant
          look={look}
          looking={looking}
          onLook={() => setTab('look')}
          onTestPoint={(id) => {
            setPlace(id);
            setTab('tools');
          }}
        />
        <LookBackBar />
      </main>
      <aside className="side" aria-label={say('job.bench')}>
        <div className="side-head">
          <TimeLeft limitS={drill.limitS} />
          <PanelShows />
        </div>
        <section className="bench" aria-label={say('job.bench')}>
          <Tabs
            label={say('job.bench')}
            tabs={TABS.map((name) => ({ name, title: say(`drill.tab.${name}`) }))}
            chosen={tab}
            onChoose={setTab}
          >
            {tab === 'question' ? <DrillQuestion drill={drill} /> : null}
            {tab === 'tools' ? <ToolBag place={place} /> : null}
            {tab === 'look' ? <Looks looking={looking} /> : null}
            {tab === 'panel' ? <PanelTab atWork={true} /> : null}
            {tab === 'notes' ? <PinList /> : null}
          </Tabs>
        </section>
      </aside>
      <ChartPane look={look} channelsShown={panelChannels} />
    </>
  );
}
