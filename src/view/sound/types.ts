import type { Heard } from '../../engine/index.ts';
import type { Channel } from '../channels.ts';
import type { Message } from '../message.ts';
import type { Vocabulary } from '../vocabulary.ts';

export interface SoundOptions {
  readonly channels: readonly Channel[];
  readonly vocabulary: Vocabulary;
  readonly message: Message;
  readonly muted?: boolean;
  /** Address of a sound file; beside the page in `sounds/` where it is left out. */
  readonly urlOf?: (name: SoundName) => string;
  /** What is heard, in words: also while muted, and before any sound may be played. */
  readonly onCaption?: (caption: Caption) => void;
}

export type SoundName =
  | 'fan'
  | 'gas'
  | 'flame'
  | 'spark'
  | 'valve'
  | 'light'
  | 'alarm'
  | 'squeal'
  | 'hunting'
  | 'hiss';

export interface Caption {
  readonly code: string;
  readonly text: string;
}

export interface Sound {
  /** Call with every shown frame while the run goes on; without calls the sounds fade out. */
  showFrame(frame: Float64Array, tS: number): void;
  /**
   * Call from a press or a key: browsers let no page sound before. Fetches the player and
   * the sounds the first time.
   */
  unlock(): Promise<void>;
  /** Someone listens: signs of something wrong are sounded for a moment, also in a pause. */
  setHeard(heard: readonly Heard[]): void;
  setMuted(muted: boolean): void;
  setMessage(message: Message): void;
  destroy(): void;
}
