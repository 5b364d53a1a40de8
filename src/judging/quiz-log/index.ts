// By itself: a page that keeps a quiz under way has no use for what makes items.
export * from './quiz-entry-schema.ts';
