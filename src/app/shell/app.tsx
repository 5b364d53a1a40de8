import { lazy, Suspense, useEffect } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontPage } from '../front/front-page.tsx';
import { QuizPage } from '../front/quiz-page.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { LoadGuard } from './load-guard.tsx';
import type { Route } from './route.ts';
import { useRoute } from './use-route.ts';

/** What needs the plants, and what needs the drawing, is fetched when it is wanted. */
const ChoosePage = lazy(async () => ({
  default: (await import('../front/choose-page.tsx')).ChoosePage,
}));
const BlindPage = lazy(async () => ({
  default: (await import('../working/blind-page.tsx')).BlindPage,
}));
const WorkingPage = lazy(async () => ({
  default: (await import('../working/working-page.tsx')).WorkingPage,
}));

export function App({ surroundings }: { readonly surroundings: Store<Surroundings> }) {
  const route = useRoute();
  useTitle(route);
  return (
    <LoadGuard key={JSON.stringify(route)}>
      <Suspense fallback={<p className="loading">{say('app.loading')}</p>}>
        {pageOf(route, surroundings)}
      </Suspense>
    </LoadGuard>
  );
}

function pageOf(route: Route, surroundings: Store<Surroundings>) {
  switch (route.page) {
    case 'front':
      return <FrontPage />;
    case 'practise':
    case 'teach':
      return <ChoosePage door={route.page} />;
    case 'quiz':
      return <QuizPage />;
    case 'blind':
      return <BlindPage key={route.number} number={route.number} surroundings={surroundings} />;
    case 'watch':
      return (
        <WorkingPage
          key={route.scenario}
          scenario={route.scenario}
          projector={route.projector}
          blind={false}
          surroundings={surroundings}
        />
      );
  }
}

function useTitle(route: Route): void {
  useEffect(() => {
    document.title = route.page === 'front' ? 'Flamewright' : `${titleOf(route)} · Flamewright`;
  }, [route]);
}

function titleOf(route: Route): string {
  switch (route.page) {
    case 'practise':
      return say('app.practise.title');
    case 'teach':
      return say('app.teach.title');
    case 'quiz':
      return say('app.quiz.title');
    default:
      return say('app.watch.title');
  }
}
