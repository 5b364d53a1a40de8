import { atRandom } from './at-random.ts';
import { fixedOrder } from './fixed-order.ts';
import { greedy } from './greedy.ts';
import { ideal } from './ideal.ts';
import type { Learner } from './learner.ts';
import { partSwapper } from './part-swapper.ts';

/** The best first. */
export const LEARNERS: readonly Learner[] = [ideal, greedy, fixedOrder, atRandom, partSwapper];
