import { type ReactNode, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChartPane } from '../working/chart-pane.tsx';
import { LookBackBar } from '../working/look-back-bar.tsx';
import { JobPlant } from './job-plant.tsx';
import { panelChannels } from './panel-channels.ts';
import { type Looking, useLooking } from './use-looking.ts';

interface Props {
  readonly look: Surroundings;
  /** What was done at the drawing goes on in this tab of the bench. */
  readonly onTab: (tab: 'look' | 'tools') => void;
  readonly head: ReactNode;
  /** @param place a test point that was picked on the drawing; empty before one was */
  readonly bench: (looking: Looking, place: string) => ReactNode;
}

/** What eyes see of the plant, what its panel shows, and the technician's bench beside it. */
export function AtThePlant({ look, onTab, head, bench }: Props) {
  const [place, setPlace] = useState('');
  const looking = useLooking();
  return (
    <>
      <main className="plant">
        <JobPlant
          look={look}
          looking={looking}
          onLook={() => onTab('look')}
          onTestPoint={(id) => {
            setPlace(id);
            onTab('tools');
          }}
        />
        <LookBackBar />
      </main>
      <aside className="side" aria-label={say('job.bench')}>
        <div className="side-head">{head}</div>
        {bench(looking, place)}
      </aside>
      <ChartPane look={look} channelsShown={panelChannels} />
    </>
  );
}
