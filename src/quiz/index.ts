export { type BankLine, type Gathered, gather, type Wanted } from './bank/gather.ts';
export { sameItemName } from './bank/same-item.ts';
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
export {
  CONFIDENCES,
  type Confidence,
  farthestOff,
  isRight,
  type Response,
} from './item/response.ts';
export { setupOfRun } from './item/setup-of-run.ts';
export type { Statement, Term } from './item/statement.ts';
export type {
  WordedChoice,
  WordedItem,
  WordedNumber,
  WordedOption,
  WordedOrder,
} from './item/worded.ts';
export { MAKERS } from './kinds/makers.ts';
export { LINT_RULES, type LintFinding, type LintRule } from './lint/finding.ts';
export { keyPlacesBalanced } from './lint/key-places.ts';
export { type LintOptions, lintItem } from './lint/lint-item.ts';
export { type LintVocabulary, lintWords } from './lint/lint-words.ts';
export { makeItem, quizPlantOf } from './make-item.ts';
export {
  type AskedHere,
  NOT_ASKED,
  type NotAsked,
  whatFollowsHere,
} from './moment/what-follows-here.ts';
export * from './taking/index.ts';
export { WRITTEN_TROUBLES, type WrittenTrouble } from './written/prove-written.ts';
export * from './written/written-cards.ts';
export { type WrittenMade, writtenItem } from './written/written-item.ts';
