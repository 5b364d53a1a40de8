export const quizCause = {} as const;
