import { useCallback, useMemo, useState } from 'react';
import type { InstructorClient } from '../../classroom/index.ts';
import type { Session } from '../session/session-types.ts';
import { createStore, useStorePart } from '../session/store.ts';
import { watchBoard } from './board-watch.ts';
import { driveApart, driveTogether } from './drive.ts';
import { openingOf } from './exercise-of-class.ts';
import type { OwnClass } from './own-classes.ts';
import { createSaying, type TeachNotice } from './saying.ts';
import { NOBODY, type Selection } from './selection.ts';
import { type Teach, targetsOf } from './teach-context.ts';
import { useLead } from './use-lead.ts';
import { useOpenRun } from './use-open-run.ts';
import { useTriggers } from './use-triggers.ts';

/** Everything that the parts of a class's page share. */
export function useTeachOf(own: OwnClass, client: InstructorClient): Teach {
  const stores = useMemo(() => {
    const notice = createStore<TeachNotice>({ text: '' });
    return {
      notice,
      selection: createStore<Selection>(NOBODY),
      board: watchBoard(client.store, () => Date.now()),
      viewed: createStore<{ readonly session: Session | null }>({ session: null }),
      say: createSaying(client, notice),
    };
  }, [client]);
  const lead = useLead(client);
  const { still, wantFacts } = useStill(own, client);
  const session = own.way === 'together' ? lead : still;
  useTriggers(client, lead, stores.say);
  return useMemo(() => {
    const { say, selection } = stores;
    const drive =
      own.way === 'together'
        ? driveTogether(say, () => lead)
        : driveApart(say, () => targetsOf(selection.read().seats));
    return { own, client, ...stores, drive, session, wantFacts };
  }, [own, client, stores, lead, session, wantFacts]);
}

/** A run that stands still, so that the plant is known; opened when something of it is wanted. */
function useStill(own: OwnClass, client: InstructorClient) {
  const [wanted, setWanted] = useState(false);
  const book = useStorePart(client.store, (now) => now.book);
  const opening = own.way === 'together' || !wanted ? null : openingOf(book);
  const still: Session | null = useOpenRun('still', opening && { ...opening, play: false });
  const wantFacts = useCallback(() => setWanted(true), []);
  return { still, wantFacts };
}
