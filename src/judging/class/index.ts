// By itself: who puts results together need not be able to judge.
export * from './class-judged.ts';
