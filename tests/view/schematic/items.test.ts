import { describe, expect, it } from 'vitest';
import { message } from '../../../src/i18n/index.ts';
import { indexChannels } from '../../../src/view/channels.ts';
import { siReading } from '../../../src/view/reading.ts';
import {
  closeUpScale,
  freeRect,
  panelRect,
  rowsOf,
} from '../../../src/view/schematic/close-up-view.ts';
import { HIT_PX, itemAt, itemsOf, listItems } from '../../../src/view/schematic/items.ts';
import { labelSize } from '../../../src/view/schematic/label-size.ts';
import { labelsOf } from '../../../src/view/schematic/labels.ts';
import { layoutOf } from '../../../src/view/schematic/layout.ts';
import { intersects } from '../../../src/view/schematic/layout-types.ts';
import { measuresFor } from '../../../src/view/schematic/measures.ts';
import type { SchematicPlant } from '../../../src/view/schematic/plant.ts';
import { channels, frameWith, vocabulary, wordOf } from '../frames.ts';
import { dairy, hotWater } from '../plants.ts';

const words = { message, reading: siReading, channels: indexChannels(channels), vocabulary };

function drawn(plant: SchematicPlant) {
  const m = measuresFor({ width: 1010, height: 470 });
  const specs = labelsOf(plant, words, false);
  const layout = layoutOf(plant, m, (id) => labelSize(specs.get(id), m.fontPx, m.lineHeightPx));
  return { items: itemsOf(plant, layout, message), specs, size: layout.size };
}

describe('the items of the drawing', () => {
  const { items, specs } = drawn(dairy);

  it('are all fittings of the train, the air path, burner, furnace, vessel and flue', () => {
    const ids = items.map((item) => item.id);
    for (const { id } of dairy.gasTrain.edges.filter((edge) => edge.kind !== 'orifice')) {
      expect(ids).toContain(id);
    }
    for (const id of [
      'inlet-screen',
      'fan',
      'drive',
      'damper',
      'air-switch',
      'windbox',
      'burner',
      'flame-sensor',
      'furnace',
      'vessel',
      'level-gauge',
      'stack',
      'test-point:interspace',
    ]) {
      expect(ids).toContain(id);
    }
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('have each a name of its own, and a note and rows for a close-up', () => {
    expect(new Set(items.map((item) => item.name)).size).toBe(items.length);
    for (const item of items) {
      expect(message(item.note).length).toBeGreaterThan(10);
      for (const { code } of rowsOf(item)) expect(message(code).length).toBeGreaterThan(2);
    }
  });

  it('can be hit by a finger: no target is smaller than 44 px either way', () => {
    for (const { hit } of items) {
      expect(Math.min(hit.width, hit.height)).toBeGreaterThanOrEqual(HIT_PX);
    }
  });

  it('are found at their own middle', () => {
    for (const item of items) {
      const middle = {
        x: item.box.x + item.box.width / 2,
        y: item.box.y + item.box.height / 2,
      };
      expect(itemAt(items, middle)?.id).toBe(item.id);
    }
  });

  it('are not found where nothing is', () => {
    expect(itemAt(items, { x: 60, y: 260 })).toBeNull();
  });

  it('are listed with how they stand, proofs in words', () => {
    const frame = frameWith({
      'gas.interspace.pressure': 4980,
      'gas.downstream-valve.opening': 1,
      'damper.feedback': 62,
      'damper.target': 90,
      'logic.inputs': wordOf(vocabulary.inputs, 'airProved', 'upstreamValveClosed'),
    });
    const readings = new Map(
      listItems(items, specs, frame, message).map((item) => [item.id, item.reading]),
    );
    expect(readings.get('test-point:interspace')).toBe('49.8 mbar');
    expect(readings.get('upstream-valve')).toBe(
      `${message('view.valve.shut')}, ${message('view.proved')}`,
    );
    expect(readings.get('downstream-valve')).toBe(message('view.valve.open'));
    expect(readings.get('damper')).toBe(message('view.position', { at: '62.0°', to: '90.0°' }));
    expect(readings.get('strainer')).toBe('');
  });

  it('are fewer where the plant has less', () => {
    const ids = drawn(hotWater).items.map((item) => item.id);
    for (const id of ['vent-valve', 'pilot-valve', 'drive', 'level-gauge']) {
      expect(ids).not.toContain(id);
    }
  });

  it.each([1472, 982, 820])(
    'have a close-up whose panel leaves room for them, %i wide',
    (width) => {
      const view = { width, height: 440 };
      const panel = panelRect(view, 296, 250);
      const free = freeRect(panel, view);
      expect(intersects(panel, free)).toBe(false);
      expect(free.x).toBeGreaterThan(222);
      expect(free.width).toBeGreaterThan(250);
      expect(panel.x + panel.width).toBeLessThanOrEqual(view.width);
    },
  );

  it('keep their labels readable in a close-up', () => {
    const free = { x: 230, y: 0, width: 466, height: 440 };
    for (const item of items) {
      expect(closeUpScale(item, free)).toBeGreaterThan(1);
      expect(closeUpScale(item, free)).toBeLessThan(2.5);
    }
  });
});
