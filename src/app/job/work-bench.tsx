import { useEffect, useRef } from 'react';
import { say } from '../../i18n/index.ts';
import type { Job } from '../library/exercises.ts';
import { Tabs } from '../working/tabs.tsx';
import { Acts } from './acts.tsx';
import { useExercise } from './exercise-context.tsx';
import { Finish } from './finish.tsx';
import { JobCard } from './job-card.tsx';
import { Looks } from './looks.tsx';
import { Notes } from './notes.tsx';
import { People } from './people.tsx';
import { Sheets } from './sheets.tsx';
import { ToolBag } from './tool-bag.tsx';
import type { Looking } from './use-looking.ts';

export const WORK_TABS = ['card', 'tools', 'look', 'acts', 'notes', 'finish'] as const;
export type WorkTab = (typeof WORK_TABS)[number];

interface Props {
  readonly job: Job;
  readonly tab: WorkTab;
  readonly onTab: (tab: WorkTab) => void;
  readonly looking: Looking;
  /** A test point that was picked on the drawing. */
  readonly place: string;
}

/** The technician's side of the page. */
export function WorkBench({ job, tab, onTab, looking, place }: Props) {
  const bench = useRef<HTMLElement>(null);
  const { desk } = useExercise();
  const known = useRef(desk.phase);
  // What was pressed to get on is gone: whoever works by keyboard goes on where its place was.
  useEffect(() => {
    if (known.current === desk.phase) return;
    known.current = desk.phase;
    const panel = bench.current?.querySelector<HTMLElement>('[role="tabpanel"]');
    panel?.focus({ preventScroll: true });
    panel?.scrollTo(0, 0);
  }, [desk.phase]);
  return (
    <section className="bench" aria-label={say('job.bench')} ref={bench}>
      <Tabs
        label={say('job.bench')}
        tabs={WORK_TABS.map((name) => ({ name, title: say(`job.tab.${name}`) }))}
        chosen={tab}
        onChoose={onTab}
      >
        {tab === 'card' ? (
          <>
            <BeginWork onBegun={() => onTab('look')} />
            <People job={job} />
            <Sheets job={job} />
            <JobCard job={job} />
          </>
        ) : null}
        {tab === 'tools' ? <ToolBag place={place} /> : null}
        {tab === 'look' ? <Looks looking={looking} /> : null}
        {tab === 'acts' ? <Acts /> : null}
        {tab === 'notes' ? <Notes /> : null}
        {tab === 'finish' ? <Finish /> : null}
      </Tabs>
    </section>
  );
}

function BeginWork({ onBegun }: { readonly onBegun: () => void }) {
  const { desk, take } = useExercise();
  if (desk.phase !== 'at the plant') return null;
  return (
    <section className="begin">
      <p>{say('desk.at-the-plant')}</p>
      <button
        type="button"
        className="button primary"
        onClick={() => {
          if (take({ type: 'begin' }) === null) onBegun();
        }}
      >
        {say('job.begin')}
      </button>
    </section>
  );
}
