import type { ItemRun } from '../../quiz/index.ts';

/** What is looked at on a record: the moment, and what it is looked at for. */
export interface LookedAt {
  readonly run: ItemRun;
  readonly atS: number;
  readonly what: string;
}
