import type { LookReading } from '../../engine/index.ts';
import type { Message } from '../message.ts';

/** What a drawing is made from: what eyes found, and the few words that stand in it. */
export interface Sight {
  readonly reading: LookReading;
  readonly message: Message;
}

/** The inside of an `svg` of WIDTH by HEIGHT. */
export type Drawer = (sight: Sight) => string;

export interface CloseUpOptions {
  readonly message: Message;
  /** The name of the place, and all that is seen in words: what a screen reader is told. */
  readonly title: (reading: LookReading) => string;
  readonly words: (reading: LookReading) => readonly string[];
  /** Nothing turns or flickers. */
  readonly still?: boolean;
}

export interface CloseUpDrawing {
  show(reading: LookReading): void;
  setStill(still: boolean): void;
  destroy(): void;
}
