import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { AtThePlant } from '../job/at-the-plant.tsx';
import { Looks } from '../job/looks.tsx';
import { PanelShows } from '../job/panel-shows.tsx';
import { PinList } from '../job/pin-list.tsx';
import { ToolBag } from '../job/tool-bag.tsx';
import type { Drill } from '../library/exercises.ts';
import type { Surroundings } from '../settings/theme.ts';
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
  return (
    <AtThePlant
      look={look}
      onTab={setTab}
      head={
        <>
          <TimeLeft limitS={drill.limitS} />
          <PanelShows />
        </>
      }
      bench={(looking, place) => (
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
      )}
    />
  );
}
