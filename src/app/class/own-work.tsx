import { Suspense, useEffect, useState } from 'react';
import type { ClassWhat } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';
import { LockedToolsProvider } from '../class-run/locked-tools.ts';
import { ITEM_MESSAGE_PARTS } from '../quiz-item/item-message-parts.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { lazyPage, RUN_WORDS, WORK_WORDS } from '../shell/lazy-page.ts';
import { WorkPlaceProvider } from '../work/work-place.ts';
import { bringWork } from './bring-work.ts';
import { useClass, useClassPart } from './class-context.ts';
import { useClassPlace } from './class-place.ts';
import { ComingIn } from './waiting-page.tsx';

const JobPage = lazyPage(WORK_WORDS, async () => (await import('../job/job-page.tsx')).JobPage);
const DrillPage = lazyPage(
  WORK_WORDS,
  async () => (await import('../drill/drill-page.tsx')).DrillPage,
);
const LessonPage = lazyPage(
  WORK_WORDS,
  async () => (await import('../lesson/lesson-page.tsx')).LessonPage,
);
const OwnStart = lazyPage(
  [...RUN_WORDS, 'job'],
  async () => (await import('./own-start.tsx')).OwnStart,
);
const OwnQuiz = lazyPage(ITEM_MESSAGE_PARTS, async () => (await import('./own-quiz.tsx')).OwnQuiz);

/** One's own copy of what the class works on: the pages of the exercise, in the class. */
export function OwnWork({ surroundings }: { readonly surroundings: Store<Surroundings> }) {
  const what = useClassPart((now) => now.book.what);
  const place = useClassPlace();
  const lockedTools = useClassPart((now) => now.book.lockedTools);
  const isHere = useWorkHere(what);
  if (what === null || !isHere) return <ComingIn />;
  return (
    <WorkPlaceProvider value={place}>
      <LockedToolsProvider value={lockedTools}>
        <Suspense fallback={<p className="loading">{say('app.loading')}</p>}>
          {pageOf(what, surroundings)}
        </Suspense>
      </LockedToolsProvider>
    </WorkPlaceProvider>
  );
}

function pageOf(what: ClassWhat, surroundings: Store<Surroundings>) {
  switch (what.kind) {
    case 'job':
      return <JobPage id={what.id} surroundings={surroundings} />;
    case 'drill':
      return <DrillPage id={what.id} surroundings={surroundings} />;
    case 'lesson':
      return <LessonPage id={what.id} surroundings={surroundings} />;
    case 'start':
      return <OwnStart id={what.id} surroundings={surroundings} />;
    case 'quiz':
      return <OwnQuiz what={what} surroundings={surroundings} />;
  }
}

/** Work that is on this device goes on at once; else the class is asked first whether it has some. */
function useWorkHere(what: ClassWhat | null): boolean {
  const seat = useClass();
  const link = useClassPart((now) => now.link);
  const [isHere, setHere] = useState(() => seat.book.read().attempt > 0);
  useEffect(() => {
    if (isHere || what === null || link !== 'live') return;
    bringWork(seat, what);
    setHere(true);
  }, [isHere, what, link, seat]);
  return isHere;
}
