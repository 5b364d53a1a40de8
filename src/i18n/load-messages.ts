import { addMessages, type Catalogue } from './say.ts';

/** Catalogues that are fetched with the page that speaks them. */
const PARTS = {
  app: async () => (await import('./en/app.ts')).app,
  bench: async () => (await import('./en/bench.ts')).bench,
  'class-result': async () => (await import('./en/class-result.ts')).classResult,
  conduct: async () => (await import('./en/conduct.ts')).conduct,
  class: async () => (await import('./en/class.ts')).classroom,
  'close-up': async () => (await import('./en/close-up.ts')).closeUp,
  guidance: async () => (await import('./en/guidance.ts')).guidance,
  debrief: async () => (await import('./en/debrief.ts')).debrief,
  'debrief-branch': async () => (await import('./en/debrief-branch.ts')).debriefBranch,
  'debrief-way': async () => (await import('./en/debrief-way.ts')).debriefWay,
  job: async () => (await import('./en/job.ts')).job,
  learner: async () => (await import('./en/learner.ts')).learner,
  lms: async () => (await import('./en/lms.ts')).lms,
  ladder: async () => (await import('./en/ladder.ts')).ladder,
  quiz: async () => (await import('./en/quiz.ts')).quiz,
  'quiz-calculation': async () => (await import('./en/quiz-calculation.ts')).quizCalculation,
  'quiz-cause': async () => (await import('./en/quiz-cause.ts')).quizCause,
  'quiz-conduct': async () => (await import('./en/quiz-conduct.ts')).quizConduct,
  package: async () => (await import('./en/package.ts')).packages,
  'quiz-paper': async () => (await import('./en/quiz-paper.ts')).quizPaper,
  'quiz-reading': async () => (await import('./en/quiz-reading.ts')).quizReading,
  'quiz-stem': async () => (await import('./en/quiz-stem.ts')).quizStem,
  'teach-class': async () => (await import('./en/teach-class.ts')).teachClass,
  'teach-poll': async () => (await import('./en/teach-poll.ts')).teachPoll,
  scenario: async () => (await import('./en/scenario.ts')).scenario,
  'teach-scenarios': async () => (await import('./en/teach-scenarios.ts')).teachScenarios,
  'teach-results': async () => (await import('./en/teach-results.ts')).teachResults,
  sequence: async () => (await import('./en/sequence.ts')).sequence,
  view: async () => (await import('./en/view.ts')).view,
} as const satisfies Record<string, () => Promise<Catalogue>>;

export type MessagePart = keyof typeof PARTS;

/** Fetches catalogues and makes them known; one that is known already costs nothing. */
export async function loadMessages(parts: readonly MessagePart[]): Promise<void> {
  await Promise.all(parts.map(async (part) => addMessages(await PARTS[part]())));
}
