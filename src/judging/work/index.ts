export { ACTS_ON_A_VISIT } from './acts-on-a-visit.ts';
export { caseOfExercise, type ExerciseCase, soundSetup } from './exercise-case.ts';
export {
  type Exercise,
  type ExerciseSetup,
  exerciseSetup,
  MAX_RUN_S,
  MAX_VISIT_S,
  planOfExercise,
} from './exercise-setup.ts';
export { judgeClaims, standingClaims } from './judge-claims.ts';
export { judgeWork, judgeWorkAndRun } from './judge-work.ts';
export { needlessWork } from './needless-work.ts';
export { setupHash } from './setup-hash.ts';
export type * from './verdict.ts';
export { type GivenLibrary, withGiven } from './with-given.ts';
export { type WorkBench, type WorkDone, workBench } from './work-done.ts';
