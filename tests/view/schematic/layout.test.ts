import { describe, expect, it } from 'vitest';
import { message } from '../../../src/i18n/index.ts';
import { indexChannels } from '../../../src/view/channels.ts';
import { siReading } from '../../../src/view/reading.ts';
import { labelSize } from '../../../src/view/schematic/label-size.ts';
import { labelsOf } from '../../../src/view/schematic/labels.ts';
import { layoutOf } from '../../../src/view/schematic/layout.ts';
import {
  intersects,
  type Layout,
  type PlacedSymbol,
  type Rect,
} from '../../../src/view/schematic/layout-types.ts';
import { measuresFor } from '../../../src/view/schematic/measures.ts';
import type { SchematicPlant } from '../../../src/view/schematic/plant.ts';
import { channels, vocabulary } from '../frames.ts';
import { dairy, fireTube, hotWater } from '../plants.ts';

/** The schematic's room on the pages of 6-look, and what the page really leaves it. */
const SIZES = [
  { width: 1010, height: 470 },
  { width: 982, height: 416 },
  { width: 1500, height: 750 },
  { width: 1472, height: 668 },
  { width: 820, height: 420 },
  { width: 820, height: 480 },
];
const words = { message, reading: siReading, channels: indexChannels(channels), vocabulary };

function laidOut(plant: SchematicPlant, size: { width: number; height: number }): Layout {
  const m = measuresFor(size);
  const specs = labelsOf(plant, words, true);
  return layoutOf(plant, m, (id) => labelSize(specs.get(id), m.fontPx, m.lineHeightPx));
}

/** Labels that are meant to stand inside a symbol. */
const INSIDE: Readonly<Record<string, string>> = {
  furnace: 'furnace',
  teaching: 'furnace',
  drive: 'drive',
};
/** Areas that hold other things, rather than things that labels must keep clear of. */
const AREAS = new Set(['furnace']);

function pipeBoxes(layout: Layout): { id: string; box: Rect }[] {
  return layout.pipes.flatMap((pipe) =>
    pipe.points.slice(1).map((to, i) => {
      const from = pipe.points[i];
      const half = pipe.widthPx / 2;
      return {
        id: pipe.id,
        box: {
          x: Math.min(from.x, to.x) - half,
          y: Math.min(from.y, to.y) - half,
          width: Math.abs(to.x - from.x) + pipe.widthPx,
          height: Math.abs(to.y - from.y) + pipe.widthPx,
        },
      };
    }),
  );
}

describe.each([
  ['dairy', dairy],
  ['fire-tube, fixed-speed fan', fireTube],
  ['hot water, no vent, no pilot', hotWater],
])('the drawing of a plant: %s', (_title, plant) => {
  describe.each(SIZES)('at $width × $height', (size) => {
    const layout = laidOut(plant, size);
    const labels = layout.labels;

    it('no two labels touch', () => {
      const touching = labels.flatMap((a, i) =>
        labels
          .slice(i + 1)
          .filter((b) => intersects(a.box, b.box))
          .map((b) => `${a.id} / ${b.id}`),
      );
      expect(touching).toEqual([]);
    });

    it('no label lies on a symbol that is not its own', () => {
      const own = (symbol: PlacedSymbol, labelId: string): boolean =>
        AREAS.has(symbol.kind) || INSIDE[labelId] === symbol.id;
      const covered = labels.flatMap((label) =>
        layout.symbols
          .filter((symbol) => !own(symbol, label.id) && intersects(label.box, symbol.box, 1))
          .map((symbol) => `${label.id} on ${symbol.id}`),
      );
      expect(covered).toEqual([]);
    });

    it('labels in the furnace are inside it, all others outside', () => {
      for (const label of labels) {
        const inside = INSIDE[label.id] === 'furnace';
        expect([label.id, intersects(label.box, layout.furnace, 1)]).toEqual([label.id, inside]);
      }
    });

    it('no label lies on a pipe', () => {
      const covered = labels.flatMap((label) =>
        pipeBoxes(layout)
          .filter(({ box }) => intersects(label.box, box, 1))
          .map(({ id }) => `${label.id} on ${id}`),
      );
      expect(covered).toEqual([]);
    });

    it('a reading on a leader stands over its own test point', () => {
      for (const leader of layout.leaders.filter(({ dashed }) => !dashed)) {
        const [{ x }] = leader.points;
        const point = layout.symbols.find(
          (symbol) => symbol.kind === 'test-point' && Math.abs(symbol.x - x) < 0.01,
        );
        const label = labels.find(({ id }) => id === point?.id);
        expect(label?.box.x ?? Number.NaN).toBeLessThanOrEqual(x);
        expect((label?.box.x ?? Number.NaN) + (label?.box.width ?? 0)).toBeGreaterThanOrEqual(x);
      }
    });

    it('everything is inside the picture', () => {
      const boxes = [...labels, ...layout.symbols].map(({ id, box }) => ({ id, box }));
      const beyond = boxes.filter(
        ({ box }) =>
          box.x < 0 ||
          box.y < 0 ||
          box.x + box.width > size.width ||
          box.y + box.height > size.height,
      );
      expect(beyond.map(({ id }) => id)).toEqual([]);
    });

    it('tubes in the vessel are inside its shell', () => {
      const { vessel, furnace } = layout;
      for (const { id, box } of pipeBoxes(layout).filter(({ id: pipe }) => pipe === 'pass:back')) {
        expect([id, box.x >= vessel.x && box.y >= vessel.y]).toEqual([id, true]);
        expect(box.y + box.height).toBeLessThan(furnace.y + furnace.height / 4);
      }
    });

    it('a linkage runs clear of every label', () => {
      const { leaders } = layout;
      const crossed = labels.flatMap((label) =>
        leaders
          .filter(({ dashed }) => dashed && plant.hasOneServo === true)
          .filter(({ points: [from, to] }) =>
            intersects(label.box, {
              x: Math.min(from.x, to.x),
              y: Math.min(from.y, to.y),
              width: Math.abs(to.x - from.x) + 0.1,
              height: Math.abs(to.y - from.y) + 0.1,
            }),
          )
          .map(() => label.id),
      );
      expect(crossed).toEqual([]);
    });

    it('letters are 16 px or more', () => {
      expect(layout.fontPx).toBeGreaterThanOrEqual(16);
    });

    it('the furnace is the largest thing in the picture', () => {
      expect(layout.furnace.width).toBeGreaterThan(size.width * 0.2);
      expect(layout.furnace.height).toBeGreaterThan(size.height * 0.3);
    });
  });
});
