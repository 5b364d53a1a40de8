export const quizStem = {} as const;
