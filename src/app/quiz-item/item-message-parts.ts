/** What the words of an item are made of. */
export const ITEM_MESSAGE_PARTS = [
  'app',
  'sequence',
  'view',
  'bench',
  'conduct',
  'guidance',
  'job',
  'learner',
  'quiz',
  'quiz-calculation',
  'quiz-cause',
  'quiz-conduct',
  'quiz-reading',
  'quiz-stem',
] as const;
