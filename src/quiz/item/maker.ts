/** How items of one kind are made: from a plant and a seed, the same everywhere. */
import type { Atlas, Plan, Question } from '../../diagnosis/index.ts';
import type { RunSetup } from '../../engine/index.ts';
import type { Item, ItemKind } from './item.ts';

/** A plant with what is known of it, made ready once and asked for many seeds. */
export interface QuizPlant {
  readonly id: string;
  /** A start with nothing wrong. */
  readonly sound: RunSetup;
  readonly plan: Plan;
  readonly atlas: Atlas;
  /** Each check in each situation, a whole start being one. */
  readonly questions: readonly Question[];
}

/** Why a seed gave no item. */
export const REJECTIONS = [
  'nothing goes wrong',
  'key not proved',
  'distractor not ruled out',
  'no reading rules it out',
  'too few neighbours',
  'options alike',
  'not worth asking',
  'too long to answer',
  'differs by tolerance',
  'lint',
  'seen before',
  'place taken',
] as const;
export type Rejection = (typeof REJECTIONS)[number];

export type Made =
  | { readonly ok: true; readonly item: Item }
  | { readonly ok: false; readonly why: Rejection };

export interface ItemMaker {
  readonly kind: ItemKind;
  /** Never throws for a whole seed of 0 to 2³¹ − 1; most seeds of a kind may be rejected. */
  make(plant: QuizPlant, seed: number): Made;
}
