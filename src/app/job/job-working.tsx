import { useState } from 'react';
import { GuidanceProvider } from '../guidance/guidance-context.tsx';
import { GuidancePanel } from '../guidance/guidance-panel.tsx';
import type { Job } from '../library/exercises.ts';
import type { Surroundings } from '../settings/theme.ts';
import { AtThePlant } from './at-the-plant.tsx';
import { useExercise } from './exercise-context.tsx';
import { MinutesUsed } from './minutes-used.tsx';
import { PanelShows } from './panel-shows.tsx';
import { PhaseStrip } from './phase-strip.tsx';
import { WorkBench, type WorkTab } from './work-bench.tsx';

interface Props {
  readonly job: Job;
  readonly look: Surroundings;
}

/** At the plant: what eyes see of it, what its panel shows, and the technician's bench. */
export function JobWorking({ job, look }: Props) {
  const { desk } = useExercise();
  const [tab, setTab] = useState<WorkTab>(() => FIRST_TAB[desk.phase] ?? 'tools');
  return (
    <GuidanceProvider>
      <AtThePlant
        look={look}
        onTab={setTab}
        head={
          <>
            <PhaseStrip />
            <PanelShows />
            <MinutesUsed budget={job.budgetMinutes} />
          </>
        }
        bench={(looking, place) => (
          <>
            <GuidancePanel />
            <WorkBench job={job} tab={tab} onTab={setTab} looking={looking} place={place} />
          </>
        )}
      />
    </GuidanceProvider>
  );
}

const FIRST_TAB: Readonly<Record<string, WorkTab>> = {
  'at the plant': 'card',
  claim: 'finish',
  proof: 'finish',
  handover: 'finish',
};
