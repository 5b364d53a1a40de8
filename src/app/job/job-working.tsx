import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Job } from '../library/exercises.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartPane } from '../working/chart-pane.tsx';
import { LookBackBar } from '../working/look-back-bar.tsx';
import { useExercise } from './exercise-context.tsx';
import { JobPlant } from './job-plant.tsx';
import { MinutesUsed } from './minutes-used.tsx';
import { panelChannels } from './panel-channels.ts';
import { PanelShows } from './panel-shows.tsx';
import { PhaseStrip } from './phase-strip.tsx';
import { useLooking } from './use-looking.ts';
import { WorkBench, type WorkTab } from './work-bench.tsx';

interface Props {
  readonly job: Job;
  readonly look: Surroundings;
}

/** At the plant: what eyes see of it, what its panel shows, and the technician's bench. */
export function JobWorking({ job, look }: Props) {
  const { desk } = useExercise();
  const [tab, setTab] = useState<WorkTab>(() => FIRST_TAB[desk.phase] ?? 'tools');
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
          <PhaseStrip />
          <PanelShows />
          <MinutesUsed budget={job.budgetMinutes} />
        </div>
        <WorkBench job={job} tab={tab} onTab={setTab} looking={looking} place={place} />
      </aside>
      <ChartPane look={look} channelsShown={panelChannels} />
    </>
  );
}

const FIRST_TAB: Readonly<Record<string, WorkTab>> = {
  'at the plant': 'card',
  claim: 'finish',
  proof: 'finish',
  handover: 'finish',
};
