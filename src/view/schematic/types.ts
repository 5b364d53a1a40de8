import type { LookWhat } from '../../engine/index.ts';
import type { Message, Reading } from '../message.ts';
import type { Theme } from '../palette.ts';
import type { Vocabulary } from '../vocabulary.ts';
import type { RendererKind } from './renderer-choice.ts';
import type { TimingRing } from './timing-ring.ts';

export interface SchematicOptions {
  readonly message: Message;
  readonly vocabulary: Vocabulary;
  /** How readings are written; SI with trade prefixes where it is left out. */
  readonly reading?: Reading;
  readonly theme?: Theme;
  readonly reducedMotion?: boolean;
  /** Shows what only the simulator knows: unburnt gas in the furnace. */
  readonly teaching?: boolean;
  /** False: only what eyes have from where they stand; nothing flows, no instrument is read. True if left out. */
  readonly inside?: boolean;
  /** What can be looked at on this plant, offered beside the item it belongs to. */
  readonly looks?: readonly { readonly what: LookWhat; readonly label: string }[];
  readonly onLook?: (what: LookWhat) => void;
  /** Where tools connect, by the item they lie beside. */
  readonly points?: readonly SchematicPoint[];
  readonly onTestPoint?: (id: string) => void;
  /** CSS font stack; the drawing is laid out for IBM Plex Sans. */
  readonly fontFamily?: string;
  /** 'auto' takes WebGL only where a real GPU draws it. */
  readonly renderer?: RendererKind | 'auto';
}

export interface SchematicPoint {
  readonly id: string;
  readonly item: string;
  readonly label: string;
}

/** A few words that lie beside an item: what a tool reads there. */
export interface ItemTag {
  readonly item: string;
  readonly text: string;
}

/** An item as a list for a screen reader has it. */
export interface ListedItem {
  readonly id: string;
  readonly name: string;
  /** How it stands in the frame shown last, with units; empty for a thing without a reading. */
  readonly reading: string;
}

export interface Schematic {
  /**
   * Draw the moment `blend` (0…1) of the way from one frame to the next.
   * @param nowMs the run's own time, ms: what turns and flows moves on by it, so that it stands
   *   still in a pause, and never faster than the eye can follow at a high playback speed
   */
  showFrame(previous: Float64Array, next: Float64Array, blend: number, nowMs: number): void;
  /** Set out anew for the host's size; call when it changed. */
  resize(): void;
  setTheme(theme: Theme): void;
  setReducedMotion(reduced: boolean): void;
  setTeaching(teaching: boolean): void;
  /** Other units or another language. */
  setWords(words: { readonly message?: Message; readonly reading?: Reading }): void;
  /** Look closely at an item; null shows the whole plant again. */
  focusOn(itemId: string | null): void;
  /** Draw a ring round an item, as when its line in the list has the focus. */
  highlight(itemId: string | null): void;
  /** What lies beside the items until it is set anew. */
  setTags(tags: readonly ItemTag[]): void;
  zoomBy(factor: number): void;
  items(): readonly ListedItem[];
  /** An item was pressed or tapped; null when the close-up was left. */
  onPick(callback: (itemId: string | null) => void): void;
  readonly renderer: RendererKind;
  /** Scripting cost of the last calls of `showFrame`, ms. */
  readonly timing: TimingRing;
  destroy(): void;
}
