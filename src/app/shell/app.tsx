import { type ComponentType, lazy, Suspense, useEffect } from 'react';
import { loadMessages, type MessagePart, say } from '../../i18n/index.ts';
import { FrontPage } from '../front/front-page.tsx';
import { ITEM_MESSAGE_PARTS } from '../quiz-item/item-message-parts.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { LoadGuard } from './load-guard.tsx';
import type { Route } from './route.ts';
import { useRoute } from './use-route.ts';

/** What needs the plants, and what needs the drawing, is fetched when it is wanted, with its words. */
const RUN_WORDS = ['app', 'sequence', 'view'] as const;
const WORK_WORDS = [
  ...RUN_WORDS,
  'bench',
  'close-up',
  'conduct',
  'debrief',
  'debrief-branch',
  'debrief-way',
  'guidance',
  'job',
  'ladder',
  'learner',
] as const;

const PractisePage = lazyPage(
  ['job', 'learner'],
  async () => (await import('../front/practise-page.tsx')).PractisePage,
);
const LearnerPage = lazyPage(
  ['job', 'learner'],
  async () => (await import('../learner/learner-page.tsx')).LearnerPage,
);
const TeachPage = lazyPage([], async () => (await import('../front/teach-page.tsx')).TeachPage);
const PaperPage = lazyPage(
  [...ITEM_MESSAGE_PARTS, 'quiz-paper'],
  async () => (await import('../teach-paper/paper-page.tsx')).PaperPage,
);
const BlindPage = lazyPage(
  RUN_WORDS,
  async () => (await import('../working/blind-page.tsx')).BlindPage,
);
const WorkingPage = lazyPage(
  RUN_WORDS,
  async () => (await import('../working/working-page.tsx')).WorkingPage,
);
const JobPage = lazyPage(WORK_WORDS, async () => (await import('../job/job-page.tsx')).JobPage);
const BranchPage = lazyPage(
  WORK_WORDS,
  async () => (await import('../debrief/branch-page.tsx')).BranchPage,
);
const DrillPage = lazyPage(
  WORK_WORDS,
  async () => (await import('../drill/drill-page.tsx')).DrillPage,
);
const LessonPage = lazyPage(
  WORK_WORDS,
  async () => (await import('../lesson/lesson-page.tsx')).LessonPage,
);
const QuizHomePage = lazyPage(
  ['job', 'learner', 'quiz'],
  async () => (await import('../quiz/quiz-home-page.tsx')).QuizHomePage,
);
const QuizTakingPage = lazyPage(
  ITEM_MESSAGE_PARTS,
  async () => (await import('../quiz/quiz-taking-page.tsx')).QuizTakingPage,
);
const QuizResultPage = lazyPage(
  ITEM_MESSAGE_PARTS,
  async () => (await import('../quiz/quiz-result-page.tsx')).QuizResultPage,
);

function lazyPage<Props extends object>(
  words: readonly MessagePart[],
  load: () => Promise<ComponentType<Props>>,
) {
  return lazy(async () => {
    const [page] = await Promise.all([load(), loadMessages(words)]);
    return { default: page };
  });
}

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
      return <PractisePage />;
    case 'learner':
      return <LearnerPage />;
    case 'teach':
      return <TeachPage />;
    case 'paper':
      return <PaperPage />;
    case 'job':
      return <JobPage key={route.id} id={route.id} surroundings={surroundings} />;
    case 'branch':
      return (
        <BranchPage
          key={`${route.id} ${route.branch}`}
          id={route.id}
          branch={route.branch}
          surroundings={surroundings}
        />
      );
    case 'drill':
      return <DrillPage key={route.id} id={route.id} surroundings={surroundings} />;
    case 'lesson':
      return <LessonPage key={route.id} id={route.id} surroundings={surroundings} />;
    case 'quiz':
      return <QuizHomePage />;
    case 'quiz-taking':
      return <QuizTakingPage key={route.quiz} quiz={route.quiz} surroundings={surroundings} />;
    case 'quiz-result':
      return <QuizResultPage key={route.quiz} quiz={route.quiz} surroundings={surroundings} />;
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
    case 'learner':
      return say('app.title.learner');
    case 'teach':
      return say('app.teach.title');
    case 'paper':
      return say('app.teach.paper');
    case 'quiz':
      return say('app.quiz.title');
    case 'quiz-taking':
    case 'quiz-result':
      return say(`app.title.${route.page}`);
    case 'job':
    case 'branch':
      return say('app.title.job');
    case 'drill':
      return say('app.title.drill');
    case 'lesson':
      return say('app.title.lesson');
    default:
      return say('app.watch.title');
  }
}
