// Beside the ratings it feeds: a page that keeps results has no use for the rest of the scoring.
export { outcomeOf } from '../score/outcome.ts';
export * from './difficulty.ts';
export type { Exercise } from './fading.ts';
export * from './mastery-word.ts';
export * from './next-to-practise.ts';
export * from './rating.ts';
export * from './results.ts';
export { SKILL_ORDER } from './skill-order.ts';
