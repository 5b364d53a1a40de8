import { Suspense } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { lazyPage, RUN_WORDS } from '../shell/lazy-page.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { WorkPlaceProvider } from '../work/work-place.ts';
import { useClassPart } from './class-context.ts';
import { useClassPlace } from './class-place.ts';

const FollowPlant = lazyPage(
  RUN_WORDS,
  async () => (await import('./follow-plant.tsx')).FollowPlant,
);

/** The one plant that the instructor drives, on this device too. */
export function TogetherWork({ surroundings }: { readonly surroundings: Store<Surroundings> }) {
  const isThere = useClassPart((now) => now.work !== null && now.head !== null);
  const place = useClassPlace();
  if (!isThere) {
    return (
      <FrontFrame>
        <PageHeading>{say('class.together.coming')}</PageHeading>
        <p className="front-lead" role="status">
          {say('class.together.coming-lead')}
        </p>
      </FrontFrame>
    );
  }
  return (
    <WorkPlaceProvider value={place}>
      <Suspense fallback={<p className="loading">{say('app.loading')}</p>}>
        <FollowPlant surroundings={surroundings} />
      </Suspense>
    </WorkPlaceProvider>
  );
}
