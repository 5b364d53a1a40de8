export { type Answer, answerWords, type Names } from './answer-words.ts';
export { channelName } from './channel-name.ts';
export * from './check-words.ts';
export { quizPackageWords } from './package-words.ts';
export * from './paper/index.ts';
export * from './plain-words.ts';
export * from './quantity-text.ts';
export * from './quiz/index.ts';
