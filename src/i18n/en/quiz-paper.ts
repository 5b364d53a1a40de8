export const quizPaper = {} as const;
