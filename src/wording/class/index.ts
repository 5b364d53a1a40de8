// By itself: it brings the checks of what a class keeps, which no other page has a use for.
export * from './class-result-words.ts';
