import type { ItemKind, Wanted } from '../../quiz/index.ts';

/** Of each kind, how many items a plant gives to the bank that is shipped. */
export const WANTED: Readonly<Record<ItemKind, Wanted>> = {
  cause: { items: 40, seeds: 600, ofTopic: 3 },
  where: { items: 24, seeds: 500, ofTopic: 3 },
  'next check': { items: 24, seeds: 500, ofTopic: 3 },
  'ruled out': { items: 28, seeds: 500, ofTopic: 3 },
  'what follows': { items: 20, seeds: 400, ofTopic: 4 },
  order: { items: 12, seeds: 200, ofTopic: 6 },
  calculation: { items: 40, seeds: 400, ofTopic: 10 },
  conduct: { items: 24, seeds: 400, ofTopic: 3 },
};
