export const quizReading = {} as const;
