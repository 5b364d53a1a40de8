/** Entered by itself: what lists written items has no use for what makes and proves the others. */
export * from './written-cards.ts';
