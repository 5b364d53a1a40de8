import type { RandomState } from '../../numeric/index.ts';
import type { Ask } from '../author/asks.ts';
import type { Case } from '../score/case.ts';
import type { Decision } from '../score/decision.ts';
import type { View } from '../score/view-of-knowing.ts';

/** Someone who goes about finding a cause in one way. */
export interface Learner {
  readonly name: string;
  /** Whether its seed changes what it does. */
  readonly byChance: boolean;
  goThrough(theCase: Case, chance: RandomState): readonly Decision[];
}

/** Which check next; null: it has seen enough. */
export type NextCheck = (view: View, open: readonly Ask[]) => Ask | null;
