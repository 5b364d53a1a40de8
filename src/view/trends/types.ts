import type { Display } from '../../quantity/index.ts';
import type { Channel } from '../channels.ts';
import type { Message } from '../message.ts';
import type { Theme } from '../palette.ts';

export interface TrendsOptions {
  /** Everything that may be drawn; the drawer asks only for what is in `setQuantities`. */
  readonly channels: readonly Channel[];
  /** A channel's name in the reader's words. */
  readonly nameOf: (channelId: string) => string;
  readonly message: Message;
  /** How a channel's SI values are shown; metric units of the trade where it is left out. */
  readonly displayOf?: (channelId: string) => Display;
  readonly theme?: Theme;
  readonly fontFamily?: string;
  readonly frameS?: number;
  /** The pointer rests on a moment of the trends; null when it has left. */
  readonly onMoment?: (tS: number | null) => void;
}

export interface Trends {
  /** Which quantities are drawn, in this order; those of one unit share an axis. */
  setQuantities(channelIds: readonly string[]): void;
  /** As for the start chart: a `t0S` before the end replaces what was there. */
  append(frames: readonly Float64Array[], t0S: number): void;
  clear(): void;
  /** A line at the run's present or at the moment looked back to. */
  showNow(tS: number): void;
  /** Zoom to a stretch of time; null shows all of the run and follows it. */
  zoomTo(range: { readonly fromS: number; readonly toS: number } | null): void;
  /** Zoom about the middle of what is seen: above 1 closer. */
  zoomBy(factor: number): void;
  panBy(seconds: number): void;
  resize(): void;
  setTheme(theme: Theme): void;
  setWords(words: {
    readonly message?: Message;
    readonly nameOf?: (channelId: string) => string;
    readonly displayOf?: (channelId: string) => Display;
  }): void;
  destroy(): void;
}
