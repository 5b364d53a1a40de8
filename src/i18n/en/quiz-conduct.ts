export const quizConduct = {} as const;
