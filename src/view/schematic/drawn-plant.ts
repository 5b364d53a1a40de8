import type { Palette } from '../palette.ts';
import { eyesLabels } from './eyes.ts';
import { createItemTags, type ItemTags } from './item-tags.ts';
import { itemsOf, type SchematicItem } from './items.ts';
import { labelSize } from './label-size.ts';
import { type LabelSpec, labelsOf } from './labels.ts';
import { layoutOf } from './layout.ts';
import type { Layout, Size } from './layout-types.ts';
import { measuresFor } from './measures.ts';
import type { SchematicPlant } from './plant.ts';
import type { SceneContext } from './scene.ts';
import { buildStage, type Stage } from './stage.ts';
import type { Textures } from './textures.ts';
import type { Words } from './words.ts';

/** The plant set out at one size, in one theme and in some words. */
export interface DrawnPlant {
  readonly context: SceneContext;
  readonly stage: Stage;
  readonly items: readonly SchematicItem[];
  readonly labels: ReadonlyMap<string, LabelSpec>;
  /** What lies beside the items. */
  readonly tags: ItemTags;
}

interface DrawnAs {
  readonly size: Size;
  readonly words: Words;
  readonly palette: Palette;
  readonly textures: Textures;
  readonly fontFamily: string;
  /** Device pixels to a drawing pixel. */
  readonly resolution: number;
  /** False: only what eyes have from where they stand. */
  readonly inside: boolean;
  readonly teaching: boolean;
}

/** Gas of the burner that the marks' full speeds were chosen for. */
const RATED_GAS_KG_S = 0.12;

export function drawPlant(plant: SchematicPlant, as: DrawnAs): DrawnPlant {
  const { words, inside } = as;
  const teaching = inside && as.teaching;
  const made = labelsOf(plant, words, teaching);
  const labels = inside ? made : eyesLabels(made, plant, words);
  const m = measuresFor(as.size);
  const layout = layoutOf(plant, m, (id) => labelSize(labels.get(id), m.fontPx, m.lineHeightPx));
  const context: SceneContext = {
    layout: inside ? layout : forEyes(layout),
    palette: as.palette,
    channels: words.channels,
    vocabulary: words.vocabulary,
    textures: as.textures,
    flowScale: (plant.ratedGasKgS ?? RATED_GAS_KG_S) / RATED_GAS_KG_S,
    fontFamily: as.fontFamily,
    resolution: as.resolution,
  };
  const stage = buildStage(plant, labels, context, teaching);
  const items = itemsOf(plant, layout, words.message);
  const tags = createItemTags(items, context);
  stage.world.addChild(tags.node);
  return { context, stage, items, labels, tags };
}

export function findItem(drawn: DrawnPlant, id: string | null): SchematicItem | null {
  return drawn.items.find((item) => item.id === id) ?? null;
}

/** Without legend, and without lines to readings that only an instrument has. */
function forEyes(layout: Layout): Layout {
  return { ...layout, legend: [], leaders: layout.leaders.filter(({ dashed }) => dashed) };
}
