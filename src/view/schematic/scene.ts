import type { Container } from 'pixi.js';
import type { ChannelIndex } from '../channels.ts';
import type { Palette } from '../palette.ts';
import type { Vocabulary } from '../vocabulary.ts';
import type { FrameView } from './frame-view.ts';
import type { Layout } from './layout-types.ts';
import type { Textures } from './textures.ts';

/** What every symbol is built from. */
export interface SceneContext {
  readonly layout: Layout;
  readonly palette: Palette;
  readonly channels: ChannelIndex;
  readonly vocabulary: Vocabulary;
  readonly textures: Textures;
  /** Flows of this plant against those of a burner of a few megawatts. */
  readonly flowScale: number;
  readonly fontFamily: string;
  /** Device pixels to a drawing pixel, for what is painted rather than drawn. */
  readonly resolution: number;
}

/** A piece of the drawing: built once, then shown frame by frame; it keeps what it drew last. */
export interface Drawn {
  /** What never changes: painted once with that of all other pieces. */
  readonly fixed?: Container;
  /** What the frames move, in front of everything fixed. */
  readonly node?: Container;
  show?(view: FrameView): void;
  /** Paint again at another zoom. */
  sharpen?(resolution: number): void;
}

export const OUTLINE_PX = 1.8;
export const THIN_PX = 1.3;
