/** What comes of finished work: judged by the page that it was done in, and again by a server. */
export {
  type CheckedWork,
  checkWork,
  type HandedIn,
  type Refused,
  WORK_REFUSALS,
  type WorkRefusal,
} from './check-work.ts';
export * from './class/index.ts';
export * from './logs/index.ts';
export * from './quiz/index.ts';
export * from './quiz-log/index.ts';
export * from './ready-exercise.ts';
export * from './reasoning/index.ts';
export * from './results/index.ts';
export * from './work/index.ts';
