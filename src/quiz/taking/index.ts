// A folder of its own: a page that only counts answers has no use for what makes items.
export { type GivenAnswer, QUIZ_MODES, type QuizMode } from '../item/given-answer.ts';
export { ITEM_KINDS, type ItemCard, type ItemKind } from '../item/item.ts';
export { CONFIDENCES, type Confidence, farthestOff, type Response } from '../item/response.ts';
export {
  answersInOrder,
  cardOf,
  givenAnswer,
  type JustAnswered,
  keyOfAnswer,
  mergeAnswers,
  type OfQuiz,
} from './answers.ts';
export {
  CALIBRATION_VERDICTS,
  type Calibration,
  type CalibrationRow,
  type CalibrationVerdict,
  calibrationOf,
} from './calibration.ts';
export { composeQuiz } from './compose-quiz.ts';
export { guessChance, rightChanceOf } from './guessing.ts';
export { msOfISO } from './instant.ts';
export { difficultyOf, FEWEST_LEARNERS, type LearnerAnswer } from './item-difficulty.ts';
export { type KeptAnswer, learnerAnswers, movedByLearners } from './learner-answers.ts';
export { type Moved, type MovedDifficulty, movedBy, withMoved } from './moved.ts';
export { QUIZ_SIZES, type QuizWanted } from './quiz-wanted.ts';
export { resultOfAnswer } from './result-of-answer.ts';
export {
  dueTopics,
  nextDueISO,
  type Schedule,
  type TopicMemory,
  topicMemories,
} from './schedule.ts';
export { masteryOfTopics, type TopicsOfSkill } from './topic-mastery.ts';
