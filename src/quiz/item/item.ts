/** A quiz item: a question with its evidence, its answer and the reasons. Plain data, without words. */
import type { Skill } from '../../../machines/job/index.ts';
import type { Told } from '../../diagnosis/index.ts';
import type { FaultOrder, TimedAction } from '../../engine/index.ts';
import type { QuantityKind } from '../../quantity/index.ts';
import type { Statement } from './statement.ts';

export const ITEM_KINDS = [
  /** What is the cause, by start chart and readings. */
  'cause',
  /** The same, answered on the drawing of the plant. */
  'where',
  /** What to read next. */
  'next check',
  /** Which reading rules one cause out. */
  'ruled out',
  /** What the sequence does next. */
  'what follows',
  'order',
  'calculation',
  'conduct',
] as const;
export type ItemKind = (typeof ITEM_KINDS)[number];

/** The run that an item is about, as what differs from the plant's own sound start. */
export interface ItemRun {
  readonly plant: string;
  /** Of `withTolerances`; 0 is the plant as its file has it. */
  readonly tolerances: number;
  readonly faults: readonly FaultOrder[];
  /** Beside the call for heat of the script. */
  readonly actions: readonly TimedAction[];
  /** The record ends here, s. */
  readonly untilS: number;
}

export interface Stem {
  /** The situation, a sentence each; then the question alone in `asks`. */
  readonly tells: readonly Statement[];
  readonly asks: Statement;
  /** Readings that the answer rests on, beside what the start told. */
  readonly readings: readonly Told[];
  /** What the record of the start shows: start chart, quantities as trends. */
  readonly shows: { readonly chart: boolean; readonly trends: readonly string[] };
}

export interface Option {
  readonly says: Statement;
  /** What rules it in or out. */
  readonly why: readonly Statement[];
  /** Its share of the belief with all evidence; null where it is no cause. */
  readonly share: number | null;
  /** The reading that decides about it; null where no reading does. */
  readonly decidedBy: Told | null;
  /** When that shows on the record, s; null where nothing can be replayed. */
  readonly atS: number | null;
  /** Where the option is itself acted out: the run with it, in place of the item's own. */
  readonly run?: ItemRun;
}

interface ItemBase {
  /** `kind/plant/seed`, the kind with dashes; `written/file` for one that an author wrote. */
  readonly id: string;
  readonly kind: ItemKind;
  /** Empty where it is about no plant. */
  readonly plant: string;
  /** What it is about, for coming back: items of one topic ask for the same thing. */
  readonly topic: string;
  readonly skills: readonly Skill[];
  /** At first, log-odds on the scale of ratings. */
  readonly difficulty: number;
  readonly stem: Stem;
  readonly run: ItemRun | null;
  /** Stands with the question and with its reasons where the real act can hurt someone. */
  readonly caution: Statement | null;
}

export interface ChoiceItem extends ItemBase {
  readonly answer: 'choice';
  readonly options: readonly Option[];
  /** Place of the right one. */
  readonly key: number;
}
/** Options are things of the drawing. */
export interface SpotItem extends ItemBase {
  readonly answer: 'spot';
  readonly options: readonly (Option & {
    /** Id of the item of the schematic. */
    readonly spot: string;
  })[];
  readonly key: number;
}
export interface OrderItem extends ItemBase {
  readonly answer: 'order';
  /** As they are shown. */
  readonly steps: readonly Option[];
  /** Places in `steps`, in the right order. */
  readonly key: readonly number[];
}
export interface NumberItem extends ItemBase {
  readonly answer: 'number';
  /** SI. */
  readonly key: number;
  /** How far off still counts as right, as a share of the key. */
  readonly tolerance: number;
  /** The least that counts as near enough, SI: for a key that may be zero. */
  readonly toleranceAbs?: number;
  /** How it is shown and asked for: unit and digits. */
  readonly of: QuantityKind;
  /** From the plant's own numbers, a line each. */
  readonly working: readonly Statement[];
  /** What well-known slips make of it, each too far off to count as right. */
  readonly mistakes?: readonly Mistake[];
}
export interface Mistake {
  /** SI. */
  readonly value: number;
  readonly why: Statement;
}
export type Item = ChoiceItem | SpotItem | OrderItem | NumberItem;

/** What is known of an item before it is made: a line of the bank. */
export interface ItemCard {
  readonly id: string;
  readonly kind: ItemKind;
  readonly plant: string;
  readonly topic: string;
  readonly skills: readonly Skill[];
  readonly difficulty: number;
  /** Place of the key among the options; null where there are none. */
  readonly place: number | null;
}
