// By itself: it brings all that makes items.
export { itemMaker } from './item-maker.ts';
export * from './judge-quiz.ts';
