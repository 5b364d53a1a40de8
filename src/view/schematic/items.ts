import type { Message } from '../message.ts';
import { fullName, testPointName } from './item-names.ts';
import type { LabelSpec } from './labels.ts';
import { contains, type Layout, type PlacedSymbol, type Point, type Rect } from './layout-types.ts';
import type { SchematicPlant } from './plant.ts';
import type { ListedItem } from './types.ts';

/** A thing of the drawing that can be picked, listed and looked at closely. */
export interface SchematicItem {
  readonly id: string;
  readonly kind: PlacedSymbol['kind'];
  readonly name: string;
  /** Message code of what it is for. */
  readonly note: string;
  /** The label that says how it stands. */
  readonly labelId: string;
  readonly box: Rect;
  /** Where a finger may come down: at least HIT_PX either way. */
  readonly hit: Rect;
}

/** WCAG 2.2 target size (enhanced). */
export const HIT_PX = 44;
const LABEL_OF: Readonly<Record<string, string>> = {
  burner: 'spark',
  vessel: 'steam',
  'level-gauge': 'level',
  servo: 'damper',
  thermometer: 'steam',
  pump: 'return',
};
const TEST_POINT = 'test-point:';

export function itemsOf(plant: SchematicPlant, layout: Layout, message: Message): SchematicItem[] {
  const kinds = new Map(plant.gasTrain.edges.map((edge) => [edge.id, edge.kind]));
  return layout.symbols.map((symbol) => ({
    id: symbol.id,
    kind: symbol.kind,
    name: symbol.id.startsWith(TEST_POINT)
      ? testPointName(symbol.id.slice(TEST_POINT.length), message)
      : fullName(nameIdOf(symbol.id, plant), kinds.get(symbol.id) ?? null, message, {
          kind: plant.sensorKind,
        }),
    note: `view.close-up.${noteIdOf(symbol, plant)}`,
    labelId: LABEL_OF[symbol.id] ?? symbol.id,
    box: symbol.box,
    hit: grown(symbol.box),
  }));
}

function nameIdOf(id: string, plant: SchematicPlant): string {
  return id === 'burner' && !plant.hasPilot ? 'burner-direct' : id;
}

/** A thing of one kind may be for something else on another plant. */
function noteIdOf(symbol: PlacedSymbol, plant: SchematicPlant): string {
  const { kind } = symbol;
  if (kind === 'burner' && !plant.hasPilot) return 'burner-direct';
  if (kind === 'shutoff' && symbol.normallyOpen === true) return 'shutoff-normally-open';
  if (kind === 'flame-sensor' && plant.sensorKind === 'ionisation') return 'flame-rod';
  if ((kind === 'control' || kind === 'damper') && plant.hasOneServo === true) {
    return `${kind}-linked`;
  }
  if (kind === 'vessel') return VESSEL_NOTES[plant.vesselKind];
  return kind;
}
const VESSEL_NOTES = {
  'water-tube': 'vessel',
  'fire-tube': 'vessel-shell',
  'hot water': 'vessel-hot-water',
} as const;

/** The smallest item under a point: a test point before the pipe's valve, a valve before the furnace. */
export function itemAt(items: readonly SchematicItem[], at: Point): SchematicItem | null {
  let best: SchematicItem | null = null;
  let bestScore = Number.POSITIVE_INFINITY;
  for (const item of items) {
    const { hit, box } = item;
    if (!contains(hit, at)) continue;
    const score =
      Math.hypot(at.x - box.x - box.width / 2, at.y - box.y - box.height / 2) +
      Math.max(box.width, box.height) / 2;
    if (score < bestScore) {
      bestScore = score;
      best = item;
    }
  }
  return best;
}

function grown(box: Rect): Rect {
  const width = Math.max(HIT_PX, box.width);
  const height = Math.max(HIT_PX, box.height);
  return {
    x: box.x - (width - box.width) / 2,
    y: box.y - (height - box.height) / 2,
    width,
    height,
  };
}

/** The items with how they stand, for a list beside the drawing. */
export function listItems(
  items: readonly SchematicItem[],
  specs: ReadonlyMap<string, LabelSpec>,
  values: Float64Array,
  message: Message,
): ListedItem[] {
  return items.map((item) => ({
    id: item.id,
    name: item.name,
    reading: (specs.get(item.labelId)?.lines ?? [])
      .filter((line) => line.fixed !== true)
      .map((line) =>
        line
          .read(values)
          .map((run) => (run.tick ? `${run.text}, ${message('view.proved')}` : run.text))
          .join(''),
      )
      .filter((text) => text !== '')
      .join(', '),
  }));
}
