import '../styles/working/index.css';
import { say } from '../../i18n/index.ts';
import { useWorkSession } from '../job/use-work-session.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { useWork } from '../work/use-work.ts';
import { WorkingFrame } from '../working/working-page.tsx';

interface Props {
  readonly id: string;
  readonly surroundings: Store<Surroundings>;
}

/** Faults are the instructor's business here. */
const TABS = ['panel', 'events'] as const;

/** A start of one's own in a class: saved and told like any other work. */
export function OwnStart({ id, surroundings }: Props) {
  const work = useWork('watch', id);
  const session = useWorkSession(work);
  if (session === null) return <p className="loading">{say('app.opening')}</p>;
  return (
    <WorkingFrame
      session={session}
      projector={false}
      title={say('class.what.start')}
      surroundings={surroundings}
      tabs={TABS}
      onAgain={() => work.goOnAnyway()}
    />
  );
}
