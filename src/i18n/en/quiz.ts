export const quiz = {
  /** What an author wrote, as it stands. */
  'quiz.as-written': '{text}',
} as const;
