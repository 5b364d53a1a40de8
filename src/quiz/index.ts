export type { GivenAnswer, QuizMode } from './item/given-answer.ts';
export { QUIZ_MODES } from './item/given-answer.ts';
export * from './item/item.ts';
export { itemId, type MadeId, readItemId } from './item/item-id.ts';
export {
  type ItemMaker,
  type Made,
  type QuizPlant,
  REJECTIONS,
  type Rejection,
} from './item/maker.ts';
export { CONFIDENCES, type Confidence, isRight, type Response } from './item/response.ts';
export { setupOfRun } from './item/setup-of-run.ts';
export type { Statement, Term } from './item/statement.ts';
