import type { ToolId } from '../../../machines/job/index.ts';
import type { LookWhat, Run } from '../../engine/index.ts';
import type { QuantityKind } from '../../quantity/index.ts';
import type { Message } from '../message.ts';

export interface Tool {
  readonly id: ToolId;
  readonly name: Message;
  readonly measures: Message;
  /** What can be set on it, the one it comes out of the bag with first; none where there is nothing to set. */
  readonly ranges: readonly ToolRange[];
  /** Whether it takes a second place: a second hose, a second lead. */
  readonly other: 'never' | 'may' | 'must';
  readonly minutesToConnect: number;
  /** Said wherever the tool is offered, because the real act can hurt. */
  readonly caution: Message | null;
}
export interface ToolRange {
  readonly id: string;
  readonly name: Message;
}

/** A tool at its place. `range` left out: the first of its ranges. */
export interface ToolUse {
  readonly tool: ToolId;
  readonly place: string;
  readonly other?: string;
  readonly range?: string;
}

/** A place where tools connect. Its `id` is what a use names as `place` or `other`. */
export interface TestPoint {
  readonly id: string;
  readonly tools: readonly ToolId[];
  readonly label: Message;
  /** The item of the schematic beside which it lies, or where on the ladder. */
  readonly where: PointPlace;
}
export type PointPlace =
  | { readonly item: string }
  | { readonly wire: string }
  | { readonly terminal: string; readonly wire: string };

/** Why a tool cannot be used like that, and what to do instead. */
export interface ToolIssue {
  readonly code: 'unknown-tool' | 'unknown-place' | 'wrong-place' | 'unknown-range' | 'other-place';
  readonly place: string;
  readonly found: Message;
  readonly mend: Message;
}

/** What a tool may know of a run: its visible channels, its wires by a meter, eyes. */
export type ToolRun = Pick<
  Run,
  | 'setup'
  | 'channels'
  | 'frame'
  | 'frameCount'
  | 'firstFrame'
  | 'frameS'
  | 'timeS'
  | 'meter'
  | 'look'
>;

export const TOOL_FLAGS = [
  'over range',
  'overloaded',
  'live circuit',
  'probe too short',
  'settling',
  'no signal',
  'no pressure',
  'needs zero',
  'condensate',
] as const;
export type ToolFlag = (typeof TOOL_FLAGS)[number];

/** One number of a display. */
export interface ReadingLine {
  readonly what: Message;
  /** SI where `kind` is given, else in `unit`; null where there is nothing or too much to show. */
  readonly value: number | null;
  /** How a page may put it into the units of the reader. */
  readonly kind: QuantityKind | null;
  /** As it stands on the display. */
  readonly unit: string;
  /** The display's digits at the tool's resolution; empty when it shows none. */
  readonly shown: string;
}

export interface ToolReading extends Omit<ReadingLine, 'what'> {
  readonly flags: readonly ToolFlag[];
  /** Settled: the display has stood still. */
  readonly steady: boolean;
  readonly warn?: Message;
  /** What else the display says beside the digits: alternating or direct, bubbles. */
  readonly note?: Message;
  /** Further numbers of the same display. */
  readonly lines?: readonly ReadingLine[];
  /** What eyes see through it. */
  readonly words?: readonly Message[];
}

/**
 * What a connected tool keeps between readings: the next frame to take and its filters. Plain
 * data; a reading changes it in place.
 */
export interface ToolState {
  readonly use: ToolUse;
  /** When it was connected, s. */
  readonly sinceS: number;
  next: number;
  /** Places of its channels in a frame; null until the first reading. */
  channels: readonly number[] | null;
  readonly followers: Follower[];
  /** Frames counted for a purpose of the tool's own: wet gas, frames since a contact moved. */
  count: number;
  /** Too much was put on it; stays so until it is connected anew. */
  overloaded: boolean;
  words: number[];
}

/** A first-order lag and whether what comes out of it stands still. */
export interface Follower {
  value: number;
  began: boolean;
  /** Extremes since it was connected. */
  least: number;
  most: number;
  /** The value from which stillness is counted, and for how many frames it has not been left. */
  reference: number;
  stillFrames: number;
}

export type { LookWhat, ToolId };
