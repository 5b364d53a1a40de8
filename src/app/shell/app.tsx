import { Suspense, useEffect } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontPage } from '../front/front-page.tsx';
import { ITEM_MESSAGE_PARTS } from '../quiz-item/item-message-parts.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { lazyPage, RUN_WORDS, WORK_WORDS } from './lazy-page.ts';
import { LoadGuard } from './load-guard.tsx';
import type { Route } from './route.ts';
import { useRoute } from './use-route.ts';

const RESULT_WORDS = [
  ...ITEM_MESSAGE_PARTS,
  'bench',
  'conduct',
  'quiz-paper',
  'class-result',
  'teach-class',
  'teach-results',
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
const PackagePage = lazyPage(
  ['quiz', 'quiz-paper', 'job', 'package'],
  async () => (await import('../teach-package/package-page.tsx')).PackagePage,
);
const ScenariosPage = lazyPage(
  ['teach-class', 'teach-scenarios'],
  async () => (await import('../teach-scenarios/scenarios-page.tsx')).ScenariosPage,
);
const ScenarioPage = lazyPage(
  [...WORK_WORDS, 'quiz', 'scenario', 'teach-class', 'teach-scenarios'],
  async () => (await import('../teach-scenarios/scenario-page.tsx')).ScenarioPage,
);
const ClassesPage = lazyPage(
  [...ITEM_MESSAGE_PARTS, 'quiz-paper', 'class', 'teach-class'],
  async () => (await import('../teach-class/classes-page.tsx')).ClassesPage,
);
const TeachClassPage = lazyPage(
  [...WORK_WORDS, ...ITEM_MESSAGE_PARTS, 'class', 'teach-class', 'teach-poll'],
  async () => (await import('../teach-class/class-page.tsx')).TeachClassPage,
);
const ProjectorPage = lazyPage(
  [...WORK_WORDS, 'class', 'teach-class', 'teach-poll'],
  async () => (await import('../teach-class/projector-page.tsx')).ProjectorPage,
);
const ResultsPage = lazyPage(
  RESULT_WORDS,
  async () => (await import('../teach-results/results-page.tsx')).ResultsPage,
);
const KeptClassesPage = lazyPage(
  RESULT_WORDS,
  async () => (await import('../teach-results/kept-classes-page.tsx')).KeptClassesPage,
);
const JoinPage = lazyPage(['class'], async () => (await import('../class/join-page.tsx')).JoinPage);
const SeatPage = lazyPage(['class'], async () => (await import('../class/seat-page.tsx')).SeatPage);
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
    case 'package':
      return <PackagePage />;
    case 'scenarios':
      return <ScenariosPage />;
    case 'scenario':
      return (
        <ScenarioPage
          key={`${route.kind} ${route.id}`}
          kind={route.kind}
          id={route.id}
          surroundings={surroundings}
        />
      );
    case 'classes':
      return <ClassesPage />;
    case 'class':
      return <TeachClassPage key={route.id} id={route.id} surroundings={surroundings} />;
    case 'class-results':
      return <ResultsPage key={route.id} id={route.id} />;
    case 'kept-classes':
      return <KeptClassesPage />;
    case 'projector':
      return (
        <ProjectorPage
          key={route.id}
          id={route.id}
          projectorKey={route.key}
          surroundings={surroundings}
        />
      );
    case 'join':
      return <JoinPage key={route.code} code={route.code} />;
    case 'seat':
      return <SeatPage key={route.code} code={route.code} surroundings={surroundings} />;
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
    case 'package':
      return say('app.teach.package');
    case 'scenarios':
    case 'scenario':
      return say('app.teach.scenarios');
    case 'classes':
    case 'class':
    case 'class-results':
    case 'kept-classes':
    case 'projector':
      return say(`app.title.${route.page}`);
    case 'join':
    case 'seat':
      return say(`app.title.${route.page}`);
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
