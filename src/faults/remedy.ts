/** What ends a fault: an act of a technician on a part of the plant. */
export const REPAIR_WAYS = [
  'replace',
  'clean',
  'tighten',
  'refit',
  'free',
  'realign',
  'reset',
  'purge air',
  'remove jumper',
  'open',
  'report',
] as const;
export type RepairWay = (typeof REPAIR_WAYS)[number];

/** Acts at the plant that undo what was left or has tripped, with no tool in hand. */
export const HAND_ACTS = ['turn-cock', 'reset-limits', 'firing'] as const;
export type HandAct = (typeof HAND_ACTS)[number];

export interface Remedy {
  readonly part: string;
  readonly way: RepairWay | HandAct | 'adjust';
  /** Which dial, for 'adjust'. */
  readonly setting?: string;
}
