import type { Channel } from '../channels.ts';
import type { Message, Reading } from '../message.ts';
import type { Theme } from '../palette.ts';
import type { Vocabulary } from '../vocabulary.ts';
import type { LanePlant } from './lane-plant.ts';

export interface StartChartOptions {
  readonly channels: readonly Channel[];
  readonly plant: LanePlant;
  readonly vocabulary: Vocabulary;
  readonly message: Message;
  readonly reading?: Reading;
  /** A step's name in the reader's words; the vocabulary's own word where it is left out. */
  readonly stepName?: (step: string) => string;
  readonly theme?: Theme;
  readonly fontFamily?: string;
  /** Time between frames, s. */
  readonly frameS?: number;
  /**
   * The cursor was moved, by pointer, touch or key.
   * @param settled false while a finger or button is still down
   */
  readonly onScrub?: (tS: number, settled: boolean) => void;
  /** Where time stands on the page, for what is drawn above the chart: told whenever it moves. */
  readonly onScale?: (scale: ChartScale) => void;
}

/** Time 0 stands `leftPx` from the left edge of the host. */
export interface ChartScale {
  readonly leftPx: number;
  readonly pxPerS: number;
}

export interface StartChart {
  /**
   * Take in what was recorded: frame i stands at `t0S + i · frameS`. A `t0S` before the end
   * replaces everything from there on, as when a run goes on from a moment in its past. The
   * first call may begin anywhere; after it a gap is a mistake of the caller and throws.
   */
  append(frames: readonly Float64Array[], t0S: number): void;
  /** Forget the run; what is expected stays. */
  clear(): void;
  /** The healthy run of the same plant, frame i at `i · frameS`; null takes the band away. */
  setExpected(frames: readonly Float64Array[] | null): void;
  /** The run's present. Without a cursor of its own the chart reads out this moment. */
  showNow(tS: number): void;
  /** Where the reader looks; null follows the present. */
  setCursor(tS: number | null): void;
  resize(): void;
  setTheme(theme: Theme): void;
  setWords(words: {
    readonly message?: Message;
    readonly reading?: Reading;
    readonly stepName?: (step: string) => string;
  }): void;
  destroy(): void;
}
