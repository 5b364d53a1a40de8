export * from './entries.ts';
export type { QuizMeta, QuizRuleMeta } from './meta.ts';
export { quizMachine } from './quiz.ts';
export * from './state.ts';
export { createQuiz, foldQuiz, takeQuizEntry } from './take-entry.ts';
