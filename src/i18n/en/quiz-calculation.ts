export const quizCalculation = {} as const;
