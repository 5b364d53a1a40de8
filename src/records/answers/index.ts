/** Answers as a device keeps them and a file carries them. Entered by itself: reading them needs nothing else of what leaves. */
export * from './answer-schema.ts';
export * from './quiz-record.ts';
