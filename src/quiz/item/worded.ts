/** An item as strings, in one language and one system of units: what leaves the program, and what is linted. */
import type { ItemKind } from './item.ts';

export interface WordedOption {
  readonly text: string;
  /** What rules it in or out, a sentence each. */
  readonly why: readonly string[];
}

interface WordedBase {
  readonly id: string;
  readonly kind: ItemKind;
  readonly topic: string;
  readonly caution: string | null;
  /** The situation, a sentence each. */
  readonly tells: readonly string[];
  /** The start as lines of time and event; empty where the item shows none. */
  readonly start: readonly string[];
  /** What was read, a line each. */
  readonly readings: readonly string[];
  readonly asks: string;
}

/** One of several: on the drawing or in a list. */
export interface WordedChoice extends WordedBase {
  readonly answer: 'choice' | 'spot';
  readonly options: readonly WordedOption[];
  /** Place of the right one. */
  readonly key: number;
}
export interface WordedOrder extends WordedBase {
  readonly answer: 'order';
  /** As they are shown. */
  readonly steps: readonly WordedOption[];
  /** Places in `steps`, in the right order. */
  readonly key: readonly number[];
}
export interface WordedNumber extends WordedBase {
  readonly answer: 'number';
  /** In `unit`, unrounded. */
  readonly key: number;
  /** Least and greatest that count as right, in `unit`. */
  readonly from: number;
  readonly to: number;
  /** Symbol; empty where it is a bare number. */
  readonly unit: string;
  /** The key as it is shown, with its unit. */
  readonly said: string;
  readonly working: readonly string[];
  /** What well-known slips make of it. */
  readonly mistakes: readonly { readonly said: string; readonly why: string }[];
}
export type WordedItem = WordedChoice | WordedOrder | WordedNumber;
